package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Decimals;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The page Budget as somebody with a pocket calculator checks it: from the digits that are printed, and nothing else. A printed number is
 * off by half a unit of its last digit at the most, so a sum of n of them by n halves, and its own half.
 */
class PrintedBudgetTest {

    /** Costs of a plan that leaves nothing out; the sum of totals, not of rows. */
    private static final String ALL_COSTS = "Total cost of a year";

    private static final Pattern NUMBER = Pattern.compile("-?[\\d,]+(\\.\\d+)?");
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal NOISE = new BigDecimal("1e-9");

    /** Columns that are added up. */
    private static final List<String> ADDED = List.of(
            "Value", "Per metre", "Per plant", "Per m²", "Per kg", "In cash", "Low yield", "High yield", "Difference");

    /** Columns for each unit of something, and what the farm has of it. */
    private static final Map<String, String> UNITS = Map.of(
            "Per metre", "bench_metres", "Per plant", "plant_count", "Per m²", "house_area", "Per kg", "yield_total");

    static List<OpenedBook> books() throws IOException, ScenarioException {
        return OpenedBook.all();
    }

    /** A printed row: its label, and by heading the numbers that are printed. */
    private record Printed(String label, Map<String, BigDecimal> numbers) {

        BigDecimal number(String heading) {
            return numbers.get(heading);
        }

        /** Half a unit of the last digit that is printed; none of a dash, which is nothing but what is too small to print. */
        BigDecimal half(String heading) {
            return HALF.movePointLeft(number(heading).scale());
        }
    }

    private static List<Printed> rows(OpenedBook book) {
        Sheet sheet = book.workbook().getSheet("Budget");
        int head = IntStream.rangeClosed(0, sheet.getLastRowNum())
                .filter(row -> shown(sheet, row, 1).equals("Quantity"))
                .findFirst()
                .orElseThrow();
        Map<Integer, String> headings = new LinkedHashMap<>();
        sheet.getRow(head).forEach(cell -> headings.put(cell.getColumnIndex(), OpenedBook.shown(cell)));
        List<Printed> rows = new ArrayList<>();
        for (int row = head + 1; !shown(sheet, row, 0).isEmpty(); row++) {
            if (!sheet.getRow(row).getZeroHeight()) {
                rows.add(printed(sheet, row, headings));
            }
        }
        return rows;
    }

    private static Printed printed(Sheet sheet, int row, Map<Integer, String> headings) {
        Map<String, BigDecimal> numbers = new LinkedHashMap<>();
        headings.forEach((column, heading) -> {
            String text = shown(sheet, row, column);
            if (text.equals(Decimals.DASH)) {
                numbers.put(heading, BigDecimal.ZERO);
            } else if (column > 0 && NUMBER.matcher(text).matches()) {
                numbers.put(heading, new BigDecimal(text.replace(",", "")));
            }
        });
        return new Printed(shown(sheet, row, 0), numbers);
    }

    private static String shown(Sheet sheet, int row, int column) {
        Row cells = sheet.getRow(row);
        return cells == null ? "" : OpenedBook.shown(cells.getCell(column));
    }

    @ParameterizedTest
    @MethodSource("books")
    void quantity_times_price_is_value_to_the_printed_digit(OpenedBook book) {
        List<Printed> multiplied = rows(book).stream()
                .filter(row -> row.number("Quantity") != null)
                .toList();
        assertThat(multiplied).hasSizeGreaterThan(20);
        for (Printed row : multiplied) {
            BigDecimal value = row.number("Value");
            BigDecimal product = row.number("Quantity").multiply(row.number("Price"));
            assertThat(product.setScale(value.scale(), RoundingMode.HALF_UP))
                    .as(row.toString())
                    .isEqualTo(value);
        }
    }

    @ParameterizedTest
    @MethodSource("books")
    void the_rows_of_a_part_add_to_its_total_in_every_column(OpenedBook book) {
        List<Printed> part = new ArrayList<>();
        int totals = 0;
        for (Printed row : rows(book)) {
            if (row.label().startsWith("Total ") && !row.label().equals(ALL_COSTS)) {
                ADDED.forEach(heading -> addsUp(part, row, heading));
                part.clear();
                totals++;
            } else if (row.number("Quantity") != null) {
                part.add(row);
            }
        }
        assertThat(part).isEmpty();
        assertThat(totals).isEqualTo(4);
    }

    private static void addsUp(List<Printed> parts, Printed total, String heading) {
        List<Printed> signed =
                parts.stream().filter(row -> row.number(heading) != null).toList();
        BigDecimal sum = signed.stream().map(row -> row.number(heading)).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(sum)
                .as("%s of %s", heading, total)
                .isCloseTo(total.number(heading), within(slack(signed, total, heading)));
    }

    /** Half a unit for each printed number, of the last digit that any of them prints. */
    private static BigDecimal slack(List<Printed> rows, Printed total, String heading) {
        int digits = Stream.concat(rows.stream(), Stream.of(total))
                .mapToInt(row -> row.number(heading).scale())
                .max()
                .orElseThrow();
        return HALF.movePointLeft(digits)
                .multiply(BigDecimal.valueOf(rows.size() + 1L))
                .add(NOISE);
    }

    @ParameterizedTest
    @MethodSource("books")
    void totals_of_costs_add_up_and_leave_the_returns(OpenedBook book) {
        List<Printed> rows = rows(book);
        Map<String, Printed> byLabel =
                rows.stream().collect(Collectors.toMap(Printed::label, row -> row, (first, again) -> first));
        Printed receipts = byLabel.get("Total receipts");
        Printed operating = byLabel.get("Total operating costs");
        Printed ownership = byLabel.get("Total ownership costs");
        Printed overhead = byLabel.get("Total overhead");
        Printed aboveOperating = byLabel.get("Returns above operating costs");
        Printed costs = rows.get(rows.indexOf(overhead) + 1);
        Printed returns = rows.get(rows.size() - 1);
        assertThat(returns.label()).startsWith("Returns above");
        for (String heading : ADDED) {
            addsUp(List.of(operating, ownership, overhead), costs, heading);
            if (!heading.equals("Difference")) {
                addsUp(List.of(operating, aboveOperating), receipts, heading);
                addsUp(List.of(costs, returns), receipts, heading);
            }
        }
        Printed notInCash = rows.get(rows.indexOf(costs) + 1);
        assertThat(costs.number("Value").subtract(costs.number("In cash")))
                .as(notInCash.label())
                .isCloseTo(notInCash.number("Value"), within(costs.half("Value").multiply(BigDecimal.valueOf(3))));
    }

    @ParameterizedTest
    @MethodSource("books")
    void a_value_over_what_the_farm_has_is_the_value_for_each(OpenedBook book) {
        Figures figures = book.written().figures();
        int compared = 0;
        for (Printed row : rows(book)) {
            for (Map.Entry<String, String> unit : UNITS.entrySet()) {
                String heading = unit.getKey();
                if (row.number("Value") == null || row.number(heading) == null) {
                    continue;
                }
                BigDecimal farm = BigDecimal.valueOf(figures.number(unit.getValue()));
                BigDecimal slack =
                        row.half("Value").add(row.half(heading).multiply(farm)).add(NOISE);
                assertThat(row.number(heading).multiply(farm))
                        .as("%s of %s", heading, row)
                        .isCloseTo(row.number("Value"), within(slack));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
    }
}
