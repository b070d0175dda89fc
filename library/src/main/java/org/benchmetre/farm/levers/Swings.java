package org.benchmetre.farm.levers;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.WhatIf;
import org.benchmetre.farm.input.Sheets;

/**
 * How far each lever moves returns from the plan when it alone stands at an end of its usual range. What moves together in truth, such as
 * a high yield and a low price, is not told here.
 */
public final class Swings {

    /** One row for each lever. */
    final Axis axis;
    /** What each is called. */
    final Line label;
    /** The levers, in the order of the rows. */
    final List<Lever> levers;
    /** Largest change against the plan, money/(m2 a). */
    final Line size;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added; the figure and all it is made of are defined already
     * @param levers what moves it
     * @param target returns of a square metre, money/(m2 a)
     */
    public Swings(BudgetBuilder b, LeverList levers, Line target) {
        List<Lever> all = levers.all;
        this.levers = all;
        axis = Axis.rows("swing", "Swing", all.stream().map(Lever::name).toList(), 0);
        Axis ends = Axis.rows("range_end", "Ends of its usual range", List.of("low", "high"), 0);
        ScheduleBuilder s = b.schedule(Sheets.WHAT_IF, "Swings: each lever alone at the ends of its usual range");
        String currency = b.structure().currency();
        label = s.textLine("swing_label", "Lever", rows(all, lever -> text(lever.label())));
        b.nameRows(axis, label);
        s.line("swing_now", "As planned", ONE, rows(all, lever -> lever.entry().counting(ONE)));
        s.line("swing_low", "Usual low", ONE, rows(all, lever -> lever.low().counting(ONE)), LeverList.SOURCE);
        s.line("swing_high", "Usual high", ONE, rows(all, lever -> lever.high().counting(ONE)), LeverList.SOURCE);
        s.line("swing_range", "Usual range", ONE, rows(all, lever -> lever.range(currency)), LeverList.SOURCE);
        List<Line> cases = all.stream()
                .map(lever -> WhatIf.along(
                        b,
                        Sheets.CASES,
                        target,
                        WhatIf.cases(b, Sheets.CASES, lever.entry(), ends, lever.low(), lever.high())))
                .toList();
        Line low = s.line("swing_at_low", "Change at the low end", target.unit(), changes(cases, ends, 0, target));
        Line high = s.line("swing_at_high", "Change at the high end", target.unit(), changes(cases, ends, 1, target));
        size = s.line("swing_size", "Largest change", target.unit(), greater(sizeOf(low), sizeOf(high)));
    }

    private Formula rows(List<Lever> levers, Function<Lever, Formula> cell) {
        return new Rows(axis, levers.stream().map(cell).toList());
    }

    private Formula changes(List<Line> cases, Axis ends, int end, Line target) {
        return new Rows(
                axis,
                cases.stream()
                        .map(figure -> new Element(figure, ends, end).minus(target))
                        .toList());
    }

    private static Formula sizeOf(Line change) {
        return greater(change, none(change.unit()).minus(change));
    }
}
