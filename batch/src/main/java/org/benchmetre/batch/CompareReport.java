package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Line;
import org.benchmetre.comparison.Beside;
import org.benchmetre.comparison.Comparison;

/**
 * Scenarios side by side on a console, at most 100 columns, two decimals: what they are, their results, and by cause where the margin
 * comes from. Differences are against the first scenario.
 */
final class CompareReport {

    private final Comparison comparison;
    private final ComparedValues values;
    private final List<Integer> scenarios;
    private final String unit;

    CompareReport(Comparison comparison) {
        this.comparison = comparison;
        this.values = new ComparedValues(comparison);
        this.scenarios = values.scenarios();
        this.unit = values.unit(values.line("cause_value"));
    }

    @Override
    public String toString() {
        String words = comparison.per().words();
        return new CompareAnswer(comparison)
                + "\n"
                + what()
                + heading("Results; differences are against " + values.name(0))
                + results()
                + heading("By cause, " + words + ", " + unit)
                + "Costs carry a minus sign, so that a plus in a difference means higher returns.\n\n"
                + sections()
                + "\n"
                + causes()
                + heading("Where the difference in receipts comes from, " + words + ", " + unit)
                + receipts()
                + "\n"
                + cautions();
    }

    private static String heading(String words) {
        return "\n" + TextTable.wrapped(words) + "\n";
    }

    private String what() {
        List<String> header = new ArrayList<>(List.of(""));
        scenarios.forEach(i -> header.add(values.name(i)));
        TextTable table = new TextTable(header, 1);
        fact(table, "Title", i -> values.text("scenario_title", i));
        fact(table, "Bench metres", i -> quantity("bench_metres", i));
        fact(table, "Plants", i -> PriceReport.whole(values.number("plant_count", i)));
        fact(table, "Floor of the house", i -> quantity("house_area", i));
        fact(table, "Plants per m² of floor", i -> values.two(values.line("plants_per_area"), i));
        fact(table, "Irrigation system", i -> values.text("irrigation_label", i));
        fact(table, "Plant stock", i -> values.text("stock_label_chosen", i));
        fact(table, "Currency", i -> comparison.figures().budget().currency());
        fact(table, "Year of the plan", i -> values.text("plan_year", i));
        return table.toString();
    }

    private void fact(TextTable table, String label, IntFunction<String> value) {
        List<String> cells = new ArrayList<>(List.of(label));
        scenarios.forEach(i -> cells.add(value.apply(i)));
        table.row(cells);
    }

    private String quantity(String id, int i) {
        return PriceReport.whole(values.number(id, i)) + " " + values.unit(values.line(id));
    }

    private String results() {
        TextTable table = table(List.of("", "Unit"), "Difference");
        for (Beside result : comparison.results()) {
            Line value = result.value();
            table.row(row(
                    List.of(value.label(), values.unit(value)),
                    i -> values.two(value, i),
                    i -> values.signed(result.difference(), i)));
        }
        return table.toString();
    }

    private String sections() {
        TextTable table = table(List.of("In short"), "Difference");
        for (int section = 0; section < values.line("section_label").size(); section++) {
            table.row(money(values.text("section_label", section), "section", section));
        }
        return table.total(left()).toString();
    }

    private List<String> left() {
        return single(values.line("left_value").label(), "left_value", "left_difference");
    }

    private String causes() {
        TextTable table = table(List.of("Receipts and costs"), "Difference");
        List<String> without = new ArrayList<>();
        for (int cause = 0; cause < values.line("cause_label").size(); cause++) {
            String label = values.text("cause_label", cause);
            if (isNowhere(cause)) {
                without.add(label);
            } else {
                table.row(money(label, "cause", cause));
            }
        }
        table.total(single("Sum of all rows", "cause_sum", "cause_sum_difference"))
                .row(left());
        String nowhere = "Nothing in any of them: " + String.join(", ", without);
        return table + (without.isEmpty() ? "" : TextTable.wrapped(nowhere));
    }

    private boolean isNowhere(int cause) {
        return scenarios.stream().allMatch(i -> values.number("cause_value", cause, i) == 0);
    }

    private String receipts() {
        TextTable table = table(List.of("Changed in this order", "Unit"), "More receipts");
        for (int factor = 0; factor < comparison.factors().size(); factor++) {
            Line value = comparison.factors().get(factor).value();
            int step = factor;
            table.row(row(
                    List.of(value.label(), values.unit(value)),
                    i -> values.two(value, i),
                    i -> ComparedValues.signed(values.number("receipts_step", step, i))));
        }
        Line sum = values.line("receipts_step_sum");
        return table.total(row(List.of("Difference in receipts", unit), i -> "", i -> values.signed(sum, i)))
                .toString();
    }

    /** A row of a table of money, its lines named {@code cause_value} and {@code cause_difference}. */
    private List<String> money(String label, String lines, int row) {
        return row(
                List.of(label),
                i -> PriceReport.two(values.number(lines + "_value", row, i)),
                i -> ComparedValues.signed(values.number(lines + "_difference", row, i)));
    }

    private List<String> single(String label, String value, String difference) {
        return row(
                List.of(label), i -> values.two(values.line(value), i), i -> values.signed(values.line(difference), i));
    }

    private TextTable table(List<String> first, String difference) {
        boolean pair = scenarios.size() == 2;
        List<String> header = row(first, values::name, i -> pair ? difference : difference + ", " + values.name(i));
        TextTable table = new TextTable(header, first.size());
        IntStream.range(first.size(), header.size()).forEach(table::right);
        return table;
    }

    /** The values of all scenarios, then the differences of all but the first. */
    private List<String> row(List<String> first, IntFunction<String> value, IntFunction<String> difference) {
        List<String> cells = new ArrayList<>(first);
        scenarios.forEach(i -> cells.add(value.apply(i)));
        scenarios.stream().skip(1).forEach(i -> cells.add(difference.apply(i)));
        return cells;
    }

    private static String cautions() {
        return "Money: prices carry their year and source; replace invented ones by quotations before you spend.\n"
                + "Rounded to two decimals; --csv has every digit.\n";
    }
}
