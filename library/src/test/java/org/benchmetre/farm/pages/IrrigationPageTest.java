package org.benchmetre.farm.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.page.Across;
import org.benchmetre.page.Block;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.Page;
import org.benchmetre.page.Panel;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page on irrigation: every system has its column, at most as wide as a sheet of Letter across holds at four fifths of its size, and what it shows is what the lines say. */
class IrrigationPageTest {

    /**
     * Letters of the ordinary size on 11 inches less the margins, at 80 %. The text of a page is then 8 points, which is the smallest
     * that this project prints.
     */
    private static final int WIDEST = 163;

    /** One product of a few factors. */
    private static final double RELATIVE = 1e-14;

    @TempDir
    private Path folder;

    private static int width(Panel panel) {
        return panel.widths().stream().mapToInt(Integer::intValue).sum();
    }

    private static <T extends Block> List<T> blocks(Page page, Class<T> kind) {
        return page.blocks().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The trough house with so many systems: its first ones, and more of the same tape. */
    private Budget house(int systems) throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                String text = Files.readString(file, StandardCharsets.UTF_8);
                Files.writeString(folder.resolve(file.getFileName()), with(text, systems), StandardCharsets.UTF_8);
            }
        }
        Faults faults = new Faults();
        Budget budget = Sample.read(folder, faults);
        assertThat(faults.faults()).isEmpty();
        return budget;
    }

    private static String with(String text, int systems) {
        if (systems == 1) {
            return text.replaceAll("(?m)^(tape|tape_fitting|dripline),.*\\R", "")
                    .replace(",emitter dripline,", ",emitter,");
        }
        String tape = text.lines()
                .filter(line -> line.startsWith("tape,Two"))
                .findFirst()
                .orElse("");
        return text
                + IntStream.rangeClosed(4, tape.isEmpty() ? 0 : systems)
                        .mapToObj(i -> tape.replace("tape,Two", "tape_" + i + ",Two") + "\n")
                        .collect(Collectors.joining());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 5, 6, 8, 9, 30})
    void every_system_has_a_column_and_the_page_is_not_too_wide(int systems) throws IOException {
        Budget budget = house(systems);
        Page page = IrrigationPage.of(budget);
        List<Across> tables = blocks(page, Across.class);
        assertThat(tables.stream()
                        .flatMap(table ->
                                IntStream.range(table.from(), table.to()).boxed()))
                .containsExactlyElementsOf(IntStream.range(0, systems).boxed().toList());
        assertThat(tables)
                .allSatisfy(table -> assertThat(table.to() - table.from() + 2)
                        .isLessThanOrEqualTo(page.left().widths().size()));
        int gap = page.right().blocks().isEmpty() ? 0 : 2;
        assertThat(width(page.left()) + gap + width(page.right())).isLessThanOrEqualTo(WIDEST);
        assertThat(blocks(page, Chart.class)).hasSize(systems == 1 ? 0 : 1);
        assertThat(blocks(page, Table.class))
                .allSatisfy(table -> assertThat(table.columns().size())
                        .isLessThanOrEqualTo(page.left().widths().size()));
    }

    @Test
    void cautions_that_concern_water_are_there_in_short() {
        List<CautionList> cautions = blocks(IrrigationPage.of(Sample.troughHouse()), CautionList.class);
        assertThat(cautions).hasSize(1);
        assertThat(cautions.get(0).inFull()).isFalse();
        assertThat(cautions.get(0).all().stream().map(caution -> caution.topic()))
                .containsExactlyInAnyOrderElementsOf(IrrigationPage.TOPICS);
    }

    @Test
    void it_is_one_of_the_pages_of_a_farm() {
        assertThat(FarmPages.of(Sample.troughHouse()).stream().map(Page::name)).contains("Irrigation");
    }

    @Test
    void every_doubtful_entry_in_use_has_a_row_with_the_value_at_which_the_answer_flips() {
        Budget budget = Sample.troughHouse();
        Figures f = Figures.of(budget);
        Line label = budget.line("flip_label");
        List<Table> tables = blocks(IrrigationPage.of(budget), Table.class).stream()
                .filter(table -> table.axis().equals(label.axes().get(0)))
                .toList();
        assertThat(tables.stream().flatMap(table -> table.rows().stream()).map(TableRow::index))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 11).boxed().toList());
        tables.forEach(table -> table.rows().forEach(row -> {
            List<CellRef> cells = table.columns().stream()
                    .map(column -> column.cell(table.axis(), row.index()))
                    .toList();
            assertThat(cells.get(0)).isEqualTo(new CellRef(label, row.index()));
            assertThat(f.text(label, row.index())).isNotEmpty();
            assertThat(cells.get(5)).isEqualTo(new CellRef(budget.line("flip_value"), row.index()));
        }));
    }

    @Test
    void figures_in_other_units_are_converted_exactly() {
        Figures f = Figures.of(Sample.troughHouse());
        for (String way : List.of("emitter", "tape", "dripline")) {
            same(f.number("side_longest_run_in_feet", way), f.number("way_longest_run", way) / 0.3048);
            same(f.number("side_inlet_pressure_in_psi", way), f.number("way_inlet_pressure", way) / 6.894757293168361);
            same(f.number("side_flow_in_gallons", way), f.number("way_flow_per_bench", way) / 3.785411784 / 60);
            same(f.number("side_line_first_cost_per_foot", way), f.number("side_line_first_cost", way) * 0.3048);
            same(f.number("side_differing_cost_per_foot", way), f.number("way_differing_cost_per_metre", way) * 0.3048);
        }
    }

    private static void same(double found, double expected) {
        assertThat(found).isPositive().isCloseTo(expected, within(RELATIVE * expected));
    }

    @Test
    void a_longest_line_that_is_not_known_is_not_known_in_feet_either() {
        Figures f = Figures.of(Sample.with(Sample.troughHouse(), "target_uniformity=98.9 %"));
        Line feet = f.budget().line("side_longest_run_in_feet");
        Line metres = f.budget().line("way_longest_run");
        for (int way = 0; way < feet.size(); way++) {
            assertThat(f.hasReason(feet, way)).isEqualTo(f.hasReason(metres, way));
        }
        assertThat(f.hasReason(feet, 0)).isTrue();
    }

    /** Two boxes are better, two are worse, and what is better less what is worse is the gain. */
    @Test
    void the_boxes_add_up() {
        Figures f = Figures.of(Sample.containerHouse());
        assertThat(f.number("partial_better"))
                .isEqualTo(f.number("partial_added_returns") + f.number("partial_reduced_costs"));
        assertThat(f.number("partial_worse"))
                .isEqualTo(f.number("partial_reduced_returns") + f.number("partial_added_costs"));
        assertThat(f.number("partial_net")).isEqualTo(f.number("partial_better") - f.number("partial_worse"));
        assertThat(f.number("partial_worse")).isPositive();
    }
}
