package org.benchmetre.scenario;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchmetre.budget.Rounding;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.NumberGate;
import org.benchmetre.budget.entry.Subject;
import org.benchmetre.budget.entry.Typed;
import org.benchmetre.budget.unit.Unit;

/**
 * A run of periods as long as the rows of a table ask for, such as the payments of loans: each row asks for the product of some of its
 * columns, and the longest counts. A row with a cell that is no number asks for nothing; its own entry says what is wrong with it.
 *
 * @param factors the columns
 * @param step the run is a multiple of this, and at least this
 * @param without length without a row
 * @param most longest run, a multiple of the step
 */
public record RunLength(List<Factor> factors, int step, int without, int most) {

    /**
     * A column that takes part.
     *
     * @param column its name
     * @param unit unit of a number without one behind it
     * @param usual what a blank cell stands for; 0 when the row then asks for nothing
     */
    public record Factor(String column, Unit unit, double usual) {

        private double of(Row row) {
            if (row.isBlank(column)) {
                return usual;
            }
            return read(row.text(column), row.decimalComma());
        }

        /** A number as it is typed, 0 for what is none. */
        double read(String text, boolean decimalComma) {
            Typed typed = new Typed(text, "", unit, decimalComma);
            Optional<Given> given = new NumberGate(new Subject(column, column, unit, ""), Bounds.ANY, Blank.NOTHING)
                    .accept(typed, Given.blank(unit))
                    .orElse(no -> {});
            return given.map(Given::number).orElse(0.0);
        }
    }

    /** Keeps its own copy. */
    public RunLength {
        factors = List.copyOf(factors);
    }

    /**
     * The periods of a table.
     *
     * @param rows its rows
     * @return keys {@code 1}, {@code 2} and so on
     */
    List<String> keys(Iterable<Row> rows) {
        double longest = 0;
        boolean isEmpty = true;
        for (Row row : rows) {
            isEmpty = false;
            double asked =
                    factors.stream().mapToDouble(factor -> factor.of(row)).reduce(1, (a, b) -> a * b);
            longest = asked > longest ? asked : longest;
        }
        return keys(isEmpty ? without : rounded(longest));
    }

    private int rounded(double longest) {
        return (int) Math.min(most, step * Math.max(1, Rounding.wholeUp(longest / step)));
    }

    /**
     * The periods of a run.
     *
     * @param length how many
     * @return keys {@code 1}, {@code 2} and so on
     */
    public static List<String> keys(int length) {
        return IntStream.rangeClosed(1, length).mapToObj(Integer::toString).toList();
    }
}
