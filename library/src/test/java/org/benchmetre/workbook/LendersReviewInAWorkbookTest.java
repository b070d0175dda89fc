package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A loan's rate, the price of fruit and a late first harvest typed over in the workbook: what a lender looks at moves in spreadsheet
 * programs, to what the engine says of the same settings.
 */
class LendersReviewInAWorkbookTest {

    private static final Path SAMPLE = Path.of("..", "samples", "trough-house");

    /** Spreadsheet programs round to 15 digits; a rate of return is iterated to its end by each in its own way. */
    private static final double TOLERANCE = 1e-9;

    /** What is typed in each case: nothing, a price of fruit at which the owner's money earns, and with it the rate of a loan or a late harvest. */
    private static final List<List<String>> CASES = List.of(
            List.of(),
            List.of("price_level=1.2"),
            List.of("price_level=1.2", "loan_rate[house]=9 %"),
            List.of("price_level=1.2", "shock_late=4 mo"));

    /** The case from which figures of each move. */
    private static final List<Integer> FROM = List.of(0, 0, 1, 1);

    private static final int LOAN = 2;

    private static final List<String> LOOKED_AT = List.of(
            "term_debt_coverage",
            "coverage_lowest",
            "cash_low_point",
            "net_present_value",
            "internal_rate_of_return",
            "owner_net_present_value",
            "owner_internal_rate_of_return");

    /** What no loan moves. */
    private static final List<String> BEFORE_LOANS = List.of("net_present_value", "internal_rate_of_return");

    private static Plan plan;
    private static OpenedBook book;

    @BeforeAll
    static void read() throws IOException, ScenarioException {
        plan = Benchmetre.read(SAMPLE);
        book = OpenedBook.of(SAMPLE, Paper.A4);
    }

    private static Map<Line, Map<Integer, Given>> typed(List<String> settings) throws ScenarioException {
        Budget budget = book.plan().budget();
        Budget set = plan.with(settings).budget();
        Map<Line, Map<Integer, Given>> changes = new LinkedHashMap<>();
        for (String setting : settings) {
            Line line = budget.line(setting.split("[\\[=]")[0]);
            String[] key = setting.substring(0, setting.indexOf('=')).split("[\\[\\]]");
            int cell = key.length == 1 ? 0 : line.axes().get(0).indexOf(key[1]);
            changes.put(line, Map.of(cell, set.given(set.line(line.id())).get(cell)));
        }
        return changes;
    }

    @Test
    void libre_office_shows_what_the_engine_says_of_the_same_settings(@TempDir Path folder) throws Exception {
        LibreOfficeReferee.require();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book opened =
                referee.book(book.plan().budget(), book.written().setup());
        for (List<String> settings : CASES) {
            opened.add(typed(settings));
        }
        assertThat(referee.differences()).isEmpty();
        agrees(opened::shown);
    }

    @Test
    void gnumeric_shows_what_the_engine_says_of_the_same_settings(@TempDir Path folder) throws Exception {
        Gnumeric.require();
        List<Function<Spot, Object>> shown = new ArrayList<>();
        for (List<String> settings : CASES) {
            try (XSSFWorkbook written = book.again()) {
                shown.add(Agreement.cached(Gnumeric.recalculated(written, book.plan(), typed(settings), folder)));
            }
        }
        agrees((number, spot) -> shown.get(number).apply(spot));
    }

    /** Each case is what the engine says, and every figure a case can move has moved. */
    private static void agrees(BiFunction<Integer, Spot, Object> shown) throws ScenarioException {
        for (int number = 0; number < CASES.size(); number++) {
            List<String> settings = CASES.get(number);
            Figures engine = plan.with(settings).figures();
            for (String id : LOOKED_AT) {
                Line line = book.plan().budget().line(id);
                boolean moved = false;
                for (int cell = 0; cell < line.size(); cell++) {
                    Spot spot = book.plan().spot(line, cell);
                    Object found = shown.apply(number, spot);
                    same(engine, id, cell, found, id + "[" + cell + "] under " + settings);
                    moved |= !found.equals(shown.apply(FROM.get(number), spot));
                }
                assertThat(moved)
                        .as("%s moves under %s", id, settings)
                        .isEqualTo(number > 0 && !(number == LOAN && BEFORE_LOANS.contains(id)));
            }
        }
    }

    private static void same(Figures engine, String id, int cell, Object found, String told) {
        Line line = engine.budget().line(id);
        if (engine.hasReason(line, cell)) {
            assertThat(found).as(told).isEqualTo(engine.text(line, cell));
        } else {
            double wanted = engine.number(line, cell);
            assertThat((Double) found).as(told).isCloseTo(wanted, within(TOLERANCE * Math.max(1, Math.abs(wanted))));
        }
    }
}
