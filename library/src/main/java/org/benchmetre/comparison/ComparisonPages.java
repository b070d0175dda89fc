package org.benchmetre.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Across;
import org.benchmetre.page.Block;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Column;
import org.benchmetre.page.Criterion;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/**
 * What a reader sees of a comparison: one page that answers, one of all causes. Every table has a column for each scenario and one for
 * the difference of each but the first.
 */
final class ComparisonPages {

    private static final int LABEL_WIDTH = 44;
    private static final int NUMBER_WIDTH = 14;
    private static final String SIGN = "Costs carry a minus sign, so that a plus in a difference means higher returns. "
            + "Only what a scenario lists is counted: its own Answer tells what is missing.";

    private static final List<String> FACTS = List.of(
            "scenario_title",
            "bench_metres",
            "plant_count",
            "house_area",
            "plants_per_area",
            "irrigation_label",
            "stock_label_chosen",
            "plan_year");

    private final Budget budget;
    private final List<String> names;
    private final Axis scenarios;
    private final String by;

    private ComparisonPages(Budget budget, List<String> names, Measure per) {
        this.budget = budget;
        this.names = names;
        this.scenarios = line("scenario_name").axes().get(0);
        this.by = ", " + per.words();
    }

    /**
     * The pages of a comparison.
     *
     * @param built its budget, results and factors
     * @param names of the scenarios
     * @param per by what money is divided
     * @return the answer, then the causes
     */
    static List<Page> of(ComparisonBudget built, List<String> names, Measure per) {
        ComparisonPages pages = new ComparisonPages(built.budget(), names, per);
        return List.of(pages.answer(built), pages.causes());
    }

    private Page answer(ComparisonBudget built) {
        Page page = Page.answer("Comparison", "Which returns more, and where does the difference come from?")
                .head(new Sentences(sentences()));
        Block cautions = new CautionList("", budget.cautions(), false);
        return page.left(
                        widths(),
                        sections(),
                        receipts(built.factors()),
                        new Across(
                                "What they are",
                                scenarios,
                                FACTS.stream()
                                        .map(id -> Criterion.of(line(id).label(), line(id)))
                                        .toList()),
                        results(built.results()))
                .foot(cautions);
    }

    private Page causes() {
        return Page.answer("Causes", "Which receipts and costs make the difference?")
                .left(widths(), rows());
    }

    private List<Integer> widths() {
        List<Integer> widths = new ArrayList<>(List.of(LABEL_WIDTH));
        IntStream.range(1, 2 * names.size()).forEach(i -> widths.add(NUMBER_WIDTH));
        return widths;
    }

    private List<Sentence> sentences() {
        return IntStream.rangeClosed(2, names.size())
                .boxed()
                .flatMap(i -> Stream.of(
                        new Sentence(line("answer_" + i), Tone.LEAD),
                        new Sentence(line("answer_costs_" + i), Tone.PLAIN),
                        new Sentence(line("answer_receipts_" + i), Tone.PLAIN)))
                .toList();
    }

    private Table sections() {
        Table table = byRow("In short" + by, "section");
        List<TableRow> rows = new ArrayList<>(table.rows());
        rows.add(left().total());
        return table.rows(rows).note(SIGN);
    }

    private Table rows() {
        Table table = byRow("Receipts and costs" + by, "cause");
        List<TableRow> rows =
                new ArrayList<>(table.rows().stream().map(TableRow::ifAny).toList());
        rows.add(single("Sum of all rows", line("cause_sum"), line("cause_sum_difference"))
                .total());
        rows.add(left());
        return table.rows(rows).note(SIGN);
    }

    private TableRow left() {
        return single(line("left_value").label(), line("left_value"), line("left_difference"));
    }

    private Table receipts(List<Beside> factors) {
        Line step = line("receipts_step");
        Axis axis = step.axes().get(0);
        List<TableRow> rows = new ArrayList<>();
        for (int i = 0; i < factors.size(); i++) {
            int factor = i;
            Line value = factors.get(i).value();
            rows.add(row(
                    withUnit(value),
                    scenario -> new CellRef(value, scenario),
                    scenario -> Column.of("", step, scenarios, scenario).cell(axis, factor)));
        }
        Line sum = line("receipts_step_sum");
        rows.add(row("Difference in receipts", scenario -> null, scenario -> new CellRef(sum, scenario))
                .total());
        String title = "Where the difference in receipts comes from" + by;
        Column[] columns =
                columns(line("factor_label"), step, step, "More receipts").toArray(Column[]::new);
        return Table.of(title, axis, columns).rows(rows);
    }

    private Table results(List<Beside> results) {
        Line first = results.get(0).value();
        List<TableRow> rows = results.stream()
                .map(result -> single(withUnit(result.value()), result.value(), result.difference()))
                .toList();
        return Table.of("Results", scenarios, singles(first).toArray(Column[]::new))
                .rows(rows);
    }

    /** A table of a value and a difference by row and scenario. */
    private Table byRow(String title, String lines) {
        Line value = line(lines + "_value");
        Line difference = line(lines + "_difference");
        Column[] columns =
                columns(line(lines + "_label"), value, difference, "Difference").toArray(Column[]::new);
        return Table.of(title, value.axes().get(0), columns);
    }

    private List<Column> columns(Line label, Line value, Line difference, String words) {
        List<Column> columns = new ArrayList<>(List.of(Column.of("", label)));
        for (int i = 0; i < names.size(); i++) {
            columns.add(Column.of(names.get(i), value, scenarios, i));
        }
        for (int i = 1; i < names.size(); i++) {
            columns.add(Column.of(differenceFrom(i, words), difference, scenarios, i));
        }
        return columns;
    }

    /** Columns of a table that has single figures alone. */
    private List<Column> singles(Line any) {
        List<Column> columns = new ArrayList<>(List.of(Column.of("", line("scenario_name"))));
        names.forEach(name -> columns.add(Column.of(name, any)));
        IntStream.range(1, names.size()).forEach(i -> columns.add(Column.of(differenceFrom(i, "Difference"), any)));
        return columns;
    }

    private String differenceFrom(int scenario, String words) {
        return names.size() == 2 ? words : words + ", " + names.get(scenario);
    }

    private TableRow single(String label, Line value, Line difference) {
        return row(label, i -> new CellRef(value, i), i -> new CellRef(difference, i));
    }

    /** The values of all scenarios, then the differences of all but the first. */
    private TableRow row(String label, IntFunction<CellRef> value, IntFunction<CellRef> difference) {
        List<CellRef> cells = new ArrayList<>();
        cells.add(null);
        IntStream.range(0, names.size()).mapToObj(value).forEach(cells::add);
        IntStream.range(1, names.size()).mapToObj(difference).forEach(cells::add);
        return TableRow.single(label, cells);
    }

    private String withUnit(Line line) {
        return line.label() + ", " + line.unit().display(budget.currency());
    }

    private Line line(String id) {
        return budget.line(id);
    }
}
