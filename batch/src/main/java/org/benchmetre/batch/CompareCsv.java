package org.benchmetre.batch;

import java.util.List;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.comparison.Beside;
import org.benchmetre.comparison.Comparison;

/**
 * A comparison as comma-separated text: {@code scenario,measure,cause,value,difference,unit}, scenario by scenario, with all digits. First
 * results; then by one measure the causes, their sum, its sections and what is left; then the factors of receipts, and behind each what it adds.
 */
final class CompareCsv {

    private final Csv csv = new Csv("scenario", "measure", "cause", "value", "difference", "unit");
    private final Comparison comparison;
    private final ComparedValues values;
    private final String measure;
    private final String unit;

    private CompareCsv(Comparison comparison) {
        this.comparison = comparison;
        this.values = new ComparedValues(comparison);
        this.measure = comparison.per().toString();
        this.unit = values.fileUnit(values.line("cause_value"));
    }

    static String of(Comparison comparison) {
        CompareCsv made = new CompareCsv(comparison);
        made.values.scenarios().forEach(made::scenario);
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
        String difference = values.difference(figure.difference(), i);
        csv.row(values.name(i), by, figure.key(), values.text(value.id(), i), difference, values.fileUnit(value));
    }

    /** The rows of a table of money, its lines named {@code cause_value} and {@code cause_difference}. */
    private void rows(int i, String before, String table) {
        List<String> keys = values.keys(table + "_value");
        for (int row = 0; row < keys.size(); row++) {
            String value = Numbers.plain(values.number(table + "_value", row, i));
            String difference = Numbers.plain(values.number(table + "_difference", row, i));
            csv.row(values.name(i), measure, before + keys.get(row), value, difference, unit);
        }
    }

    private void single(int i, String key, String value, String difference) {
        csv.row(values.name(i), measure, key, values.text(value, i), values.text(difference, i), unit);
    }

    private void factors(int i) {
        for (int row = 0; row < comparison.factors().size(); row++) {
            Beside factor = comparison.factors().get(row);
            beside(i, measure, factor);
            String effect = Numbers.plain(values.number("receipts_step", row, i));
            csv.row(values.name(i), measure, "receipts_by_" + factor.key(), "", effect, unit);
        }
    }
}
