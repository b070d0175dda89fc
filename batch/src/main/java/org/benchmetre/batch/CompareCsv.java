package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.benchmetre.Cause;
import org.benchmetre.Comparison;
import org.benchmetre.MarginByCause;
import org.benchmetre.ReceiptsStep;
import org.benchmetre.Result;
import org.benchmetre.ResultsCompared;
import org.benchmetre.Section;
import org.benchmetre.Total;
import org.benchmetre.budget.entry.Numbers;

/**
 * A comparison as comma-separated text: {@code scenario,measure,cause,value,difference,unit}, scenario by scenario, with all digits. First
 * results; then by one measure the causes, their sum, its sections and what is left; then the factors of receipts, and behind each what it adds.
 */
final class CompareCsv {

    private final Csv csv = new Csv("scenario", "measure", "cause", "value", "difference", "unit");
    private final List<String> names;

    private CompareCsv(Comparison comparison) {
        this.names = comparison.scenarios().stream().map(each -> each.name()).toList();
    }

    static String of(Comparison comparison, MarginByCause margin) {
        CompareCsv made = new CompareCsv(comparison);
        String unit = margin.per().unitOfMoney(comparison.currency());
        List<Result> results = ResultsCompared.of(comparison);
        List<Total> totals = new ArrayList<>(List.of(margin.sum()));
        Arrays.stream(Section.values()).map(margin::total).forEach(totals::add);
        totals.add(margin.left());
        for (int i = 0; i < made.names.size(); i++) {
            made.results(i, results);
            made.causes(i, margin.causes(), margin.per().toString(), unit);
            made.totals(i, totals, margin.per().toString(), unit);
            made.steps(i, margin.receipts(), margin.per().toString(), unit);
        }
        return made.csv.toString();
    }

    private void results(int i, List<Result> results) {
        for (Result result : results) {
            String value = result.has(i)
                    ? Numbers.plain(result.values().get(i))
                    : result.reasons().get(i);
            String difference = result.has(i) && result.has(0) ? Numbers.plain(result.difference(i)) : "";
            csv.row(names.get(i), result.measure(), result.key(), value, difference, result.unit());
        }
    }

    private void causes(int i, List<Cause> causes, String measure, String unit) {
        for (Cause cause : causes) {
            String value = Numbers.plain(cause.values().get(i));
            csv.row(names.get(i), measure, cause.key(), value, Numbers.plain(cause.difference(i)), unit);
        }
    }

    private void totals(int i, List<Total> totals, String measure, String unit) {
        for (Total total : totals) {
            String value = Numbers.plain(total.values().get(i));
            csv.row(names.get(i), measure, total.key(), value, Numbers.plain(total.difference(i)), unit);
        }
    }

    private void steps(int i, List<ReceiptsStep> steps, String measure, String unit) {
        for (ReceiptsStep step : steps) {
            String value = Numbers.plain(step.values().get(i));
            csv.row(names.get(i), measure, step.key(), value, Numbers.plain(step.difference(i)), step.unit());
            String effect = Numbers.plain(step.effects().get(i));
            csv.row(names.get(i), measure, "receipts_by_" + step.key(), "", effect, unit);
        }
    }
}
