package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.RefusedException;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.finance.PlanYears;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What no entry takes is refused whoever comes with it, in the same words: a row of single values, the entry's own column, a setting, a
 * price list, a call from Java. All entries of the trough house are tried at once, since no fault may hide another.
 */
class ImpossibleValuesTest {

    /** The ways of values into a budget. */
    private enum Gate {
        SINGLE_ROW,
        OWN_COLUMN,
        SETTING,
        PRICE_LIST,
        JAVA
    }

    /** The columns of a price list. */
    private static final List<String> PRICED = List.of("material_pack", "material_price", "material_price_year");

    /** Years that a plan which stands has room for; a file may ask for more. */
    private static final List<String> BY_LENGTH = List.of("plan_years", "shock_lost_year", "stress_lost_year");

    private static final Plan PLAN = sample();
    private static final ScenarioCells SAMPLE = ScenarioCells.of(PLAN.budget());
    private static final Map<ImpossibleValue, Map<Gate, Map<String, List<String>>>> REFUSED =
            new EnumMap<>(ImpossibleValue.class);
    private static final Pattern ADDRESS = Pattern.compile("\\(([a-z0-9_]+(?:\\[[^\\]]*\\])?)\\)");

    @BeforeAll
    static void tryAll(@TempDir Path folder) throws Exception {
        for (ImpossibleValue value : ImpossibleValue.values()) {
            Map<Gate, Map<String, List<String>>> byGate = new EnumMap<>(Gate.class);
            byGate.put(Gate.SINGLE_ROW, told(faults(() -> Benchmetre.read(singleRows(value)))));
            byGate.put(Gate.OWN_COLUMN, told(faults(() -> Benchmetre.read(ownColumns(value)))));
            byGate.put(Gate.SETTING, told(faults(() -> PLAN.with(settings(value)))));
            byGate.put(Gate.PRICE_LIST, told(faults(() -> priced(value, folder))));
            byGate.put(Gate.JAVA, calls(value));
            REFUSED.put(value, byGate);
        }
    }

    private static Plan sample() {
        try {
            return Benchmetre.read(Sample.TROUGH_HOUSE);
        } catch (ScenarioException e) {
            throw new AssertionError(e);
        }
    }

    private static Stream<Line> lines() {
        return SAMPLE.budget().lines().stream()
                .filter(line -> SAMPLE.budget().entry(line).isPresent());
    }

    static Stream<Named<Line>> entries() {
        return lines().map(line -> Named.of(line.id(), line));
    }

    private static Entry entry(Line line) {
        return SAMPLE.budget().entry(line).orElseThrow();
    }

    private static Stream<Line> linesFor(ImpossibleValue value) {
        return lines().filter(line -> value.isFor(SAMPLE.budget(), line, entry(line)));
    }

    private static ScenarioCells singleRows(ImpossibleValue value) {
        ScenarioCells cells = SAMPLE.copy();
        linesFor(value).forEach(line -> {
            String[] apart = value.typed().split(" ", 2);
            String unit = ImpossibleValue.isNumber(line)
                    ? ImpossibleValue.unitOf(SAMPLE.budget(), line)
                            .display(SAMPLE.budget().currency())
                    : "";
            cells.single(line.address(0), apart[0], apart.length > 1 ? apart[1] : unit);
        });
        return cells;
    }

    private static ScenarioCells ownColumns(ImpossibleValue value) {
        ScenarioCells cells = SAMPLE.copy();
        linesFor(value).filter(SAMPLE::hasColumn).forEach(line -> cells.column(line, value.typed()));
        return cells;
    }

    private static List<String> settings(ImpossibleValue value) {
        return linesFor(value)
                .map(line -> line.address(0) + "=" + value.typed())
                .toList();
    }

    private static Plan priced(ImpossibleValue value, Path folder) throws Exception {
        List<String> cells = new ArrayList<>();
        for (Line line : PRICED.stream().map(SAMPLE.budget()::line).toList()) {
            boolean possible = !value.isFor(SAMPLE.budget(), line, entry(line));
            cells.add(
                    possible ? Numbers.plain(SAMPLE.budget().given(line).get(0).number()) : value.typed());
        }
        String item = SAMPLE.budget().line("material_item").axes().get(0).keys().get(0);
        String unit = SAMPLE.budget()
                .given(SAMPLE.budget().line("material_unit"))
                .get(0)
                .text();
        String text =
                "item,unit,source,pack,price,price_year\n" + item + "," + unit + ",," + String.join(",", cells) + "\n";
        Path list = Files.writeString(folder.resolve("prices.csv"), text);
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.of(list), List.of());
    }

    private static Map<String, List<String>> calls(ImpossibleValue value) {
        Map<Line, Map<Integer, Given>> changes = new LinkedHashMap<>();
        linesFor(value)
                .forEach(line -> value.handedOver(SAMPLE.budget(), line)
                        .ifPresent(given -> changes.put(line, Map.of(0, given))));
        if (changes.isEmpty()) {
            return Map.of();
        }
        RefusedException refused =
                catchThrowableOfType(RefusedException.class, () -> PLAN.budget().with(changes));
        return told(
                refused.refused().stream().map(each -> each.refusal().words()).toList());
    }

    /** The faults of a plan, without their places. */
    private static List<String> faults(ThrowableAssert.ThrowingCallable reading) {
        ScenarioException refused = catchThrowableOfType(ScenarioException.class, reading);
        return refused == null
                ? List.of()
                : refused.faults().faults().stream()
                        .map(fault -> "found " + fault.found() + ", expected " + fault.expected())
                        .toList();
    }

    /** Sentences by the address of the entry that they name. */
    private static Map<String, List<String>> told(List<String> sentences) {
        Map<String, List<String>> byAddress = new HashMap<>();
        for (String sentence : sentences) {
            Matcher address = ADDRESS.matcher(sentence);
            while (address.find()) {
                byAddress
                        .computeIfAbsent(address.group(1), any -> new ArrayList<>())
                        .add(sentence);
            }
        }
        return byAddress;
    }

    private static List<Gate> gates(ImpossibleValue value, Line line) {
        List<Gate> gates = new ArrayList<>(List.of(Gate.SINGLE_ROW, Gate.SETTING));
        if (SAMPLE.hasColumn(line)) {
            gates.add(Gate.OWN_COLUMN);
        }
        if (PRICED.contains(line.id())) {
            gates.add(Gate.PRICE_LIST);
        }
        if (value.handedOver(SAMPLE.budget(), line).isPresent()) {
            gates.add(Gate.JAVA);
        }
        return gates;
    }

    @ParameterizedTest
    @MethodSource("entries")
    void what_an_entry_cannot_be_is_refused_by_every_gate_in_the_same_words(Line line) {
        int tried = 0;
        for (ImpossibleValue value : ImpossibleValue.values()) {
            if (value.isFor(SAMPLE.budget(), line, entry(line))) {
                Map<Gate, List<String>> said = new EnumMap<>(Gate.class);
                gates(value, line).forEach(gate -> said.put(gate, said(value, gate, line)));
                assertThat(said.values())
                        .as("%s: %s", value, said)
                        .allSatisfy(each -> assertThat(each).hasSize(1).isEqualTo(said.get(Gate.SETTING)));
                tried++;
            }
        }
        assertThat(tried).isPositive();
    }

    /** What a gate said of an entry. A file that is read anew has room for the longest plan, and says so. */
    private static List<String> said(ImpossibleValue value, Gate gate, Line line) {
        List<String> said = REFUSED.get(value).get(gate).getOrDefault(line.address(0), List.of());
        if (gate != Gate.SINGLE_ROW || !BY_LENGTH.contains(line.id())) {
            return said;
        }
        String longest = " to " + PlanYears.LIMIT + " yr for ";
        String here = " to " + Numbers.plain(entry(line).bounds().most()) + " yr for ";
        return said.stream().map(sentence -> sentence.replace(longest, here)).toList();
    }

    @Test
    void the_cells_read_as_the_same_plan() throws ScenarioException {
        assertThat(Benchmetre.read(SAMPLE).figures().number("first_cost_total"))
                .isEqualTo(PLAN.figures().number("first_cost_total"));
    }

    @Test
    void most_entries_of_tables_are_tried_in_their_own_columns() {
        assertThat(lines().filter(SAMPLE::hasColumn).count()).isGreaterThan(100);
    }

    @Test
    void a_cell_that_is_not_there_is_refused_by_every_gate() {
        ScenarioCells cells = SAMPLE.copy();
        List<String> settings = new ArrayList<>();
        lines().forEach(line -> {
            String keys = line.axes().stream().map(axis -> "cell_99").collect(Collectors.joining(";"));
            String address = line.id() + "[" + (keys.isEmpty() ? "cell_99" : keys) + "]";
            cells.single(address, "1", "");
            settings.add(address + "=1");
        });
        List<String> bySetting = faults(() -> PLAN.with(settings));
        assertThat(faults(() -> Benchmetre.read(cells))).containsExactlyInAnyOrderElementsOf(bySetting);
        assertThat(bySetting).hasSizeGreaterThanOrEqualTo(settings.size());
    }

    @ParameterizedTest
    @MethodSource("entries")
    void a_cell_beyond_the_last_is_refused_in_java(Line line) {
        Map<Line, Map<Integer, Given>> beyond = Map.of(line, Map.of(line.size() + 99, Given.blank(line.unit())));
        assertThatThrownBy(() -> PLAN.budget().with(beyond))
                .isInstanceOf(FormulaException.class)
                .hasMessage("Line " + line.id() + " has " + line.size() + (line.size() == 1 ? " cell" : " cells")
                        + ", from 0, but no cell " + (line.size() + 99) + ".");
    }
}
