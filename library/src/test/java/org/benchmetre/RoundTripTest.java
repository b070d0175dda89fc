package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.farm.FarmBudget;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.ScenarioFolder;
import org.benchmetre.scenario.ScenarioReader;
import org.benchmetre.scenario.ScenarioWriter;
import org.benchmetre.workbook.Adjustments;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Read, write, read: the same plan. */
class RoundTripTest {

    private static final ScenarioWriter WRITER = new ScenarioWriter(FarmTables.FORMS);
    private static final Budget TROUGH = Sample.troughHouse();
    private static final Budget CONTAINER = Sample.containerHouse();
    private static final Path STARTER = Path.of("..", "templates", "starter");

    /** What a file without a source comes to, and a value of Java without one: nobody has said. */
    private static final String NO_SOURCE = "scenario, no source given";

    @TempDir
    Path folder;

    /** Every value of every entry, without the place it was read from. */
    private static Map<String, List<?>> values(Budget budget) {
        Map<String, List<?>> all = new LinkedHashMap<>();
        all.put("keys", keys(budget.structure()));
        for (Line line : budget.lines()) {
            if (budget.entry(line).isPresent()) {
                List<Given> given = budget.given(line);
                all.put(
                        line.id(),
                        IntStream.range(0, given.size())
                                .filter(cell -> given.get(cell).filled())
                                .mapToObj(cell -> said(line.address(cell), given.get(cell)))
                                .toList());
            }
        }
        return all;
    }

    /** The rows of the tables. Which groups there are follows from the names that rows have, which are compared with the values. */
    private static List<?> keys(Structure structure) {
        return structure.tables().entrySet().stream()
                .filter(table -> table.getKey().endsWith(".csv"))
                .toList();
    }

    /** Units are alike whatever the order in which their parts are written. */
    private record Said(
            String address,
            boolean filled,
            double number,
            String text,
            Given.AsTyped as,
            String source,
            Plausible range) {}

    private static Said said(String address, Given given) {
        String source =
                given.filled() && given.text().isEmpty() ? given.source().replace(NO_SOURCE, "") : "";
        return new Said(address, given.filled(), given.number(), given.text(), given.as(), source, given.range());
    }

    /** Budgets by their structure, which hundreds of scenarios share. */
    private static final Map<Structure, Budget> BUILT = new ConcurrentHashMap<>();

    private static final ScenarioReader READER = new ScenarioReader(
            FarmTables.FORMS,
            structure -> BUILT.computeIfAbsent(structure, FarmBudget::of),
            FarmBudget.READER.priced(),
            FarmBudget.READER.usualCrop(),
            FarmBudget.READER.isCrop(),
            FarmBudget.READER.deciding());

    private Budget again(Budget budget, String name) throws Exception {
        Path written = folder.resolve(name);
        WRITER.write(budget, written);
        Faults faults = new Faults();
        Budget read = READER.read(ScenarioFolder.open(written, faults), ScenarioReader.Over.NOTHING, faults)
                .orElse(null);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        return read;
    }

    static Stream<Path> scenarios() {
        return Stream.of(Sample.TROUGH_HOUSE, Sample.CONTAINER_HOUSE, STARTER);
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void what_is_written_reads_as_the_same_plan(Path scenario) throws Exception {
        Budget budget = Sample.read(scenario, new Faults());
        assertThat(values(again(budget, "again"))).isEqualTo(values(budget));
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void seeded_changes_are_written_and_read_back(long seed) throws Exception {
        Budget sample = seed % 2 == 0 ? TROUGH : CONTAINER;
        Map<Line, Map<Integer, Given>> changes = Adjustments.seeded(sample, seed);
        // The quantity of a price break is a part of the key of its row, and so of the structure.
        changes.remove(sample.line("break_from"));
        Budget budget = sample.with(changes);
        assertThat(values(again(budget, "again"))).isEqualTo(values(budget));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plant_spacing=8in",
                "material_price[tape]=0.123456789",
                "way_tail[tape]=3 ft",
                "material_group[tape]=Mulch",
                "material_life[tape]=",
                "channel_price[direct;jan]=9",
                "irrigation_choice=tape"
            })
    void a_setting_is_written_and_read_back(String setting) throws Exception {
        Plan plan = Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), List.of(setting));
        assertThat(values(again(plan.budget(), "again"))).isEqualTo(values(plan.budget()));
    }

    @Test
    void a_plan_put_together_in_memory_has_the_figures_of_its_folder() throws Exception {
        PlanBuilder builder = Benchmetre.plan("strawberry");
        Map<String, List<String>> columns = new LinkedHashMap<>();
        for (String file : List.of(
                "farm.csv",
                "materials.csv",
                "irrigation.csv",
                "plant_stock.csv",
                "stock_prices.csv",
                "channels.csv",
                "tasks.csv",
                "months.csv")) {
            rows(file).forEach(row -> {
                if (file.equals("farm.csv")) {
                    String unit = row.get("unit");
                    boolean word = unit.isEmpty() || unit.equals("1");
                    UnaryOperator<String> typed = text -> text.isEmpty() || word ? text : text + " " + unit;
                    builder.entry(
                            row.get("line"),
                            typed.apply(row.get("value")),
                            typed.apply(row.get("low")),
                            typed.apply(row.get("high")),
                            row.get("source"));
                } else {
                    Map<String, String> cells = new LinkedHashMap<>(row);
                    String keyColumn = FarmTables.form(file).key().column();
                    String key = cells.remove(keyColumn);
                    builder.row(file, key, cells);
                }
            });
            columns.put(file, List.of());
        }
        Plan memory = builder.build();
        Plan read = Benchmetre.read(Sample.TROUGH_HOUSE);
        for (Line line : read.budget().lines()) {
            if (line.kind() == Kind.NUMBER) {
                for (int cell = 0; cell < line.size(); cell++) {
                    assertThat(memory.figures().number(memory.budget().line(line.id()), cell))
                            .as(line.address(cell))
                            .isEqualTo(read.figures().number(line, cell));
                }
            }
        }
    }

    private static List<Map<String, String>> rows(String file) throws Exception {
        List<Map<String, String>> rows = new ArrayList<>();
        String text = Files.readString(Sample.TROUGH_HOUSE.resolve(file));
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            parser.forEach(record -> rows.add(new LinkedHashMap<>(record.toMap())));
        }
        return rows;
    }
}
