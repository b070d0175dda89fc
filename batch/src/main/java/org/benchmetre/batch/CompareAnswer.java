package org.benchmetre.batch;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.comparison.Comparison;

/** In a sentence a scenario: how much more or less it leaves than the first, and the largest causes, each with its number. */
final class CompareAnswer {

    private static final String ALIKE = "as much as";

    private final Comparison comparison;
    private final ComparedValues values;

    CompareAnswer(Comparison comparison) {
        this.comparison = comparison;
        this.values = new ComparedValues(comparison);
    }

    @Override
    public String toString() {
        return values.scenarios().stream()
                .skip(1)
                .map(i -> TextTable.wrapped(answer(i)))
                .collect(Collectors.joining());
    }

    private String answer(int i) {
        if (values.text("left_words", i).equals(ALIKE)) {
            return values.text("answer_" + (i + 1), 0);
        }
        String amount = PriceReport.two(values.number("left_apart", i)) + " " + values.unit(values.line("left_apart"));
        String words = values.text("left_words", i);
        return values.name(i) + " returns " + amount + " " + words + " " + values.name(0) + ": "
                + rows("section_label", "section_difference", i, ", ") + ". Largest differences in cost: "
                + largest("_" + (i + 1)) + ". Causes of the difference in receipts: "
                + rows("factor_label", "receipts_step", i, "; ") + ".";
    }

    private String rows(String labels, String difference, int i, String between) {
        return IntStream.range(0, values.line(labels).size())
                .mapToObj(row -> named(values.text(labels, row), values.number(difference, row, i)))
                .collect(Collectors.joining(between));
    }

    /** The costs that differ most, in the order of the comparison's own ranking. */
    private String largest(String scenario) {
        List<String> labels = IntStream.range(
                        0, values.line("largest_label" + scenario).size())
                .filter(place -> !values.text("largest_key" + scenario, place).isEmpty())
                .mapToObj(place -> named(
                        values.text("largest_label" + scenario, place),
                        values.number("largest_difference" + scenario, place)))
                .toList();
        return String.join("; ", labels);
    }

    private static String named(String label, double difference) {
        return label + " " + ComparedValues.signed(difference);
    }
}
