package org.benchmetre.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;

/**
 * Comma-separated text with {@code \n} behind each row, a field in quotation marks only when it needs them. A text that begins as a formula
 * does gets an apostrophe before it, so that spreadsheet programs show it and compute nothing; numbers stay as they are.
 */
final class Csv {

    private static final CSVFormat FORM =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

    /** Signs that make a formula of a field, their wide forms included, and blanks that some programs skip before them. */
    private static final String BEGINNINGS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private final StringBuilder text = new StringBuilder();

    Csv(String... header) {
        row(header);
    }

    void row(String... fields) {
        try {
            FORM.printRecord(
                    text, (Object[]) Stream.of(fields).map(Csv::guarded).toArray(String[]::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is no number but begins as a formula does, as a text. */
    private static String guarded(String field) {
        return NUMBER.matcher(field).matches() ? field : text(field);
    }

    /** A field that is text even where it looks like a number; a sign alone is no formula. */
    static String text(String field) {
        return field.length() > 1 && BEGINNINGS.indexOf(field.charAt(0)) >= 0 ? "'" + field : field;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
