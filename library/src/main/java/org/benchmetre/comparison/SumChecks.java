package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/** Whether parts add up to their wholes, in every scenario; a text says where they do not. */
final class SumChecks {

    /** Sums of a few dozen amounts differ by rounding alone; this share of the amounts together is far above that. */
    private static final double SHARE = 1e-9;

    private final ScheduleBuilder s;
    private final ScenarioColumns scenarios;
    private final Line allowed;

    SumChecks(BudgetBuilder b, ScenarioColumns scenarios, MarginRows rows, Measure per) {
        this.scenarios = scenarios;
        ScheduleBuilder amounts = b.schedule(ComparisonSheets.WORKINGS, "Receipts and costs without their sign");
        Line size = amounts.line("cause_size", "Size", per.money(), ScenarioColumns.withoutSign(rows.value));
        s = b.schedule(ComparisonSheets.WORKINGS, "Whether parts add up to their wholes");
        s.note(
                "A gap of more than a billionth of all amounts together is a fault of the arithmetic, not of the input.");
        Line together = s.line("amounts_together", "All amounts together", per.money(), sum(size, rows.axis));
        allowed = s.line(
                "gap_allowed",
                "Gap by rounding",
                per.money(),
                together.plus(scenarios.ofFirst(together)).times(number(SHARE, Unit.ONE)),
                "A billionth of all amounts of the scenario and the first, far above what rounding adds up to.");
    }

    /**
     * Holds a sum of parts against a whole.
     *
     * @param id identifier of the gap; that of the text ends in {@code _check}
     * @param parts what is added up, in words that follow {@code The sum of}
     * @param sum along the scenarios
     * @param whole along the scenarios
     * @return a text by scenario, empty where they agree
     */
    Line agree(String id, String parts, Formula sum, Formula whole) {
        Line gap = s.line(id, "Gap: " + parts, allowed.unit(), ScenarioColumns.withoutSign(sum.minus(whole)));
        Formula sentence = joined(text("The sum of " + parts + " in "), scenarios.name, text(" is not their whole."));
        return s.textLine(id + "_check", "Agreement", when(gap.minus(allowed).isPositive(), sentence, text("")));
    }
}
