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
record ComparisonPages(
        ScheduleBuilder answer,
        ScheduleBuilder left,
        ScheduleBuilder sections,
        ScheduleBuilder receipts,
        List<ScheduleBuilder> largest,
        ScheduleBuilder rows) {

    static ComparisonPages open(BudgetBuilder b, TakenFigures taken, Measure per) {
        String by = ", " + per.words();
        ComparisonPages pages = new ComparisonPages(
                page(b, "The answer"),
                page(b, "Returns above total cost" + by),
                page(b, "By section" + by),
                page(b, "Where the difference in receipts comes from" + by),
                IntStream.range(1, taken.scenarios().size())
                        .mapToObj(i -> page(
                                b,
                                "Costs that differ most" + by + ": "
                                        + taken.scenarios().get(i).name()))
                        .toList(),
                page(b, "By cause" + by));
        String sign = "Costs carry a minus sign, so that a plus in a difference means higher returns.";
        pages.sections().note(sign);
        pages.rows().note(sign);
        return pages;
    }

    private static ScheduleBuilder page(BudgetBuilder b, String heading) {
        return b.schedule(ComparisonSheets.COMPARISON, heading);
    }
}
