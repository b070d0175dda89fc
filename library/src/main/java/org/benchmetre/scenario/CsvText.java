package org.benchmetre.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of comma- or semicolon-separated text, each with the number a spreadsheet program shows beside it: a quoted
 * field with line breaks stays within its row, a blank line is a row. Blank rows and rows whose first field begins with
 * {@code #} are left out.
 *
 * @param separator comma or semicolon, recognised from the first row that is neither blank nor a comment
 * @param rows the rows that count, the header first; may be empty
 */
record CsvText(char separator, List<Fields> rows) {

    /**
     * One row.
     *
     * @param row its number, from 1
     * @param cells its fields, trimmed
     */
    record Fields(int row, List<String> cells) {

        static Fields of(CSVRecord record) {
            List<String> cells = new ArrayList<>(record.size());
            record.forEach(cell -> cells.add(Phrases.trimmed(cell)));
            return new Fields(Math.toIntExact(record.getRecordNumber()), cells);
        }

        boolean counts() {
            return !cells.get(0).startsWith("#") && cells.stream().anyMatch(cell -> !cell.isEmpty());
        }
    }

    /** Reads rows until there is one more than wanted. */
    static CsvText parse(String text, String file, int most) throws Unreadable {
        char separator = separatorOf(text);
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .get();
        List<Fields> rows = new ArrayList<>();
        int read = 0;
        try (CSVParser parser = CSVParser.parse(text, format)) {
            for (CSVRecord record : parser) {
                read++;
                Fields fields = Fields.of(record);
                if (fields.counts()) {
                    rows.add(fields);
                }
                if (rows.size() > most) {
                    break;
                }
            }
        } catch (IOException | UncheckedIOException e) {
            throw new Unreadable(
                    new Place(file, read + 1, ""),
                    "a quoted field that is not closed, or is followed by more text",
                    "a closing quotation mark directly before the next separator or the end of the row, and quotation"
                            + " marks inside a quoted field written twice");
        }
        return new CsvText(separator, rows);
    }

    private static char separatorOf(String text) {
        return text.lines()
                .map(Phrases::trimmed)
                .filter(CsvText::mayBeHeader)
                .findFirst()
                .filter(line -> countUnquoted(line, ';') > countUnquoted(line, ','))
                .map(line -> ';')
                .orElse(',');
    }

    private static boolean mayBeHeader(String line) {
        boolean comment = line.startsWith("#") || line.startsWith("\"#");
        return !comment && line.chars().anyMatch(c -> c != ',' && c != ';');
    }

    private static int countUnquoted(String line, char wanted) {
        boolean quoted = false;
        int count = 0;
        for (char c : line.toCharArray()) {
            quoted ^= c == '"';
            count += c == wanted && !quoted ? 1 : 0;
        }
        return count;
    }
}
