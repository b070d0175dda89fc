package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;

/**
 * Receipts and costs of the enterprise budgets, row by row and scenario beside scenario, by the measure. Costs carry a minus sign, so
 * that a difference in what is left is the sum of the differences of its rows. A row that a scenario does not have counts 0 there.
 */
final class MarginRows {

    static final Unit YEARLY = Unit.parse("money/a");

    /** One place for each receipt and cost. */
    final Axis axis;
    /** Its key on the axis, a text. */
    final Line key;
    /** What a reader sees. */
    final Line label;
    /** Key of its section. */
    final Line section;
    /** Money of a year as the budgets have it, by row and scenario, money/a. */
    final Line amount;
    /** The same by the measure, costs with a minus sign. */
    final Line value;
    /** What a scenario has more of it than the first. */
    final Line difference;

    MarginRows(BudgetBuilder b, ScheduleBuilder page, ScenarioColumns scenarios, TakenFigures taken, Measure per) {
        List<MatchedRow> rows = RowsMatched.of(taken.scenarios().stream()
                .map(each -> PageRow.of(each.figures()))
                .toList());
        axis = Axis.rows("cause", "Row", rows.stream().map(MatchedRow::key).toList(), 0);
        ScheduleBuilder s = b.schedule(ComparisonSheets.SCENARIOS, "Rows of their enterprise budgets");
        s.note("Rows are the same where section and label are.");
        label = s.textEntry("cause_label", "Row", axis)
                .given(rows.stream().map(row -> taken.words(row.label(), row)).toList());
        b.nameRows(axis, label);
        section = s.textEntry("cause_section", "Section", axis)
                .oneOf(BudgetSection.keys())
                .usually(BudgetSection.OPERATING.key(), "the budget's own sections")
                .given(rows.stream()
                        .map(row -> taken.words(row.section().key(), row))
                        .toList());
        key = s.textLine(
                "cause_key",
                "Key",
                new Rows(
                        axis,
                        axis.keys().stream().<Formula>map(word -> text(word)).toList()));
        s.textEntry("cause_source", "Line in the scenarios", axis)
                .given(rows.stream().map(TakenFigures::lines).toList());
        List<Given> amounts =
                rows.stream().flatMap(row -> taken.figures(row).stream()).toList();
        amount = b.schedule(ComparisonSheets.SCENARIOS, "Receipts and costs of a year")
                .entry("cause_amount", "As the budgets have them, in total", YEARLY, axis, scenarios.axis)
                .given(amounts);
        value = page.line(
                "cause_value",
                "Receipts and costs",
                per.money(),
                when(
                                section.is(BudgetSection.RECEIPTS.key()),
                                amount,
                                none(YEARLY).minus(amount))
                        .over(scenarios.size),
                "Costs carry a minus sign.");
        difference = page.line("cause_difference", "More than in the first", per.money(), scenarios.difference(value));
    }
}
