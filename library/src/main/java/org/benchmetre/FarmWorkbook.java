package org.benchmetre;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.workbook.BarChart;
import org.benchmetre.workbook.Chart;
import org.benchmetre.workbook.WorkbookWriter;

/** A farm's workbook: its tables, and on the first sheet the two charts that answer what costs how much. */
public final class FarmWorkbook {

    private static final String SHEET = "Summary";

    private FarmWorkbook() {}

    /**
     * Writes the workbook beside its target and moves it into place.
     *
     * @param figures the farm, computed
     * @param target where it goes
     * @param overwrite whether an existing file is replaced
     * @throws IOException when the target exists and is not to be replaced, or cannot be written
     */
    public static void write(Figures figures, Path target, boolean overwrite) throws IOException {
        new WorkbookWriter(charts(figures.budget())).write(figures, target, overwrite);
    }

    /**
     * The charts of the first sheet.
     *
     * @param budget a farm
     * @return first cost and yearly cost per metre, by group and way to water
     */
    public static List<Chart> charts(Budget budget) {
        return List.of(
                byGroup(budget, "group_way_first_cost_per_metre", "First cost per metre of bench"),
                byGroup(
                        budget,
                        "group_way_yearly_cost_per_metre",
                        "Yearly cost per metre of bench, before labour and energy"));
    }

    private static BarChart byGroup(Budget budget, String id, String title) {
        Line line = budget.line(id);
        return new BarChart(SHEET, title, line, line.axes().get(0), false);
    }
}
