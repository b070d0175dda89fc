package org.benchmetre.farm.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.page.Block;
import org.benchmetre.page.Column;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each cell that a file keeps can be changed in one place of the pages and in no other. */
class EntriesHaveOneHomeTest {

    private static final Path STARTER = Path.of("..", "templates", "starter");

    static Stream<Budget> budgets() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse(), Sample.read(STARTER, new Faults()));
    }

    private static Stream<Block> blocks(Budget budget) {
        return FarmPages.of(budget).stream().flatMap(page -> page.blocks().stream());
    }

    private static List<Line> levers(Budget budget) {
        return blocks(budget)
                .filter(Levers.class::isInstance)
                .flatMap(block -> ((Levers) block).rows().stream().map(row -> row.line()))
                .toList();
    }

    private static List<Line> listed(Budget budget) {
        return blocks(budget)
                .filter(EntryList.class::isInstance)
                .flatMap(block -> ((EntryList) block).entries().stream())
                .toList();
    }

    private static Stream<CellRef> typed(EntryTable table) {
        return table.columns().stream().flatMap(column -> column.cells(table.axis()).stream());
    }

    @ParameterizedTest
    @MethodSource("budgets")
    void every_single_entry_is_listed_once_and_a_lever_is_one_of_them(Budget budget) {
        List<Line> singles = kept(budget).stream()
                .filter(line -> line.axes().isEmpty() && !budget.isEnd(line))
                .toList();
        assertThat(singles).hasSizeGreaterThan(150);
        assertThat(kept(budget).stream().filter(line -> line.axes().isEmpty() && budget.isEnd(line)))
                .isNotEmpty()
                .allMatch(end -> singles.stream()
                        .anyMatch(line -> budget.ends(line)
                                .filter(ends -> ends.low() == end || ends.high() == end)
                                .isPresent()));
        assertThat(listed(budget)).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(singles);
        assertThat(levers(budget)).hasSizeGreaterThan(8).doesNotHaveDuplicates();
        assertThat(singles).containsAll(levers(budget));
    }

    @ParameterizedTest
    @MethodSource("budgets")
    void every_cell_of_a_table_stands_in_one_column(Budget budget) {
        List<CellRef> cells = new ArrayList<>();
        kept(budget).stream()
                .filter(line -> !line.axes().isEmpty())
                .forEach(line -> IntStream.range(0, line.size()).forEach(cell -> cells.add(new CellRef(line, cell))));
        List<CellRef> found = blocks(budget)
                .filter(EntryTable.class::isInstance)
                .flatMap(block -> typed((EntryTable) block))
                .toList();
        assertThat(cells).hasSizeGreaterThan(1000);
        assertThat(found).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(cells);
    }

    private static List<Line> kept(Budget budget) {
        return budget.lines().stream()
                .filter(line -> budget.entry(line)
                        .map(Entry::home)
                        .filter(home -> home.isKept())
                        .isPresent())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("budgets")
    void keys_come_first_and_sources_last(Budget budget) {
        List<FarmTable> tables = Arrays.stream(FarmTable.values())
                .filter(table -> table != FarmTable.CROPS || table.hasRows(budget.structure()))
                .toList();
        for (FarmTable table : tables) {
            List<String> columns = FileColumns.table(budget, table.file(), "").columns().stream()
                    .map(Column::line)
                    .map(line ->
                            budget.entry(line).orElseThrow().home().columns().get(0))
                    .toList();
            assertThat(columns).startsWith(table.key());
            assertThat(columns.contains("source"))
                    .isEqualTo(columns.get(columns.size() - 1).equals("source"));
        }
    }

    @Test
    void what_subjects_and_headings_name_is_entered() {
        Budget budget = Sample.troughHouse();
        assertThat(Subjects.named())
                .isNotEmpty()
                .allSatisfy(
                        id -> assertThat(budget.entry(budget.line(id))).as(id).isPresent());
        assertThat(Subjects.named()).doesNotHaveDuplicates();
        assertThat(ShortHeadings.known())
                .allSatisfy(
                        id -> assertThat(budget.entry(budget.line(id))).as(id).isPresent());
    }

    @Test
    void a_subject_stands_for_every_schedule_that_has_entries() {
        assertThat(Subjects.of(Sample.troughHouse()).keySet())
                .containsExactly(
                        "House and benches",
                        "Trough and substrate",
                        "Planting and crop",
                        "Irrigation and water",
                        "Nutrient solution",
                        "Climate, heat and power",
                        "Selling",
                        "Labour",
                        "Money and plan",
                        "Funds and loans",
                        "What a bank looks at",
                        "What a whole budget holds");
    }

    /** A column that the user's page lists behind another one stands behind it on the page of entries too. */
    @Test
    void columns_stand_as_the_readme_lists_them() throws IOException {
        String readme = Files.readString(Path.of("..", "README.md"));
        Map<String, String> told = new TreeMap<>();
        readme.lines()
                .filter(row -> row.startsWith("| `") && row.contains(".csv`"))
                .forEach(row -> told.put(row.substring(3, row.indexOf(".csv`") + 4), row));
        for (String file : List.of(FarmTable.MATERIALS.file(), FarmTable.STOCK_PRICES.file(), FarmTable.TASKS.file())) {
            int at = 0;
            for (String column : FileColumns.ORDER.get(file)) {
                if (column.contains("*")) {
                    continue;
                }
                int next = place(told.get(file), column, at);
                assertThat(next).as("%s of %s", column, file).isPositive();
                at = next;
            }
        }
        assertThat(FileColumns.ORDER).containsKey(Months.FILE).hasSize(FarmTable.values().length + 1);
    }

    private static int place(String row, String column, int from) {
        int next = from;
        do {
            next = row.indexOf(column, next + 1);
        } while (next > 0 && isPartOfAWord(row, next, column));
        return next;
    }

    private static boolean isPartOfAWord(String row, int at, String column) {
        String around = row.substring(at - 1, at) + row.substring(at + column.length(), at + column.length() + 1);
        return !around.matches("[,`][,`]");
    }

    @Test
    void names_of_pages_differ_and_each_says_what_it_answers() {
        List<Page> pages = FarmPages.of(Sample.troughHouse());
        assertThat(pages.stream().map(Page::name)).doesNotHaveDuplicates().startsWith("Answer");
        assertThat(pages.stream().map(Page::question)).noneMatch(String::isBlank);
    }
}
