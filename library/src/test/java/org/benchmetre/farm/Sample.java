package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.PlanBuilder;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.TypedOver;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Remark;
import org.benchmetre.scenario.ScenarioFolder;
import org.benchmetre.scenario.ScenarioReader;
import org.benchmetre.scenario.Settings;

/**
 * The two plain houses of the tests, one with troughs and one with containers, and a short way to change their single entries. What a
 * test works out by hand rests on them, so that the samples which a reader gets may be made richer without it.
 */
public final class Sample {

    private static final Path HOUSES =
            Path.of("..", "library", "src", "test", "resources", "org", "benchmetre", "houses");

    /** Folder of the trough house. */
    public static final Path TROUGH_HOUSE = HOUSES.resolve("trough-house");

    /** Folder of the container house. */
    public static final Path CONTAINER_HOUSE = HOUSES.resolve("container-house");

    /** Folder of the starter. */
    public static final Path STARTER = Path.of("..", "templates", "starter");

    /** Folders of the samples that a reader gets. */
    public static final List<Path> SAMPLES = Stream.of("trough-house", "container-house", "two-crop-glasshouse")
            .map(name -> Path.of("..", "samples", name))
            .toList();

    /** The same and the starter. */
    public static final List<Path> GIVEN =
            Stream.concat(SAMPLES.stream(), Stream.of(STARTER)).toList();

    /**
     * Read once and shared, since a budget does not change. A mutation run asks for {@code fresh} ones: a mutant in the code that
     * builds a budget shows only in a budget built after it.
     */
    private static final Map<Path, Budget> READ = new ConcurrentHashMap<>();

    private Sample() {}

    /** The budget of the trough house, which must have no fault. */
    public static Budget troughHouse() {
        return of(TROUGH_HOUSE);
    }

    /** The trough house as it is, with room for a plan of so many years: what stands has room for a year more than its own. */
    public static Budget troughHouseWithRoom(int years) {
        Faults faults = new Faults();
        Settings longer = Settings.parse(List.of("plan_years=" + years));
        Budget read = FarmBudget.READER
                .read(
                        ScenarioFolder.open(TROUGH_HOUSE, faults),
                        new ScenarioReader.Over(Optional.empty(), longer),
                        faults)
                .orElseThrow();
        String own = Numbers.plain(Figures.of(troughHouse()).number("plan_years"));
        return with(read, "plan_years=" + own + " a");
    }

    /** The budget of the container house, which must have no fault. */
    public static Budget containerHouse() {
        return of(CONTAINER_HOUSE);
    }

    /** The trough house on rain water, which brings nothing. */
    public static Budget onRainWater() {
        return with(
                troughHouse(),
                "raw_water_calcium=0 mmol/L",
                "raw_water_magnesium=0 mmol/L",
                "raw_water_sulphur=0 mmol/L",
                "raw_water_alkalinity=0 mmol/L",
                "raw_water_sodium=0 mmol/L",
                "raw_water_chloride=0 mmol/L");
    }

    /** What the figures of a plan warn of, and what was odd in its files. */
    public static List<String> warnings(Plan plan) {
        return plan.warnings().stream().map(Remark::toString).toList();
    }

    /** A farm of one part, one kind of tape and one kind of plant: no months, no tasks, no channels. */
    public static PlanBuilder bare() {
        return Benchmetre.plan("strawberry")
                .row(
                        "materials",
                        "trough",
                        Map.of("driver", "bench_metres", "rate", "1", "price", "5", "price_year", "2026"))
                .row("irrigation", "tape", Map.of("lines", "2", "outlet_spacing", "0.2"))
                .row("plant_stock", "plug", Map.of("price", "0.4", "price_year", "2026"));
    }

    public static Budget of(Path folder) {
        return "fresh".equals(System.getProperty("benchmetre.samples"))
                ? read(folder)
                : READ.computeIfAbsent(folder, Sample::read);
    }

    private static Budget read(Path folder) {
        Faults faults = new Faults();
        Budget budget = read(folder, faults);
        assertThat(faults.faults()).isEmpty();
        return budget;
    }

    /** The budget of a folder; null after a fault. */
    public static Budget read(Path folder, Faults faults) {
        return FarmBudget.READER
                .read(ScenarioFolder.open(folder, faults), ScenarioReader.Over.NOTHING, faults)
                .orElse(null);
    }

    /** A section that was built alone, with what the files of a folder say of its entries. */
    public static Budget filled(Budget section, Budget whole) {
        Map<Line, Map<Integer, Given>> values = new HashMap<>();
        for (Line line : section.lines()) {
            if (section.entry(line).isPresent() && whole.find(line.id()).isPresent()) {
                List<Given> given = whole.given(whole.line(line.id()));
                Map<Integer, Given> cells = new HashMap<>();
                for (int cell = 0; cell < given.size(); cell++) {
                    cells.put(cell, given.get(cell));
                }
                values.put(line, cells);
            }
        }
        return section.with(values);
    }

    /**
     * The same budget with entries replaced, each {@code line=text} or {@code line=number unit}; a cell of a table is
     * {@code line[key]=number unit}.
     */
    public static Budget with(Budget budget, String... settings) {
        return budget.with(changes(budget, settings));
    }

    private static Map<Line, Map<Integer, Given>> changes(Budget budget, String... settings) {
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        for (String setting : settings) {
            String[] sides = setting.split("=");
            String[] place = sides[0].split("[\\[\\]]");
            Line line = budget.line(place[0]);
            int cell = place.length > 1 ? line.axes().get(0).indexOf(place[1]) : 0;
            changes.computeIfAbsent(line, any -> new HashMap<>()).put(cell, given(line, sides[1]));
        }
        return changes;
    }

    /** The same without a look at what the entries take: as a reader may type it into a workbook. */
    public static Budget typedOver(Budget budget, String... settings) {
        return typedOver(budget, changes(budget, settings));
    }

    /** The same for values by cell. */
    public static Budget typedOver(Budget budget, Map<Line, Map<Integer, Given>> changes) {
        return TypedOver.of(budget, changes);
    }

    private static Given given(Line line, String text) {
        if (line.kind() == Kind.TEXT) {
            return Given.text(text);
        }
        String[] parts = text.split(" ", 2);
        return Given.typed(Double.parseDouble(parts[0]), Unit.parse(parts[1]), line.unit());
    }
}
