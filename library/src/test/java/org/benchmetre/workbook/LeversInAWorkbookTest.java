package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchmetre.Benchmetre;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two levers of the first page typed over in a spreadsheet program: its sentences, matrix and chart say what the engine says. */
class LeversInAWorkbookTest {

    private static final double TOLERANCE = 1e-9;
    private static final double GRAMS = 900;

    @TempDir
    private Path folder;

    @Test
    void a_system_by_its_label_and_fruit_per_plant_change_the_whole_first_page() throws IOException, ScenarioException {
        LibreOfficeReferee.require();
        Budget budget = Benchmetre.read(Sample.TROUGH_HOUSE).budget();
        Written written = Written.of(budget, FarmWorkbook.setup(budget));
        Map<Line, Map<Integer, Given>> changes = changes(budget);
        assertThat(Typing.of(written.plan(), changes))
                .extracting(Typing::value)
                .containsExactly("Two strips of drip tape", GRAMS);
        assertThat(Typing.of(written.plan(), changes))
                .extracting(typing -> typing.spot().sheet())
                .containsOnly("Answer");

        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book book =
                referee.book(budget, written.setup()).add(Map.of()).add(changes);
        assertThat(referee.differences()).isEmpty();

        Map<Spot, CellRef> cells = cells(written.plan());
        Figures after = written.figures().typedOver(changes);
        cells.forEach((spot, ref) -> assertThat(says(after, ref, book.shown(1, spot)))
                .as("%s says %s", spot.reference(), book.shown(1, spot))
                .isTrue());
        assertThat(changed(book, cells, "answer_cost_and_return", "irrigation_verdict", "answer_break_even"))
                .isEqualTo(3);
        assertThat(changed(book, cells, "first_cost_per_metre", "first_cost_total"))
                .isEqualTo(2);
        assertThat(changed(book, cells, "account_per_metre", "account_total")).isGreaterThanOrEqualTo(8);
        assertThat(changed(book, cells, charted(written.plan()))).isGreaterThanOrEqualTo(5);
    }

    private static Map<Line, Map<Integer, Given>> changes(Budget budget) {
        Line fruit = budget.line("yield_per_plant");
        Map<Line, Map<Integer, Given>> changes = new LinkedHashMap<>();
        changes.put(budget.line("irrigation_choice"), Map.of(0, Given.text("tape")));
        changes.put(fruit, Map.of(0, Given.number(GRAMS, fruit.unit())));
        return changes;
    }

    /** What the first page shows: the cells of lines on it, and those that its charts draw. */
    private static Map<Spot, CellRef> cells(WorkbookPlan plan) {
        PagePlan first = plan.pages().get(0);
        Map<Spot, CellRef> cells = new LinkedHashMap<>();
        for (PageCell cell : first.cells()) {
            if (cell.content() instanceof PageCell.Shown shown) {
                cells.put(new Spot(first.name(), cell.row(), cell.column()), shown.ref());
            }
        }
        for (PlacedChart chart : first.charts()) {
            Stream.concat(
                            chart.chart().values().stream(),
                            Stream.of(chart.chart().sentence()))
                    .flatMap(line -> first.cells(line).stream())
                    .forEach(ref -> cells.put(plan.spot(ref.line(), ref.cell()), ref));
        }
        return cells;
    }

    private static String[] charted(WorkbookPlan plan) {
        List<PlacedChart> charts = plan.pages().get(0).charts();
        assertThat(charts).isNotEmpty();
        return charts.stream()
                .flatMap(chart -> chart.chart().values().stream())
                .map(Line::id)
                .toArray(String[]::new);
    }

    private static boolean says(Figures figures, CellRef ref, Object seen) {
        if (seen instanceof Double number) {
            double wanted = figures.number(ref.line(), ref.cell());
            return Math.abs(number - wanted) <= TOLERANCE * Math.max(1, Math.abs(wanted));
        }
        return seen.equals(figures.text(ref.line(), ref.cell()));
    }

    /** How many cells of some lines show something else than as written. */
    private static long changed(LibreOfficeReferee.Book book, Map<Spot, CellRef> cells, String... lines) {
        return cells.entrySet().stream()
                .filter(cell -> List.of(lines).contains(cell.getValue().line().id()))
                .map(Map.Entry::getKey)
                .filter(spot -> !book.shown(0, spot).equals(book.shown(1, spot)))
                .count();
    }
}
