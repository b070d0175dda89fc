package org.benchmetre;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.workbook.BarChart;
import org.benchmetre.workbook.Chart;
import org.benchmetre.workbook.ChartPlace;
import org.benchmetre.workbook.LineChart;
import org.benchmetre.workbook.WorkbookWriter;

/** A farm's workbook: its tables, and the charts that answer what costs how much, which irrigation system, and when money comes and goes. */
public final class FarmWorkbook {

    private static final String SHEET = "Summary";

    private FarmWorkbook() {}

    /**
     * Writes the workbook beside its target and moves it into place.
     *
     * @param figures the farm, computed
     * @param target where it goes
     * @param overwrite whether an existing file is replaced
     * @throws IOException when the target exists and is not to be replaced, is no plain file, or cannot be written
     */
    public static void write(Figures figures, Path target, boolean overwrite) throws IOException {
        new WorkbookWriter(charts(figures.budget())).write(figures, target, overwrite);
    }

    /**
     * The charts of all sheets.
     *
     * @param budget a farm
     * @return first cost by group and way, cost by cause, pressure along a line, receipts and costs by month, cost shares
     */
    public static List<Chart> charts(Budget budget) {
        return List.of(firstCost(budget), byCause(budget), alongTheBench(budget), byMonth(budget), shares(budget));
    }

    private static Chart byCause(Budget budget) {
        Line cost = budget.line("cause_way_cost_per_metre");
        Axis ways = budget.line("way_key").axes().get(0);
        return new BarChart(
                new ChartPlace("Irrigation", cost),
                "Yearly cost per metre of bench, by cause",
                List.of(cost),
                ways,
                ways.filled(),
                BarChart.Shape.STACKED_BARS);
    }

    private static Chart alongTheBench(Budget budget) {
        Line distance = budget.line("point_distance");
        Axis points = distance.axes().get(1);
        return new LineChart(
                new ChartPlace("Irrigation", budget.line("point_flow_share")),
                "Pressure and flow along a line, against their average",
                distance,
                List.of(budget.line("point_pressure_share"), budget.line("point_flow_share")),
                points);
    }

    private static Chart byMonth(Budget budget) {
        Line receipts = budget.line("budget_month_receipts");
        return new BarChart(
                new ChartPlace("Budget", receipts),
                "Receipts and costs by month",
                List.of(receipts, budget.line("budget_month_costs")),
                receipts.axes().get(0),
                receipts.size(),
                BarChart.Shape.COLUMNS);
    }

    private static Chart shares(Budget budget) {
        Line share = budget.line("group_yearly_share");
        return new BarChart(
                new ChartPlace("Budget", budget.line("budget_value")),
                "Shares of yearly cost",
                List.of(share),
                share.axes().get(0),
                share.size(),
                BarChart.Shape.BARS);
    }

    /** Groups that can have first cost: those of the parts, plants and installing. */
    private static Chart firstCost(Budget budget) {
        Line line = budget.line("group_way_first_cost_per_metre");
        Axis groups = line.axes().get(0);
        int shown = groups.indexOf("ownership_charges");
        return new BarChart(
                ChartPlace.endOf(SHEET),
                "First cost per metre of bench",
                List.of(line),
                groups,
                shown < 0 ? groups.size() : shown,
                BarChart.Shape.BARS);
    }
}
