package org.benchmetre.batch;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.comparison.Beside;
import org.benchmetre.comparison.Comparison;

/**
 * A comparison as comma-separated text: {@code scenario,measure,cause,value,difference,unit}, scenario by scenario, with all digits. First
 * results; then by one measure the causes, their sum, its sections and what is left; then the factors of receipts, and behind each what it adds.
 */
final class CompareCsv {

    private final Csv csv = new Csv("scenario", "measure", "cause", "value", "difference", "unit");
    private final Comparison comparison;
    private final Figures figures;
    private final Axis scenarios;
    private final String measure;
    private final String unit;

    private CompareCsv(Comparison comparison) {
        this.comparison = comparison;
        this.figures = comparison.figures();
        this.scenarios = line("scenario_name").axes().get(0);
        this.measure = comparison.per().toString();
        this.unit = unit(line("cause_value"));
    }

    static String of(Comparison comparison) {
        CompareCsv made = new CompareCsv(comparison);
        IntStream.range(0, made.scenarios.size()).forEach(made::scenario);
        return made.csv.toString();
    }

    private void scenario(int i) {
        for (Beside result : comparison.results()) {
            beside(i, result.measure(), result);
        }
        rows(i, "", "cause");
        single(i, "sum", "cause_sum", "cause_sum_difference");
        rows(i, "total_", "section");
        single(i, "left", "left_value", "left_difference");
        factors(i);
    }

    private void beside(int i, String by, Beside figure) {
        Line value = figure.value();
        String difference = difference(figure.difference(), i);
        csv.row(name(i), by, figure.key(), text(value.id(), i), difference, unit(value));
    }

    /** The rows of a table of money, its lines named {@code cause_value} and {@code cause_difference}. */
    private void rows(int i, String before, String table) {
        List<String> keys = line(table + "_value").axes().get(0).keys();
        for (int row = 0; row < keys.size(); row++) {
            String value = Numbers.plain(number(table + "_value", row, i));
            String difference = Numbers.plain(number(table + "_difference", row, i));
            csv.row(name(i), measure, before + keys.get(row), value, difference, unit);
        }
    }

    private void single(int i, String key, String value, String difference) {
        csv.row(name(i), measure, key, text(value, i), text(difference, i), unit);
    }

    private void factors(int i) {
        for (int row = 0; row < comparison.factors().size(); row++) {
            Beside factor = comparison.factors().get(row);
            beside(i, measure, factor);
            String effect = Numbers.plain(number("receipts_step", row, i));
            csv.row(name(i), measure, "receipts_by_" + factor.key(), "", effect, unit);
        }
    }

    private Line line(String id) {
        return figures.budget().line(id);
    }

    private String name(int scenario) {
        return text("scenario_name", scenario);
    }

    private String text(String id, int cell) {
        return figures.text(line(id), cell);
    }

    private double number(String id, int row, int scenario) {
        Line line = line(id);
        Position position = Position.NONE.with(line.axes().get(0), row).with(scenarios, scenario);
        return figures.number(line, line.cellAt(position));
    }

    /** A difference with every digit; empty where there is none. */
    private String difference(Line line, int cell) {
        return figures.hasReason(line, cell) ? "" : Numbers.plain(figures.number(line, cell));
    }

    private String unit(Line line) {
        return line.unit().inFiles(figures.budget().currency());
    }
}
