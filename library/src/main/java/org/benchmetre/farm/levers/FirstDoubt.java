package org.benchmetre.farm.levers;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.Currency;
import java.util.Locale;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;

/** What to doubt first: the three levers whose usual ranges move returns most, in words. */
public final class FirstDoubt {

    private static final String FOUND = "here";

    private final ScheduleBuilder table;
    private final ScheduleBuilder single;
    private final Line words;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param swings how far each lever moves returns
     */
    public FirstDoubt(BudgetBuilder b, Swings swings) {
        table = b.schedule(Sheets.WHAT_IF, "Swings in order: the largest three");
        single = b.schedule(Sheets.WHAT_IF, "What to doubt first");
        words = table.textLine(
                "swing_words",
                "Lever, within a sentence",
                new Rows(
                        swings.axis,
                        swings.levers.stream()
                                .<Formula>map(lever -> text(lever.label().toLowerCase(Locale.ROOT)))
                                .toList()));
        Place first = place("first", swings.size);
        Place second = place("second", without(first, "first", swings.size));
        Place third = place("third", without(second, "second", second.sizes));
        String currency = b.structure().currency();
        Formula moves = joined(
                shown(first.size, Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits())),
                text(" " + currency + "/m²/yr"));
        Formula others = when(
                third.size.isPositive(),
                joined(text(", then "), second.name, text(" and "), third.name),
                when(second.size.isPositive(), joined(text(", then "), second.name), text("")));
        Formula nothing = text("No entry moves returns within its usual range.");
        single.textLine(
                "doubt_sentence",
                "What to doubt first",
                when(
                        first.size.isPositive(),
                        joined(
                                text("Doubt first: "),
                                first.name,
                                text(" (its usual range moves returns by up to "),
                                moves,
                                text(")"),
                                others,
                                text(".")),
                        nothing));
        single.textLine(
                "swing_sentence",
                "What moves returns most",
                when(
                        first.size.isPositive(),
                        joined(
                                text("Within its usual range, "),
                                first.name,
                                text(" moves returns most, by up to "),
                                moves,
                                text(".")),
                        nothing));
    }

    /** A place in the order: what stands there, how far it moves, and what it was found among. */
    private record Place(Line name, Line size, Line sizes) {}

    private Place place(String id, Line sizes) {
        Line size = single.line(
                id + "_swing",
                "Change, " + id,
                sizes.unit(),
                greatest(sizes, sizes.axes().get(0)));
        Line mark =
                table.textLine("swing_is_" + id, "Is it the " + id, when(size.exceeds(sizes), text(""), text(FOUND)));
        Line name = single.textLine(id + "_doubt", "Lever, " + id, lookup(words, mark, text(FOUND)));
        return new Place(name, size, sizes);
    }

    /** What is left for the next place. */
    private Line without(Place found, String id, Line sizes) {
        Formula left = when(words.is(found.name), none(sizes.unit()), sizes);
        return table.line("swing_after_" + id, "Change, but for the " + id, sizes.unit(), left);
    }
}
