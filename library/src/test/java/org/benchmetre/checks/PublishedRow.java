package org.benchmetre.checks;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/**
 * A row of {@code published.csv}.
 *
 * @param id its name
 * @param reads the cell of a line that is read, or the name of a reading of {@link Readings}
 * @param inputs what is entered, {@code line=number unit} and the like, apart by semicolons
 * @param expected digits, of a printed row as the source prints them
 * @param unit of the expected number
 * @param kind {@link #PRINTED} or one of {@link #WORKED_OUT}
 * @param within how near it must come; empty is half a unit of the last printed digit
 * @param reason of what stands in {@code within}
 * @param source who says so
 */
record PublishedRow(
        String id,
        String reads,
        String inputs,
        String expected,
        String unit,
        String kind,
        String within,
        String reason,
        String source) {

    /** The number stands in the source. */
    static final String PRINTED = "printed";

    /** The number is our own, by a formula or definition of the source, or remembered. */
    static final List<String> WORKED_OUT =
            List.of("own arithmetic on printed inputs", "own arithmetic", "definition", "from memory");

    static PublishedRow of(CSVRecord row) {
        return new PublishedRow(
                row.get("id"),
                row.get("reads"),
                row.get("inputs"),
                row.get("expected"),
                row.get("unit"),
                row.get("kind"),
                row.get("within"),
                row.get("reason"),
                row.get("source"));
    }

    double number() {
        return Double.parseDouble(expected);
    }

    double allowed() {
        return within.isEmpty() ? halfOfLastDigit(expected) : Double.parseDouble(within);
    }

    static double halfOfLastDigit(String digits) {
        return new BigDecimal(digits).ulp().doubleValue() / 2;
    }

    @Override
    public String toString() {
        return kind + ": " + id;
    }
}
