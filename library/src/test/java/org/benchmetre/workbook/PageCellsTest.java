package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Sheet;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Page;
import org.benchmetre.page.Table;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What readers of the pages see in the cells of the workbooks of both samples and the starter, as written. */
class PageCellsTest {

    /** Digits behind the point of what is shown. */
    private static final Pattern DECIMALS = Pattern.compile("\\d(?:\\.(\\d+))?(?: ?%)?$");

    private static final Set<Look.Role> HEADS =
            Set.of(Look.Role.HEADING, Look.Role.HEAD, Look.Role.HEAD_NUMBER, Look.Role.BLOCK);

    /** Entries whose cells hold keys, since a key is what is typed there. */
    private static final Set<TextForm.Kind> OF_KEYS = Set.of(TextForm.Kind.OWN_KEY, TextForm.Kind.KEYS);

    /** Letters of the usual font that the edges of a cell take: 5 of the 7 dots that are a digit's width. */
    private static final double EDGES = 5.0 / 7;

    /** Widths of Helvetica against its digits (Adobe Core 14 font metrics). */
    private static final Map<Character, Double> NARROW = Map.of('.', 0.5, ',', 0.5, '-', 0.6, ' ', 0.5);

    private static final double PER_CENT = 1.6;
    /** Parts of a letter in which widths are kept. */
    private static final double WIDTH_PARTS = 256;

    static List<OpenedBook> books() throws IOException, ScenarioException {
        return OpenedBook.all();
    }

    /** Numbers of one unit in one column of one block. */
    private record Group(String page, int column, int block, Unit unit) {}

    @ParameterizedTest
    @MethodSource("books")
    void a_column_prints_the_numbers_of_one_unit_with_one_number_of_decimals(OpenedBook book) {
        Map<Group, Map<Integer, List<String>>> found = new LinkedHashMap<>();
        for (PagePlan page : book.plan().pages()) {
            if (page.page().kind() == Page.Kind.ANSWER) {
                columns(page).forEach((column, cells) -> decimals(book, page, cells, found));
            }
        }
        assertThat(found).hasSizeGreaterThan(30);
        assertThat(found.entrySet().stream().filter(group -> group.getValue().size() > 1))
                .isEmpty();
    }

    /** The cells of each column from top to bottom; one that runs over several columns stands in each of them. */
    private static Map<Integer, List<PageCell>> columns(PagePlan page) {
        Map<Integer, TreeMap<Integer, PageCell>> columns = new TreeMap<>();
        for (PageCell cell : page.cells()) {
            for (int column = cell.column(); column <= cell.last(); column++) {
                columns.computeIfAbsent(column, any -> new TreeMap<>()).put(cell.row(), cell);
            }
        }
        Map<Integer, List<PageCell>> sorted = new TreeMap<>();
        columns.forEach((column, cells) -> sorted.put(column, List.copyOf(cells.values())));
        return sorted;
    }

    private static void decimals(
            OpenedBook book, PagePlan page, List<PageCell> cells, Map<Group, Map<Integer, List<String>>> found) {
        Set<Line> prices = prices(page.page());
        int block = 0;
        for (PageCell cell : cells) {
            block += HEADS.contains(cell.role()) ? 1 : 0;
            CellRef ref = ref(cell);
            Cell written = book.cell(new Spot(page.name(), cell.row(), cell.column()));
            if (ref == null || prices.contains(ref.line()) || OpenedBook.isFolded(written)) {
                continue;
            }
            Matcher digits = DECIMALS.matcher(OpenedBook.shown(written));
            if (OpenedBook.type(written) == CellType.NUMERIC && digits.find()) {
                int count = digits.group(1) == null ? 0 : digits.group(1).length();
                Unit unit = unit(book, page, cell, ref);
                found.computeIfAbsent(new Group(page.name(), cell.column(), block, unit), any -> new HashMap<>())
                        .computeIfAbsent(count, any -> new ArrayList<>())
                        .add(OpenedBook.shown(written));
            }
        }
    }

    private static Unit unit(OpenedBook book, PagePlan page, PageCell cell, CellRef ref) {
        Line line = ref.line();
        boolean asTyped =
                cell.content() instanceof PageCell.Typed && page.beside().isConverted(line);
        return asTyped ? book.plan().budget().given(line).get(ref.cell()).typedIn() : line.unit();
    }

    private static CellRef ref(PageCell cell) {
        if (cell.content() instanceof PageCell.Shown shown) {
            return shown.ref();
        }
        return cell.content() instanceof PageCell.Typed typed ? typed.ref() : null;
    }

    /** Lines of prices that are multiplied: each prints with the digits that its product needs. */
    private static Set<Line> prices(Page page) {
        return page.blocks().stream()
                .filter(Table.class::isInstance)
                .flatMap(block -> ((Table) block).product().stream())
                .map(law -> law.price().line())
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @MethodSource("books")
    void no_page_shows_a_key(OpenedBook book) {
        Set<String> keys = keys(book);
        Set<Spot> typedKeys = typedKeys(book);
        typedKeys.addAll(units(book));
        List<String> found = pageCells(book)
                .filter(cell -> OpenedBook.type(cell) == CellType.STRING)
                .filter(cell -> !typedKeys.contains(Agreement.spot(cell)))
                .filter(cell -> keys.contains(OpenedBook.shown(cell))
                        || OpenedBook.shown(cell).contains("_"))
                .map(PageCellsTest::told)
                .toList();
        assertThat(found).isEmpty();
    }

    /** The keys of the rows and periods of all tables. */
    private static Set<String> keys(OpenedBook book) {
        Set<String> keys = new HashSet<>();
        for (Line line : book.plan().budget().lines()) {
            for (Axis axis : line.axes()) {
                for (int i = 0; i < axis.size(); i++) {
                    keys.add(axis.keys().get(i));
                }
            }
        }
        return keys;
    }

    /** Cells of units: some read like a key, such as plants. */
    private static Set<Spot> units(OpenedBook book) {
        Set<Spot> units = new HashSet<>();
        for (PagePlan page : book.plan().pages()) {
            for (PageCell cell : page.cells()) {
                if (ref(cell) != null && ref(cell).line().id().endsWith("_unit")) {
                    units.add(new Spot(page.name(), cell.row(), cell.column()));
                }
            }
        }
        return units;
    }

    private static Set<Spot> typedKeys(OpenedBook book) {
        return book.plan().budget().lines().stream()
                .filter(line -> book.plan().budget().entry(line).isPresent())
                .filter(line -> OF_KEYS.contains(
                        book.plan().budget().entry(line).orElseThrow().form().kind()))
                .flatMap(line -> Stream.iterate(0, cell -> cell < line.size(), cell -> cell + 1)
                        .map(cell -> book.plan().typedSpot(line, cell)))
                .collect(Collectors.toSet());
    }

    private static Stream<Cell> pageCells(OpenedBook book) {
        return book.plan().pages().stream().flatMap(page -> OpenedBook.cells(book.sheet(page)));
    }

    private static Stream<Cell> allCells(OpenedBook book) {
        return StreamSupport.stream(book.workbook().spliterator(), false).flatMap(OpenedBook::cells);
    }

    private static String told(Cell cell) {
        return Agreement.spot(cell).reference() + ": " + OpenedBook.shown(cell);
    }

    @ParameterizedTest
    @MethodSource("books")
    void no_cell_of_any_sheet_has_a_unit_a_truth_or_an_error_as_programs_write_them(OpenedBook book) {
        List<String> found = allCells(book)
                .filter(cell -> Set.of(CellType.BOOLEAN, CellType.ERROR).contains(OpenedBook.type(cell))
                        || OpenedBook.shown(cell).equalsIgnoreCase("true")
                        || OpenedBook.shown(cell).equalsIgnoreCase("false")
                        || OpenedBook.shown(cell).contains(" a)")
                        || OpenedBook.shown(cell).startsWith("#"))
                .map(PageCellsTest::told)
                .toList();
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("books")
    void every_number_fits_its_column(OpenedBook book) {
        List<String> found = allCells(book)
                .filter(cell -> OpenedBook.type(cell) == CellType.NUMERIC)
                .filter(cell -> !cell.getCellStyle().getShrinkToFit())
                .filter(cell -> width(OpenedBook.shown(cell)) > letters(cell) - EDGES && !isMerged(cell))
                .map(cell -> told(cell) + " in " + letters(cell))
                .toList();
        assertThat(found).isEmpty();
    }

    private static double width(String shown) {
        return shown.chars()
                .mapToDouble(letter -> letter == '%' ? PER_CENT : NARROW.getOrDefault((char) letter, 1.0))
                .sum();
    }

    /** How wide the column of a cell is. */
    private static double letters(Cell cell) {
        return cell.getSheet().getColumnWidth(cell.getColumnIndex()) / WIDTH_PARTS;
    }

    private static boolean isMerged(Cell cell) {
        Sheet sheet = cell.getSheet();
        return sheet.getMergedRegions().stream().anyMatch(region -> region.isInRange(cell));
    }
}
