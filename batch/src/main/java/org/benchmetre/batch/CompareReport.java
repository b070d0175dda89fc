package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.Cause;
import org.benchmetre.Compared;
import org.benchmetre.Comparison;
import org.benchmetre.MarginByCause;
import org.benchmetre.ReceiptsStep;
import org.benchmetre.Result;
import org.benchmetre.ResultsCompared;
import org.benchmetre.Section;
import org.benchmetre.Total;
import org.benchmetre.budget.run.Figures;

/**
 * Scenarios side by side on a console, at most 100 columns, two decimals: what they are, their results, and by cause where the margin
 * comes from. Differences are against the first scenario.
 */
final class CompareReport {

    private static final int NAMED = 4;

    private final List<Compared> scenarios;
    private final Comparison comparison;
    private final MarginByCause margin;
    private final String unit;

    CompareReport(Comparison comparison, MarginByCause margin) {
        this.comparison = comparison;
        this.scenarios = comparison.scenarios();
        this.margin = margin;
        this.unit = margin.per().unitOfMoney(comparison.currency());
    }

    @Override
    public String toString() {
        return answers()
                + "\n"
                + what()
                + heading("Results; differences are against " + name(0))
                + results()
                + heading("By cause, " + margin.per().words() + ", " + unit)
                + "Costs carry a minus sign, so that a plus in a difference means that more is left.\n\n"
                + sections()
                + "\n"
                + causes()
                + heading("Where the difference in receipts comes from, "
                        + margin.per().words() + ", " + unit)
                + receipts()
                + "\n"
                + cautions();
    }

    private static String heading(String words) {
        return "\n" + TextTable.wrapped(words) + "\n";
    }

    /** In a sentence a scenario: how much more or less it leaves than the first, and the largest causes. */
    private String answers() {
        return IntStream.range(1, scenarios.size())
                .mapToObj(i -> TextTable.wrapped(answer(i)))
                .collect(Collectors.joining());
    }

    private String answer(int i) {
        double more = margin.left().difference(i);
        if (PriceReport.two(more).equals("0.00")) {
            return name(i) + " leaves as much as " + name(0) + ", "
                    + margin.per().words() + " and year.";
        }
        String amount = PriceReport.two(Math.abs(more)) + " " + unit + (more > 0 ? " more" : " less");
        String sections = Arrays.stream(Section.values())
                .map(section ->
                        section.label() + " " + signed(margin.total(section).difference(i)))
                .collect(Collectors.joining(", "));
        String largest = margin.causes().stream()
                .filter(cause -> cause.section() != Section.RECEIPTS)
                .sorted(Comparator.comparingDouble((Cause cause) -> -Math.abs(cause.difference(i))))
                .limit(NAMED)
                .filter(cause -> !PriceReport.two(cause.difference(i)).equals("0.00"))
                .map(cause -> cause.label() + " " + signed(cause.difference(i)))
                .collect(Collectors.joining("; "));
        String split = margin.receipts().stream()
                .map(step -> step.label() + " " + signed(step.effects().get(i)))
                .collect(Collectors.joining("; "));
        return name(i) + " leaves " + amount + " than " + name(0) + ": " + sections + ". Largest differences in cost: "
                + largest + ". Causes of the difference in receipts: " + split + ".";
    }

    private String what() {
        List<String> header = new ArrayList<>(List.of(""));
        scenarios.forEach(each -> header.add(each.name()));
        TextTable table = new TextTable(header, 1);
        fact(table, "Title", each -> each.plan().budget().title());
        fact(table, "Bench metres", each -> quantity(each, "bench_metres"));
        fact(table, "Plants", each -> PriceReport.whole(each.figures().number("plant_count")));
        fact(table, "Floor of the house", each -> quantity(each, "house_area"));
        fact(
                table,
                "Plants per m² of floor",
                each -> PriceReport.two(each.figures().number("plants_per_area")));
        fact(table, "Way to water", each -> each.figures().text("irrigation_label"));
        fact(table, "Plant stock", each -> each.figures().text("stock_label_chosen"));
        fact(table, "Currency", each -> each.plan().budget().currency());
        fact(table, "Year of the plan", each -> each.figures().text("plan_year"));
        return table.toString();
    }

    private void fact(TextTable table, String label, Function<Compared, String> value) {
        List<String> cells = new ArrayList<>(List.of(label));
        scenarios.forEach(each -> cells.add(value.apply(each)));
        table.row(cells);
    }

    private String quantity(Compared scenario, String id) {
        Figures figures = scenario.figures();
        String measured = figures.budget().line(id).unit().display(comparison.currency());
        return PriceReport.whole(figures.number(id)) + " " + measured;
    }

    private String results() {
        TextTable table = table(List.of("", "Unit"), "Difference");
        for (Result result : ResultsCompared.of(comparison)) {
            IntFunction<String> value = i -> result.has(i)
                    ? PriceReport.two(result.values().get(i))
                    : result.reasons().get(i);
            IntFunction<String> difference = i -> result.has(i) && result.has(0) ? signed(result.difference(i)) : "";
            table.row(row(List.of(result.label(), result.unit()), value, difference));
        }
        return table.toString();
    }

    private String sections() {
        TextTable table = table(List.of("In short"), "Difference");
        Arrays.stream(Section.values()).map(margin::total).forEach(total -> table.row(row(total)));
        return table.total(row(margin.left())).toString();
    }

    private List<String> row(Total total) {
        return row(
                List.of(total.label()), i -> PriceReport.two(total.values().get(i)), i -> signed(total.difference(i)));
    }

    private String causes() {
        TextTable table = table(List.of("Receipts and costs"), "Difference");
        Predicate<Cause> nowhere = cause -> cause.values().stream().allMatch(value -> value == 0);
        margin.causes().stream().filter(nowhere.negate()).forEach(cause -> table.row(row(cause)));
        table.total(row(margin.sum())).row(row(margin.left()));
        String without =
                margin.causes().stream().filter(nowhere).map(Cause::label).collect(Collectors.joining(", "));
        return table + (without.isEmpty() ? "" : TextTable.wrapped("Nothing in any of them: " + without));
    }

    private List<String> row(Cause cause) {
        return row(
                List.of(cause.label()), i -> PriceReport.two(cause.values().get(i)), i -> signed(cause.difference(i)));
    }

    private String receipts() {
        TextTable table = table(List.of("Changed in this order", "Unit"), "More receipts");
        for (ReceiptsStep step : margin.receipts()) {
            table.row(row(
                    List.of(step.label(), step.unit()),
                    i -> PriceReport.two(step.values().get(i)),
                    i -> signed(step.effects().get(i))));
        }
        IntToDoubleFunction whole = i -> margin.receipts().stream()
                .mapToDouble(step -> step.effects().get(i))
                .sum();
        return table.total(row(List.of("Difference in receipts", unit), i -> "", i -> signed(whole.applyAsDouble(i))))
                .toString();
    }

    private TextTable table(List<String> first, String difference) {
        boolean pair = scenarios.size() == 2;
        List<String> header = row(first, this::name, i -> pair ? difference : difference + ", " + name(i));
        TextTable table = new TextTable(header, first.size());
        IntStream.range(first.size(), header.size()).forEach(table::right);
        return table;
    }

    /** The values of all scenarios, then the differences of all but the first. */
    private List<String> row(List<String> first, IntFunction<String> value, IntFunction<String> difference) {
        List<String> cells = new ArrayList<>(first);
        IntStream.range(0, scenarios.size()).mapToObj(value).forEach(cells::add);
        IntStream.range(1, scenarios.size()).mapToObj(difference).forEach(cells::add);
        return cells;
    }

    private String name(int scenario) {
        return scenarios.get(scenario).name();
    }

    private static String signed(double number) {
        String shown = PriceReport.two(number);
        return number > 0 && !shown.equals("0.00") ? "+" + shown : shown;
    }

    private static String cautions() {
        return "Money: prices carry their year and source; replace invented ones by quotations before you spend.\n"
                + "Rounded to two decimals; --csv has every digit.\n";
    }
}
