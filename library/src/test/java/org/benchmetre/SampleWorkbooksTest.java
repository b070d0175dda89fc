package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.farm.Sample;
import org.benchmetre.workbook.Adjustments;
import org.benchmetre.workbook.LibreOfficeReferee;
import org.benchmetre.workbook.PoiReferee;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two spreadsheet engines that are not ours recalculate every formula cell of the workbooks of the plain houses, the samples and the
 * starter, as written and after seeded adjustments: numbers typed over, choices flipped, a spare row of the parts and of the irrigation systems
 * filled in, the most that channels take in a month.
 */
class SampleWorkbooksTest {

    private static final List<Path> PLAIN = List.of(Sample.TROUGH_HOUSE, Sample.CONTAINER_HOUSE);
    private static final int SEEDS_OF_PLAIN = 40;
    private static final int SEEDS_OF_GIVEN = 15;

    @TempDir
    private Path folder;

    @Test
    void poiAgreesOnEveryFormulaCell() throws IOException, ScenarioException {
        List<String> differences = new ArrayList<>();
        for (Path scenario : scenarios()) {
            Budget budget = Benchmetre.read(scenario).budget();
            PoiReferee referee = new PoiReferee(budget, FarmWorkbook.setup(budget));
            cases(scenario, budget).forEach(referee::add);
            referee.differences().stream().map(told -> scenario + ", " + told).forEach(differences::add);
        }
        assertThat(differences).isEmpty();
    }

    @Test
    void libreOfficeAgreesOnEveryFormulaCell() throws IOException, ScenarioException {
        LibreOfficeReferee.require();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        for (Path scenario : scenarios()) {
            Budget budget = Benchmetre.read(scenario).budget();
            LibreOfficeReferee.Book book = referee.book(budget, FarmWorkbook.setup(budget));
            cases(scenario, budget).forEach(book::add);
        }
        assertThat(referee.differences()).isEmpty();
    }

    private static List<Path> scenarios() {
        return Stream.concat(PLAIN.stream(), Sample.GIVEN.stream()).toList();
    }

    /**
     * The workbook as written, and seeded adjustments. In a sample each part stays counted by what it is, in its unit: a boiler for every square metre
     * costs so much that no program keeps its cents.
     */
    private static Stream<Map<Line, Map<Integer, Given>>> cases(Path scenario, Budget budget) {
        boolean plain = PLAIN.contains(scenario);
        Stream<Map<Line, Map<Integer, Given>>> seeded = LongStream.rangeClosed(
                        1, plain ? SEEDS_OF_PLAIN : SEEDS_OF_GIVEN)
                .mapToObj(seed -> adjusted(budget, seed, plain));
        return Stream.concat(Stream.of(Map.of()), seeded);
    }

    /** Seeded adjustments, and in every second case a fourth irrigation system and a part of it in spare rows. */
    private static Map<Line, Map<Integer, Given>> adjusted(Budget budget, long seed, boolean driversToo) {
        Map<Line, Map<Integer, Given>> changes = Adjustments.seeded(budget, seed);
        if (!driversToo) {
            changes.remove(budget.line("material_driver"));
            changes.remove(budget.line("material_unit"));
        }
        if (seed % 3 == 0) {
            Filled filled = new Filled(budget, changes);
            Line most = budget.line("channel_most");
            for (String channel : most.axes().get(0).keys()) {
                filled.number("channel_most", channel, 20 + seed);
            }
        }
        if (seed % 2 == 0) {
            Filled filled = new Filled(budget, changes);
            filled.text("way_key", "spare_1", "by_hand");
            filled.text("way_label", "spare_1", "By hand");
            filled.number("way_lines", "spare_1", 1);
            filled.number("way_outlets_per_plant", "spare_1", 0.5);
            filled.text("material_label", "spare_2", "Watering can");
            filled.text("material_item", "spare_2", "watering_can");
            List<String> groups =
                    budget.entry(budget.line("material_group")).orElseThrow().allowed();
            filled.text("material_group", "spare_2", groups.get(seed % 4 == 0 ? 0 : groups.size() - 1));
            filled.text("material_driver", "spare_2", seed % 3 == 0 ? "outlet_count" : "bench_metres");
            filled.text("material_option", "spare_2", seed % 6 == 0 ? "by_hand" : "");
            filled.number("material_rate", "spare_2", 0.01);
            filled.number("material_price", "spare_2", 12.5);
        }
        return changes;
    }

    private record Filled(Budget budget, Map<Line, Map<Integer, Given>> changes) {

        void text(String id, String row, String text) {
            put(budget.line(id), row, Given.text(text));
        }

        void number(String id, String row, double number) {
            put(budget.line(id), row, Given.number(number, budget.line(id).unit()));
        }

        private void put(Line line, String row, Given given) {
            changes.computeIfAbsent(line, any -> new HashMap<>())
                    .put(line.axes().get(0).indexOf(row), given);
        }
    }
}
