package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/** Says what mulch film earns, and from which share of soiled fruit on it does. */
final class MulchWords {

    private static final Unit PERCENT = Unit.parse("%");

    private final ScheduleBuilder s;
    private final Formula laid;
    private final String currency;
    private final int decimals;

    MulchWords(BudgetBuilder b, ScheduleBuilder s, Formula laid) {
        this.s = s;
        this.laid = laid;
        currency = b.structure().currency();
        decimals = MinorUnit.decimals(currency);
    }

    /**
     * Adds the sentences.
     *
     * @param gain of film, money/(m a)
     * @param even share soiled at which there is none; 0 or less where it pays without
     * @param low gain at the low end of the usual range of that share, money/(m a)
     * @param high gain at its high end
     */
    void add(Line gain, Line even, Line low, Line high) {
        Line from = s.textLine("mulch_even_words", "From which share of soiled fruit on", from(even));
        Formula less = none(gain.unit()).minus(gain);
        Formula earns = when(
                less.isPositive(),
                joined(text("Mulch film costs "), shown(less, decimals), text(words(" more than it earns"))),
                joined(text("Mulch film earns "), shown(gain, decimals), text(words(""))));
        s.textLine(
                "mulch_sentence",
                "What mulch film earns",
                when(laid, joined(earns, from), text("No part is counted by metres of mulch film: none is laid.")));
        s.textLine(
                "mulch_doubt",
                "What it earns over the usual range of soiled fruit",
                when(
                        laid,
                        joined(
                                text("Over the usual range of soiled fruit: "),
                                shown(low, decimals),
                                text(" to "),
                                shown(high, decimals),
                                text(" " + currency + ".")),
                        text("")));
    }

    private String words(String more) {
        return " " + currency + more + ", by metre and year";
    }

    /** From which share on it pays; nothing is said of fruit where there is none. */
    private static Formula from(Line even) {
        return when(
                even.isPositive(),
                joined(
                        text("; with less than "),
                        shown(even.in(PERCENT), 1),
                        text(" % of the fruit soiled or rotted without it, it would not pay.")),
                text("."));
    }
}
