package org.benchmetre.farm.pages;

import static org.benchmetre.farm.pages.Placed.cell;

import java.util.Arrays;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** When: the year from the month of planting on, in fruit, labour, water, warmth, heat and cash. */
final class CalendarPage {

    private static final List<Integer> MONTHS = List.of(8, 6, 9, 8, 8, 8, 8, 10, 10, 10, 11);
    private static final List<Integer> CASH = List.of(34, 9, 8);
    private static final int CHART_ROWS = 10;

    private CalendarPage() {}

    static Page of(Budget budget) {
        return Page.answer("Calendar", "When do fruit, work and cash come?")
                .head(new Sentences(List.of(
                        sentence(budget, "calendar_year", Tone.LEAD),
                        sentence(budget, "calendar_lowest", Tone.PLAIN),
                        sentence(budget, "calendar_labour", Tone.PLAIN))))
                .left(
                        MONTHS,
                        months(budget),
                        new Sentences(List.of(
                                sentence(budget, "calendar_evenly", Tone.FAINT),
                                sentence(budget, "calendar_no_heat", Tone.WARNING),
                                sentence(budget, "calendar_no_fruit", Tone.WARNING))))
                .right(
                        CASH,
                        cash(budget),
                        firstFruit(budget),
                        new FixedWords("", "Before loans and tax. Worn parts: see the plan's years.", Tone.FAINT),
                        chart(
                                budget,
                                "calendar_cash_shown",
                                "Receipts and cash out in each month of the crop year, side by side.",
                                "season_receipts",
                                "season_cash_out"))
                .foot(chart(
                        budget, "calendar_labour", "Hours of labour in each month of the crop year.", "season_hours"));
    }

    private static Sentence sentence(Budget budget, String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    /** One row a month. A total is that of the year; people, warmth and cash so far have none. */
    private static Table months(Budget budget) {
        Line name = budget.line("season_month_name");
        Axis axis = name.axes().get(0);
        List<CellRef> total = Arrays.asList(
                null,
                null,
                cell(budget, "yield_total"),
                cell(budget, "labour_hours_total"),
                null,
                cell(budget, "water_given_chosen"),
                null,
                cell(budget, "heat_energy_total"),
                cell(budget, "receipts_total"),
                cell(budget, "cash_out_year"),
                null);
        Table table = Table.of(
                "The crop year, month by month",
                axis,
                Column.of("Month", name),
                Column.of("Year", budget.line("season_year")),
                Column.of("Fruit", budget.line("season_fruit")),
                Column.of("Labour", budget.line("season_hours")),
                Column.of("People", budget.line("season_people")),
                Column.of("Water", budget.line("season_water")),
                Column.of("Inside", budget.line("season_inside")),
                Column.of("Heat", budget.line("season_heat")),
                Column.of("Cash in", budget.line("season_receipts")),
                Column.of("Cash out", budget.line("season_cash_out")),
                Column.of("Cash so far", budget.line("season_cash_so_far")));
        return table.rows(
                Placed.with(table.rows(), TableRow.single("Total", total).total()));
    }

    private static Table firstFruit(Budget budget) {
        Line crop = budget.line("crop_label");
        return Table.of(
                "First ripe fruit, by the warmth of the house",
                crop.axes().get(0),
                Column.of("Crop", crop),
                Column.of("Planted", budget.line("crop_planted_told")),
                Column.of("First", budget.line("crop_first_fruit")));
    }

    private static FigureList cash(Budget budget) {
        return new FigureList(
                "The year in cash",
                List.of(
                        FigureRow.total("Receipts", budget.line("receipts_total")),
                        FigureRow.of("Plants, paid in the planting month", budget.line("plants_cash_year")),
                        FigureRow.of("Labour, hired", budget.line("labour_cash_total")),
                        FigureRow.of("Bought inputs", budget.line("inputs_cost_total")),
                        FigureRow.of("Water and nutrient solution", budget.line("watering_cost_chosen")),
                        FigureRow.of("Heat and electricity", budget.line("energy_cost_total")),
                        FigureRow.of("Packs, freight, commission", budget.line("yield_costs_total")),
                        FigureRow.of("Without a month, spread evenly", budget.line("cash_without_month")),
                        FigureRow.total("Cash out", budget.line("cash_out_year")),
                        FigureRow.total("Cash left in the year", budget.line("cash_left_year"))));
    }

    private static Chart chart(Budget budget, String sentence, String alternative, String... ids) {
        List<Line> values = Arrays.stream(ids).map(budget::line).toList();
        Axis axis = values.get(0).axes().get(0);
        return new Chart(
                budget.line(sentence), Chart.Shape.COLUMNS, values, axis, ChartLook.of(CHART_ROWS, alternative));
    }
}
