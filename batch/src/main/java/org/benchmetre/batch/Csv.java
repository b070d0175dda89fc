package org.benchmetre.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;

/** Comma-separated text with {@code \n} behind each row, a field in quotation marks only when it needs them. */
final class Csv {

    private static final CSVFormat FORM =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private final StringBuilder text = new StringBuilder();

    Csv(String... header) {
        row(header);
    }

    void row(String... fields) {
        try {
            FORM.printRecord(text, (Object[]) fields);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
