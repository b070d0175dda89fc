package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Explanation;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heat, feed and labour are explained down to entries, each with where it was read or its source. */
class ExplainedToEntriesTest {

    /** A figure in an explanation: its line, with a cell where there are several. */
    private static final Pattern HEAD = Pattern.compile("\\(([a-z][a-z0-9_]*(?:\\[[^\\]]*\\])?)\\) = ");

    private static final Set<String> CONSTANTS = Set.of(
            "days_in_month",
            "salt_molar_mass",
            "acid_molar_mass",
            "acid_protons",
            "fuel_table_heat",
            "plant_type_share",
            "regime_day_set",
            "regime_night_set",
            "unit_per_driver",
            "driver_amount[one]",
            "task_driver_amount[one]");

    private static final Pattern ENTRY = Pattern.compile("(?m)^ *(blank )?entry\\b");

    @ParameterizedTest
    @CsvSource({
        "trough, heating_cost_total, 'farm.csv, row', 'months.csv, row'",
        "trough, feed_cost_per_volume, 'farm.csv, row', 'source: Lee et al.'",
        "trough, labour_cost_total, 'farm.csv, row', 'tasks.csv, row'",
        "trough, returns_above_total, 'channels.csv, row', 'irrigation.csv, row'",
        "container, heating_cost_total, 'farm.csv, row', 'months.csv, row'",
        "container, feed_cost_per_volume, 'farm.csv, row', 'source: Lee et al.'",
        "container, labour_cost_total, 'farm.csv, row', 'tasks.csv, row'",
        "container, returns_above_total, 'plant_stock.csv, row', 'irrigation.csv, row'"
    })
    void everyFigureEndsInEntries(String house, String id, String place, String other) {
        Budget sample = house.equals("trough") ? Sample.troughHouse() : Sample.containerHouse();
        Figures figures = Figures.of(sample);
        String text = Explanation.of(figures, sample.line(id), 0).toString();
        String flat = text.replaceAll("\\s+", " ");
        assertThat(flat).contains(place).contains(other);
        assertThat(ENTRY.matcher(text).results().count()).isGreaterThan(10);
        Set<String> shown = everyFigureIsMadeOfSomething(flat);
        everyEntryHasASourceOrAPlace(sample, shown);
        onlyFixedFiguresReadNothing(sample, sample.line(id));
    }

    /** Behind each figure stands a formula, an entry, or that it is above. */
    private static Set<String> everyFigureIsMadeOfSomething(String flat) {
        Set<String> shown = new HashSet<>();
        Matcher head = HEAD.matcher(flat);
        List<Integer> starts = new ArrayList<>();
        while (head.find()) {
            shown.add(head.group(1));
            starts.add(head.end());
        }
        starts.add(flat.length());
        for (int i = 0; i + 1 < starts.size(); i++) {
            String rest = flat.substring(starts.get(i), starts.get(i + 1));
            assertThat(rest).containsPattern(" = |\\bentry\\b|\\(see above\\)|found by a search");
        }
        assertThat(shown).hasSizeGreaterThan(20);
        return shown;
    }

    /** All entries shown that hold a value say where it comes from. */
    private static void everyEntryHasASourceOrAPlace(Budget sample, Set<String> shown) {
        for (Line line : sample.lines()) {
            if (sample.entry(line).isEmpty()) {
                continue;
            }
            for (int cell = 0; cell < line.size(); cell++) {
                Given given = sample.given(line).get(cell);
                if (shown.contains(line.address(cell)) && given.filled()) {
                    assertThat(given.source() + given.origin())
                            .as(line.address(cell))
                            .isNotBlank();
                }
            }
        }
    }

    /**
     * A number that reads no figure is the calendar, chemistry, the heat of a fuel, a regime, the size of a unit, or the one thing that
     * is counted once.
     */
    private static void onlyFixedFiguresReadNothing(Budget sample, Line line) {
        Deque<CellRef> open = new ArrayDeque<>(List.of(new CellRef(line, 0)));
        Set<CellRef> seen = new HashSet<>(open);
        Set<String> bare = new HashSet<>();
        while (!open.isEmpty()) {
            CellRef ref = open.pop();
            sample.formula(ref.line()).ifPresent(formula -> {
                Set<CellRef> reads = Dependencies.of(ref.line(), formula, ref.cell());
                if (reads.isEmpty() && ref.line().kind() != Kind.TEXT) {
                    bare.add(ref.toString()
                            .replaceAll(
                                    "^(days_in_month|(salt|acid)_molar_mass|acid_protons|fuel_table_heat|unit_per_driver|plant_type_share|regime_(day|night)_set)\\[.*",
                                    "$1"));
                }
                reads.stream().filter(seen::add).forEach(open::push);
            });
        }
        assertThat(bare).isSubsetOf(CONSTANTS);
    }
}
