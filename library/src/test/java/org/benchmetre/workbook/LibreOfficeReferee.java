package org.benchmetre.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/**
 * LibreOffice as a second referee. One run opens the workbook of every budget once; for each case it types the changes in,
 * recalculates every formula, saves what each sheet shows and types the former values back.
 */
public final class LibreOfficeReferee {

    private final Path folder;
    private final List<Book> books = new ArrayList<>();

    /**
     * A referee that works in a folder of its own.
     *
     * @param folder an empty folder that the caller removes
     */
    public LibreOfficeReferee(Path folder) {
        this.folder = folder;
    }

    /** Skips the test when LibreOffice is not installed; in continuous integration ({@code CI=true}) fails instead. */
    public static void require() {
        LibreOffice.require();
    }

    /**
     * A workbook to be looked at.
     *
     * @param budget the budget that is written
     * @return the workbook, without a case
     * @throws IOException when the workbook cannot be made
     */
    public Book book(Budget budget) throws IOException {
        return book(budget, Setup.WORKINGS_ALONE);
    }

    /**
     * A workbook with pages to be looked at.
     *
     * @param budget the budget that is written
     * @param setup its pages
     * @return the workbook, without a case
     * @throws IOException when the workbook cannot be made
     */
    public Book book(Budget budget, Setup setup) throws IOException {
        Written of = Written.of(budget, setup);
        return add(of, of.bytes());
    }

    /** A workbook that was written from a budget and perhaps tampered with. */
    Book book(Budget budget, byte[] written) {
        return add(Written.bare(budget), written);
    }

    private Book add(Written of, byte[] written) {
        Book book = new Book(of, written, "book" + books.size());
        books.add(book);
        return book;
    }

    /**
     * Recalculates all cases of all workbooks.
     *
     * @throws IOException when a file cannot be written or LibreOffice does not do its work
     */
    public void recalculate() throws IOException {
        List<String> steps = new ArrayList<>();
        for (Book book : books) {
            Files.write(book.file(".xlsx"), book.written);
            book.steps(steps);
        }
        LibreOffice.run(folder, steps);
    }

    /**
     * Recalculates all cases of all workbooks and compares them.
     *
     * @return differences, empty when all agree
     * @throws IOException when a file cannot be written or LibreOffice does not do its work
     */
    public List<String> differences() throws IOException {
        recalculate();
        List<String> all = new ArrayList<>();
        for (Book book : books) {
            all.addAll(book.differences());
        }
        return all;
    }

    /** The workbook of one budget, and what is typed into it. */
    public final class Book {

        private final Written of;
        private final byte[] written;
        private final String name;
        private final List<Map<Line, Map<Integer, Given>>> cases = new ArrayList<>();

        private Book(Written of, byte[] written, String name) {
            this.of = of;
            this.written = written;
            this.name = name;
        }

        /**
         * Adds a case.
         *
         * @param changes what is typed in; may be empty
         * @return this
         */
        public Book add(Map<Line, Map<Integer, Given>> changes) {
            cases.add(changes);
            return this;
        }

        private Path file(String ending) {
            return folder.resolve(name + ending);
        }

        private void steps(List<String> steps) {
            steps.add("open\t" + file(".xlsx").toUri());
            for (int i = 0; i < cases.size(); i++) {
                Typing.of(of.plan(), cases.get(i)).forEach(typing -> steps.add(step(typing)));
                steps.add("save\t" + file("-" + i + ".csv").toUri());
                Typing.back(of.plan(), cases.get(i)).forEach(typing -> steps.add(step(typing)));
            }
            steps.add("close");
        }

        private static String step(Typing typing) {
            Spot spot = typing.spot();
            String kind = typing.value() instanceof Double ? "number" : "text";
            return String.join(
                    "\t",
                    kind,
                    spot.sheet(),
                    Integer.toString(spot.column()),
                    Integer.toString(spot.row()),
                    typing.value().toString());
        }

        private List<String> differences() throws IOException {
            try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written))) {
                Agreement agreement = Agreement.of(workbook, of.plan());
                Figures figures = of.figures();
                return IntStream.range(0, cases.size())
                        .parallel()
                        .mapToObj(i -> differences(agreement, figures, i))
                        .flatMap(List::stream)
                        .toList();
            }
        }

        private List<String> differences(Agreement agreement, Figures figures, int i) {
            Map<String, List<List<Object>>> sheets = new HashMap<>();
            return agreement
                    .differences(
                            spot -> value(sheets.computeIfAbsent(spot.sheet(), sheet -> sheet(i, sheet)), spot),
                            figures.typedOver(cases.get(i)))
                    .stream()
                    .map(difference -> name + ", case " + i + ": " + difference)
                    .toList();
        }

        /** What a cell of a line shows in a case. */
        Object shown(int i, String id, int cell) {
            return shown(i, of.plan().spot(of.budget().line(id), cell));
        }

        /** What a cell shows in a case. */
        Object shown(int i, Spot spot) {
            return value(sheet(i, spot.sheet()), spot);
        }

        private List<List<Object>> sheet(int i, String sheet) {
            try {
                return SheetText.rows(Files.readString(file("-" + i + "-" + sheet + ".csv"), StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static Object value(List<List<Object>> rows, Spot spot) {
            List<Object> row = spot.row() < rows.size() ? rows.get(spot.row()) : List.of();
            return spot.column() < row.size() ? row.get(spot.column()) : "";
        }
    }
}
