package org.benchmetre.farm.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.Seeded;
import org.benchmetre.page.Column;
import org.benchmetre.page.Page;
import org.benchmetre.page.PrintedDigits;
import org.benchmetre.page.Product;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page of the enterprise budget: what stands on it, and that its printed digits multiply. */
class BudgetPageTest {

    private static final int SEEDS = 50;
    private static final int LETTERS = 150;
    /** Rows of 12.4 points on a sheet of A4 across, 0.8 of their size. */
    private static final int ROWS_OF_A_PAGE = 50;

    static Stream<Budget> plans() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse(), starter());
    }

    private static Budget starter() {
        Faults faults = new Faults();
        Budget starter = Sample.read(Path.of("..", "templates", "starter"), faults);
        assertThat(faults.faults()).isEmpty();
        return starter;
    }

    private static Table table(Budget budget) {
        return (Table) BudgetPage.of(budget).left().blocks().get(0);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void printed_quantity_times_printed_price_is_the_printed_value(Budget plan) {
        for (int seed = 0; seed <= SEEDS; seed++) {
            Budget budget = seed == 0 ? plan : Seeded.budget(plan, seed);
            multiplies(Figures.of(budget), table(budget), seed);
        }
    }

    private static void multiplies(Figures figures, Table table, int seed) {
        Product law = table.product().orElseThrow();
        List<PrintedDigits.Row> rows = new ArrayList<>();
        for (int row = 0; row < table.axis().size(); row++) {
            rows.add(new PrintedDigits.Row(
                    number(figures, table, law.quantity(), row),
                    number(figures, table, law.price(), row),
                    number(figures, table, law.value(), row)));
        }
        assertThat(rows).hasSizeGreaterThan(30);
        int least = MinorUnit.decimals(figures.budget().structure().currency());
        PrintedDigits digits = PrintedDigits.of(rows, 0, least);
        assertThat(digits.quantity()).as("case %s", seed).isBetween(1, 5);
        for (int row = 0; row < rows.size(); row++) {
            PrintedDigits.Row found = rows.get(row);
            int decimals = digits.prices().get(row);
            assertThat(decimals).isBetween(least, 9);
            assertThat(PrintedDigits.printed(found.quantity(), digits.quantity())
                            .multiply(PrintedDigits.printed(found.price(), decimals))
                            .setScale(0, RoundingMode.HALF_UP))
                    .as("%s, case %s: %s", table.axis().keys().get(row), seed, found)
                    .isEqualByComparingTo(PrintedDigits.printed(found.value(), 0));
        }
    }

    private static double number(Figures figures, Table table, Column column, int row) {
        CellRef cell = column.cell(table.axis(), row);
        return figures.number(cell.line(), cell.cell());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void every_row_of_the_budget_stands_once_and_in_its_part(Budget plan) {
        Table table = table(plan);
        assertThat(table.rows().stream().map(TableRow::index).filter(row -> row >= 0))
                .containsExactlyElementsOf(
                        IntStream.range(0, table.axis().size()).boxed().toList());
        Figures figures = Figures.of(plan);
        String heading = "";
        for (TableRow row : table.rows()) {
            heading = row.heading().isEmpty() ? heading : row.heading();
            if (row.index() >= 0) {
                String part = figures.text(plan.line("budget_kind"), row.index());
                assertThat(heading.toLowerCase(java.util.Locale.ROOT)).startsWith(part);
                assertThat(row.hiddenWhileNothing()).isTrue();
            } else {
                assertThat(row.cells()).hasSameSizeAs(table.columns());
                assertThat(row.tone() == Tone.TOTAL).isNotEqualTo(row.label().startsWith("Of that"));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void totals_stand_under_the_columns_they_add(Budget plan) {
        Table table = table(plan);
        for (TableRow row : table.rows()) {
            for (int i = 0; i < row.cells().size(); i++) {
                CellRef cell = row.cells().get(i);
                if (cell != null && i > 4) {
                    String column = table.columns().get(i).line().id();
                    assertThat(cell.line().id()).isEqualTo(column.replace("budget_", "budget_total_"));
                    assertThat(cell.line().unit())
                            .isEqualTo(table.columns().get(i).line().unit());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void it_fits_a_page(Budget plan) {
        Page page = BudgetPage.of(plan);
        assertThat(page.left().widths()).hasSameSizeAs(table(plan).columns());
        assertThat(page.left().widths().stream().mapToInt(width -> width).sum()).isLessThanOrEqualTo(LETTERS);
        Figures figures = Figures.of(plan);
        Table table = table(plan);
        long shown = table.rows().stream()
                .filter(row -> !row.hiddenWhileNothing() || isSomething(figures, table, row))
                .mapToLong(row -> row.heading().isEmpty() ? 1 : 2)
                .sum();
        assertThat(shown + 1).as("rows with headings and head").isBetween(25L, (long) ROWS_OF_A_PAGE);
    }

    private static boolean isSomething(Figures figures, Table table, TableRow row) {
        return table.decisive(row).stream().anyMatch(cell -> figures.number(cell.line(), cell.cell()) != 0);
    }
}
