package org.benchmetre.checks;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the tables of published figures that stand beside the checks. */
public final class PublishedFiles {

    private PublishedFiles() {}

    /** Every row of a file, by its header. */
    public static List<CSVRecord> rows(String name) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream in = PublishedFiles.class.getResourceAsStream(name);
                InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        }
    }
}
