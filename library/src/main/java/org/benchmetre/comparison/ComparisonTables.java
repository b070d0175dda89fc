package org.benchmetre.comparison;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.ScheduleBuilder;

/**
 * The tables of the first sheet, opened before all others so that they lead it, in reading order.
 *
 * @param answer a sentence for each scenario
 * @param left what is left
 * @param sections receipts and costs by section
 * @param receipts what the difference in receipts comes from
 * @param largest the costs that differ most, a table for each scenario but the first
 * @param rows receipts and costs by row
 */
record ComparisonTables(
        ScheduleBuilder answer,
        ScheduleBuilder left,
        ScheduleBuilder sections,
        ScheduleBuilder receipts,
        List<ScheduleBuilder> largest,
        ScheduleBuilder rows) {

    static ComparisonTables open(BudgetBuilder b, TakenFigures taken, Measure per) {
        String by = ", " + per.words();
        ComparisonTables tables = new ComparisonTables(
                table(b, "The answer"),
                table(b, "What is left" + by),
                table(b, "By section" + by),
                table(b, "Where the difference in receipts comes from" + by),
                IntStream.range(1, taken.scenarios().size())
                        .mapToObj(i -> table(
                                b,
                                "Costs that differ most" + by + ": "
                                        + taken.scenarios().get(i).name()))
                        .toList(),
                table(b, "By cause" + by));
        String sign = "Costs carry a minus sign, so that a plus in a difference means that more is left.";
        tables.sections().note(sign);
        tables.rows().note(sign);
        return tables;
    }

    private static ScheduleBuilder table(BudgetBuilder b, String heading) {
        return b.schedule(ComparisonSheets.COMPARISON, heading);
    }
}
