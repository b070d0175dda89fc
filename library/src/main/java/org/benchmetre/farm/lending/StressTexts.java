package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.unit.Unit;

/** How changes to the plan are told: what changes, by how much, and how far each may go. The rows are those of the changes, in order. */
final class StressTexts {

    private static final Unit PERCENT = Unit.parse("%");

    /** Keys of the changes. */
    static final List<String> KEYS = List.of("price", "yield", "wage", "energy", "interest", "late", "lost");

    private static final List<String> LABELS = List.of(
            "Price of fruit", "Fruit", "Wages", "Heat and electricity", "Rates of loans", "First harvest", "A crop");

    private static final List<String> WITHIN = List.of(
            "fruit prices ",
            "fruit ",
            "wages ",
            "heat and electricity ",
            "rates of loans ",
            "the first harvest ",
            "the crop ");

    private static final List<String> NEVER = List.of(
            "not within -100 %",
            "not within -100 %",
            "not up to 1,000 %",
            "not up to 1,000 %",
            "not up to 50 points",
            "not up to 11 months",
            "in no year");

    private StressTexts() {}

    /** What changes, as a heading. */
    static List<Formula> labels() {
        return texts(LABELS);
    }

    /** What changes, within a sentence, a blank behind. */
    static List<Formula> within() {
        return texts(WITHIN);
    }

    /** What stands between a finding and the size of each change, such as <i>cash runs out at 5 % lower</i>. */
    static List<Formula> at() {
        return IntStream.range(0, KEYS.size())
                .<Formula>mapToObj(row -> text(row < KEYS.indexOf("late") ? " at " : " when "))
                .toList();
    }

    /** How far each change was looked at, where nothing was found. */
    static List<Formula> never() {
        return texts(NEVER);
    }

    private static List<Formula> texts(List<String> words) {
        return words.stream().<Formula>map(each -> text(each)).toList();
    }

    /**
     * By how much, in words such as <i>10.0 % lower</i>.
     *
     * @param row which change
     * @param size plain number in the unit of the change
     */
    static Formula size(int row, Formula size) {
        return switch (KEYS.get(row)) {
            case "yield" -> share(size, " % less", " % more");
            case "energy" -> share(size, " % cheaper", " % dearer");
            case "interest" -> share(size, " points lower", " points higher");
            case "late" -> joined(shown(size, 0), when(size.exceeds(one()), text(" months late"), text(" month late")));
            case "lost" -> joined(text("lost in year "), shown(size, 0));
            default -> share(size, " % lower", " % higher");
        };
    }

    /** Per cent, whole ones without a decimal. */
    private static Formula share(Formula size, String below, String above) {
        Formula off = greater(size, none(ONE).minus(size)).in(PERCENT);
        Formula digits = when(off.exceeds(off.wholeDown()), shown(off, 1), shown(off, 0));
        return joined(digits, when(none(ONE).exceeds(size), text(below), text(above)));
    }
}
