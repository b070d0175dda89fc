package org.benchmetre.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.benchmetre.budget.entry.NearNames;

/**
 * One CSV file: a header with column names and rows of text cells.
 *
 * <p>The file is UTF-8, with or without a byte order mark. Columns are separated by commas and numbers have a decimal
 * point; a header separated by semicolons makes it a file with semicolons and decimal commas, which is noted. Column
 * names are trimmed and folded to lower case. Short rows are read as if they ended in blank cells. Blank rows, and rows
 * whose first field begins with {@code #}, are skipped, before the header too. Rows keep the number that a spreadsheet
 * program shows beside them.
 *
 * <p>A file that cannot be read at all (size, encoding, nothing in it, a quotation mark left open, a required column
 * missing) is one fault, has no rows, and is said to be unreadable. A row with more fields than the header is a fault
 * and is left out, because nobody can tell which of its cells moved.
 */
public final class CsvTable {

    /** Rows below the header that any file may have; reading stops there. */
    static final int MOST_ROWS = 10_000;

    private final String file;
    private final Faults faults;
    private final ColumnNames header;
    private final boolean decimalComma;
    private final List<Row> rows = new ArrayList<>();
    private final List<Fault> ownFaults = new ArrayList<>();
    private boolean readable = true;
    private boolean leftOut;

    private CsvTable(String file, CsvText text, Faults faults) {
        this.file = file;
        this.faults = faults;
        this.decimalComma = text.separator() == ';';
        this.header = new ColumnNames(file, text.rows().get(0));
        List<CsvText.Fields> body = text.rows().subList(1, text.rows().size());
        ownFaults.addAll(header.faults(body));
        body.forEach(this::addRow);
        if (rows.size() > MOST_ROWS) {
            ownFaults.add(tooMany(MOST_ROWS));
        }
        ownFaults.forEach(faults::add);
    }

    private CsvTable(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
        this.decimalComma = false;
        this.header = new ColumnNames(file, new CsvText.Fields(0, List.of()));
        this.readable = false;
    }

    /**
     * Reads a file. Whatever is wrong with it is added to the faults; nothing is thrown for it.
     *
     * @param path the file
     * @param faults where faults and notes go, those of {@link #requireColumns} too
     * @return the table; unreadable and without rows when the file is
     */
    public static CsvTable read(Path path, Faults faults) {
        String file = String.valueOf(path.getFileName());
        try {
            return parsed(TextFile.read(path, Place.wholeFile(file)), file, faults);
        } catch (Unreadable e) {
            faults.add(e.fault());
            return absent(file, faults);
        }
    }

    /**
     * Reads a text. Whatever is wrong with it is added to the faults; nothing is thrown for it.
     *
     * @param text of a CSV file
     * @param file what places name it
     * @param faults where faults and notes go
     * @return the table; unreadable and without rows when the text is
     */
    public static CsvTable parse(String text, String file, Faults faults) {
        try {
            return parsed(text, file, faults);
        } catch (Unreadable e) {
            faults.add(e.fault());
            return absent(file, faults);
        }
    }

    private static CsvTable parsed(String read, String file, Faults faults) throws Unreadable {
        Place whole = Place.wholeFile(file);
        CsvText text = CsvText.parse(read, file, 1 + MOST_ROWS);
        if (text.rows().isEmpty()) {
            throw new Unreadable(whole, "an empty file", "a header row with column names");
        }
        if (text.separator() == ';') {
            faults.note(
                    whole,
                    "columns are separated by semicolons, so numbers are read with a decimal comma, such as 1,5");
        }
        return new CsvTable(file, text, faults);
    }

    /**
     * A table that a scenario does not have.
     *
     * @param file its name
     * @return without columns and rows
     */
    public static CsvTable none(String file) {
        CsvTable table = new CsvTable(file, new Faults());
        table.leftOut = true;
        return table;
    }

    /** A table that is not there, about which all has been said. */
    static CsvTable absent(String file, Faults faults) {
        return new CsvTable(file, faults);
    }

    /**
     * A table put together in memory.
     *
     * @param file what places name it
     * @param columns its columns
     * @param rows cells in the order of the columns
     * @return the table; its rows are numbered from 2, as in a file with one row of columns
     */
    public static CsvTable of(String file, List<String> columns, List<List<String>> rows) {
        List<CsvText.Fields> all = new ArrayList<>();
        all.add(new CsvText.Fields(1, columns));
        for (int i = 0; i < rows.size(); i++) {
            all.add(new CsvText.Fields(i + 2, rows.get(i)));
        }
        return new CsvTable(file, new CsvText(',', all), new Faults());
    }

    private void addRow(CsvText.Fields fields) {
        int count = fields.cells().size();
        if (count > header.width()) {
            ownFaults.add(new Fault(
                    new Place(file, fields.row(), ""),
                    count + " fields",
                    "at most " + header.width() + ", one for each column name"));
        } else {
            rows.add(new Row(this, fields.row(), fields.cells()));
        }
    }

    /**
     * The file's name without its folder, as places give it.
     *
     * @return for example {@code materials.csv}
     */
    public String file() {
        return file;
    }

    /**
     * The rows below the header, without blank rows, comments and rows with too many fields.
     *
     * @return in the order of the file, unchangeable; empty when the table is unreadable
     */
    public List<Row> rows() {
        return readable ? List.copyOf(rows) : List.of();
    }

    /**
     * Whether the table could be read. What other tables say about its rows can only be checked when it could.
     *
     * @return false when the file is absent or unreadable, or a required column is missing
     */
    public boolean isReadable() {
        return readable;
    }

    /**
     * Whether every row could be read, so that a key which is not in {@link #rows()} is not in the file either.
     *
     * @return true for a table that the scenario leaves out; false when the table is unreadable or a row was left out for having too
     *     many fields
     */
    public boolean isComplete() {
        return leftOut
                || readable
                        && ownFaults.stream().allMatch(fault -> fault.place().row() == header.row());
    }

    /**
     * Whether the header names a column.
     *
     * @param column its name in lower case
     * @return true when it is there, even if all its cells are blank
     */
    public boolean hasColumn(String column) {
        return header.has(column);
    }

    /**
     * Names the columns without which the table means nothing. When some are missing, one fault names them all, it
     * replaces the faults of the header and of single rows, and the table becomes unreadable. Does nothing more to a
     * table that already is.
     *
     * @param names column names in lower case
     * @return whether the table is readable
     */
    public boolean requireColumns(String... names) {
        List<Fault> missing = readable ? header.missing(List.of(names)) : List.of();
        if (!missing.isEmpty()) {
            faults.withdraw(ownFaults);
            missing.forEach(faults::add);
            readable = false;
        }
        return readable;
    }

    private Fault tooMany(int most) {
        String found = rows.size() > MOST_ROWS ? "more than " + MOST_ROWS : Integer.toString(rows.size());
        return new Fault(
                Place.wholeFile(file),
                found + " rows",
                "at most " + most + ", for each row is worked out in many tables");
    }

    /**
     * Says how many rows the table may have. When it has more, one fault says so, it replaces the faults of the header and of single
     * rows, and the table becomes unreadable.
     *
     * @param most rows below the header, comments and blank rows not counted
     * @return whether the table is readable
     */
    public boolean requireAtMost(int most) {
        if (readable && rows.size() > most) {
            faults.withdraw(ownFaults);
            faults.add(tooMany(most));
            readable = false;
        }
        return readable;
    }

    /**
     * Warns of every column that nothing reads, with the nearest of those that are read. An empty header warns of nothing.
     *
     * @param known names of columns that are read
     * @param to where the warnings go
     */
    void warnOfOthers(Collection<String> known, Faults to) {
        header.names().stream()
                .filter(Predicate.not(known::contains))
                .forEach(column -> to.warn(
                        new Place(file, header.row(), column), "nothing reads this column" + nearest(column, known)));
    }

    private static String nearest(String column, Collection<String> known) {
        return Optional.of(NearNames.didYouMean(column, known))
                .filter(Predicate.not(String::isEmpty))
                .map(question -> "; " + question)
                .orElse("");
    }

    boolean decimalComma() {
        return decimalComma;
    }

    /**
     * The names of the columns.
     *
     * @return in order, in lower case
     */
    public List<String> columns() {
        return header.names();
    }

    String cell(List<String> cells, String column) {
        return header.cell(cells, column);
    }
}
