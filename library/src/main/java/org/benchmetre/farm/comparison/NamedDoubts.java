package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * The entries that flip the answer inside their usual range, the first three of them by name. The uniformity asked for goes first
 * where it is one of them, since it lets systems in and leaves them out.
 */
final class NamedDoubts {

    private static final String NO_RANGE = "no range";
    private static final int NAMED = 3;
    private static final String OURS = "a choice of this project, no source";
    /** Where the rule comes from. */
    static final String FIRST_THREE = "the first three are named: " + OURS;

    /** How many entries flip the answer inside their usual range, the uniformity asked for among them, a plain number. */
    final Line count;
    /** How many would flip it at some value, but have no usual range, a plain number. */
    final Line withoutRange;
    /** Their names, at most three, a text; empty where there is none. */
    final Line names;
    /** The named with the values at which they flip it. */
    final Line namesAndValues;

    private final Flips flips;
    private final Line target;
    private final Axis axis;
    private final Line inside;
    private final Line place;
    private final Line label;
    private final Line to;

    NamedDoubts(BudgetBuilder b, Flips flips, Line target, String targetLabel) {
        this.flips = flips;
        this.target = target;
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.FLIP_WORKINGS);
        inside = s.declare("flip_inside_so_far", "Flips inside it, so far", ONE, Kind.NUMBER, List.of(flips.axis), "");
        b.define(inside, byEntry(this::counted));
        place = s.textLine("flip_place", "Which of them it is", byEntry(this::placed));

        axis = Axis.rows(
                "doubt",
                "Doubt",
                IntStream.rangeClosed(1, NAMED).mapToObj(i -> "doubt_" + i).toList(),
                0);
        ScheduleBuilder n = b.schedule(Sheets.IRRIGATION, "The first of them, by name");
        label = n.line("doubt_label", "Entry", ONE, named(flips.label, text(targetLabel), text("")), FIRST_THREE);
        b.nameRows(axis, label);
        Line at = n.line("doubt_at", "Flips at", ONE, named(flips.at, none(ONE), none(ONE)), FIRST_THREE);
        Line value = n.line("doubt_value", "The value in words", ONE, figures(at), "about three figures: " + OURS);
        Line unit = n.line("doubt_unit", "Unit", ONE, named(flips.unit, text(""), text("")), FIRST_THREE);
        Line words = n.textLine("doubt_words", "In words", words(at, value, unit));
        to = n.line("doubt_to", "Flips to, by its key", ONE, named(flips.to, text(""), text("")), FIRST_THREE);

        ScheduleBuilder all = b.shared(Sheets.IRRIGATION, Tables.VERDICT);
        count = all.line("doubts_inside", "How many", ONE, inFlips().plus(target(one())));
        withoutRange = all.line(
                "doubts_without_range",
                "Flip it, but have no usual range",
                ONE,
                countWhere(place, text(NO_RANGE), flips.axis));
        Formula others = when(areMore(), text("; and others"), text(""));
        names = all.line("irrigation_depends", "Depends on", ONE, joined(list(label), others), FIRST_THREE);
        namesAndValues = all.textLine("irrigation_depends_at", "Flips at", list(words));
    }

    /** The same entries up to here, this one counted. */
    private Formula counted(int row) {
        Formula isInside = and(
                flips.usual.flips(),
                flips.usual.high().isPositive(),
                not(flips.usual.low().exceeds(flips.at)),
                not(flips.at.exceeds(flips.usual.high())));
        return before(row).plus(when(isInside, one(), none(ONE)));
    }

    private Formula placed(int row) {
        Formula unknown = and(flips.usual.flips(), not(flips.usual.high().isPositive()));
        return when(inside.exceeds(before(row)), shown(inside, 0), when(unknown, text(NO_RANGE), text("")));
    }

    private Formula before(int row) {
        return row == 0 ? none(ONE) : new Element(inside, flips.axis, row - 1);
    }

    private Formula inFlips() {
        return new Element(inside, flips.axis, flips.axis.size() - 1);
    }

    private Formula target(Formula counts) {
        return when(target.isPositive(), counts, none(ONE));
    }

    /** A figure of the first, second and third; the uniformity asked for, where it is one of them, takes the first place. */
    private Formula named(Line ofEntry, Formula ofTarget, Formula otherwise) {
        List<Formula> rows = new ArrayList<>();
        for (int row = 0; row < NAMED; row++) {
            Formula before = target(one());
            Formula wanted = number(row + 1, ONE).minus(before);
            Formula found = when(wanted.exceeds(inFlips()), otherwise, lookup(ofEntry, place, shown(wanted, 0)));
            rows.add(row == 0 ? when(target.isPositive(), ofTarget, found) : found);
        }
        return new Rows(axis, rows);
    }

    /** Three figures or so, as the size of the value asks. */
    private static Formula figures(Line at) {
        return when(
                at.exceeds(number(100, ONE)),
                shown(at, 0),
                when(at.exceeds(number(1, ONE)), shown(at, 2), shown(at, 4)));
    }

    private Formula words(Line at, Line value, Line unit) {
        Formula withUnit = joined(label, text(" "), value, text(" "), unit);
        Formula without = when(at.isPositive(), joined(label, text(" "), value), label);
        return when(unit.isFilled(), withUnit, without);
    }

    private Formula list(Line of) {
        Element second = new Element(of, axis, 1);
        Element third = new Element(of, axis, 2);
        return joined(
                new Element(of, axis, 0),
                when(second.isFilled(), joined(text("; "), second), text("")),
                when(third.isFilled(), joined(text("; "), third), text("")));
    }

    private Formula byEntry(IntFunction<Formula> formula) {
        return new Rows(
                flips.axis,
                IntStream.range(0, flips.axis.size()).mapToObj(formula).toList());
    }

    /** Whether there are more than are named. */
    Formula areMore() {
        return count.exceeds(number(NAMED, ONE));
    }

    /** Key of the system to which the first named flips; empty where none does, or where a change of the target decides. */
    Formula firstTo() {
        return new Element(to, axis, 0);
    }

    /** Whether all that are named flip to the same system. */
    Formula allToOne() {
        return and(firstTo().isFilled(), isAlike(1), isAlike(2));
    }

    private Formula isAlike(int row) {
        Element other = new Element(to, axis, row);
        return or(not(other.isFilled()), other.is(firstTo()));
    }
}
