package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;

/**
 * Differences by name in one text: {@code Crop care -4.60; Containers -3.79}. Those without a name are left out.
 *
 * @param b where lines are declared
 * @param left tells which sizes count as a difference
 */
record SignedList(BudgetBuilder b, WhatIsLeft left) {

    /**
     * Declares the list.
     *
     * @param id what its lines begin with
     * @param title what is listed
     * @param label names along an axis, empty where there is nothing
     * @param difference along the same axis
     * @return a single text, empty where nothing has a name
     */
    Line of(String id, String title, Line label, Line difference) {
        Axis axis = label.axes().get(0);
        ScheduleBuilder table = b.schedule(ComparisonSheets.WORKINGS, title + ", in words");
        Line amount = table.textLine(id + "_signed", "Difference", signed(difference));
        Line part = table.textLine(id + "_named", "Named", each(axis, place -> {
            Formula name = new Element(label, axis, place);
            Formula own = joined(name, text(" "), new Element(amount, axis, place));
            return when(name.isFilled(), place == 0 ? own : joined(text("; "), own), text(""));
        }));
        Formula[] parts = IntStream.range(0, axis.size())
                .mapToObj(place -> (Formula) new Element(part, axis, place))
                .toArray(Formula[]::new);
        return b.schedule(ComparisonSheets.WORKINGS, title + ", in one text")
                .textLine(id + "_list", title, joined(parts));
    }

    /** A number with its sign; none where it prints as nothing. */
    private Formula signed(Line number) {
        Formula digits = shown(number, left.decimals);
        Formula none = text("0" + (left.decimals == 0 ? "" : "." + "0".repeat(left.decimals)));
        return when(
                left.counts(ScenarioColumns.withoutSign(number)),
                when(number.isPositive(), joined(text("+"), digits), digits),
                none);
    }

    private static Formula each(Axis axis, IntFunction<Formula> formula) {
        List<Formula> rows = IntStream.range(0, axis.size()).mapToObj(formula).toList();
        return new Rows(axis, rows);
    }
}
