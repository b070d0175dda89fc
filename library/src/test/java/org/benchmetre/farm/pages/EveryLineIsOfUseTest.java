package org.benchmetre.farm.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A line costs cells in every workbook. Each has its place in the workings, and each is read by a formula or a search, shown on a page,
 * told as a warning, names the rows of a table, or is one of those that are kept for who asks by name.
 */
class EveryLineIsOfUseTest {

    /** Why a line is kept that nothing reads and no page shows, with the lines. */
    private static final Map<String, List<String>> ASKED_BY_NAME = Map.of(
            "the project's decisions fix the name",
            List.of(
                    "group_first_cost_per_metre",
                    "group_yearly_cost_per_metre",
                    "way_first_cost_per_metre",
                    "yearly_cost_per_metre",
                    "yearly_cost_per_plant",
                    "yearly_cost_per_area"),
            "a comparison of scenarios takes it over",
            List.of(
                    "irrigation_label",
                    "stock_label_chosen",
                    "returns_above_total_per_plant",
                    "returns_above_total_per_kg"),
            "stands at the head of every sheet of pages",
            List.of("plan_heading"),
            "for who checks: what a rate that was found leaves once entries have changed; the review holds a year against its months",
            List.of("rate_root_value", "owner_rate_root_value", "running_cash"),
            "says what stands in a row of a table",
            List.of(
                    "task_driver_unit",
                    "fuel_table_source",
                    "regime_source",
                    "salt_formula",
                    "water_cause_unit",
                    "water_cause_advice",
                    "water_worst_class",
                    "swing_now",
                    "swing_low",
                    "swing_high",
                    "flip_address",
                    "flip_margin",
                    "target_finding",
                    "compared_doubt"),
            "how a lateral runs, for who designs it or checks it by another method",
            List.of(
                    "way_friction_hazen_williams",
                    "way_friction_note",
                    "way_far_pressure",
                    "way_flow_variation",
                    "way_pressure_variation_allowed",
                    "way_emission_class",
                    "way_cv_class",
                    "way_longest_listed_run",
                    "way_pump_power",
                    "way_pump_hours"),
            "what clogging and drain take, by cause",
            List.of(
                    "way_standing_reserve",
                    "way_plants_set_back",
                    "way_dry_loss",
                    "way_loss_per_percent",
                    "way_drain_share",
                    "drain_measured_share",
                    "fruit_graded_out",
                    "grams_per_plant",
                    "fruit_lost_dry",
                    "fruit_unsold",
                    "channel_left",
                    "bent_root_fruit"),
            "how to mix the nutrient solution, and how its ions balance",
            List.of(
                    "acid_volume_chosen",
                    "stock_tank_a_salts",
                    "stock_tank_b_salts",
                    "stock_tank_micronutrients",
                    "ion_mass",
                    "recipe_charge_difference",
                    "feed_charge_difference",
                    "feed_nitrogen_mass"),
            "a rate that a grower holds against that of others",
            List.of(
                    "kg_per_hour",
                    "picking_cost_per_kg",
                    "packing_cost_per_kg",
                    "yield_tasks_cost",
                    "labour_cost_in_month",
                    "operation_hours",
                    "people_at_peak_whole",
                    "energy_cost_month_area",
                    "energy_cost_per_area",
                    "heat_energy_per_area",
                    "night_heat_compared",
                    "gas_compared",
                    "flower_to_ripe_days",
                    "fruit_grown_per_area",
                    "space_rate",
                    "space_rate_per_metre",
                    "compared_plants",
                    "compared_returns_per_metre_week"),
            "a size to order or to build by",
            List.of("design_day_fuel", "wet_load_per_metre", "backfill_volume", "channel_packs"));

    /** Held against what is usual where the profile of a crop says so, and read by nothing where it does not. */
    private static final List<String> WHERE_A_USUAL_IS_KNOWN =
            List.of("yearly_cost_per_kg", "operating_cost_per_area", "fruit_per_area");

    private static final Path SECOND_CROP = Path.of("src", "test", "resources", "org", "benchmetre", "gutter-house");

    static Stream<Budget> budgets() throws ScenarioException {
        return Stream.of(
                Sample.troughHouse(),
                Sample.containerHouse(),
                Sample.read(Path.of("..", "templates", "starter"), new Faults()),
                Benchmetre.read(SECOND_CROP).budget());
    }

    private static List<String> askedByName() {
        return ASKED_BY_NAME.values().stream().flatMap(List::stream).toList();
    }

    @ParameterizedTest
    @MethodSource("budgets")
    void every_line_stands_once_in_the_workings(Budget budget) {
        List<Line> found = budget.schedules().stream()
                .flatMap(schedule -> schedule.lines().stream())
                .toList();
        assertThat(found).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(budget.lines());
        assertThat(budget.schedules().stream().map(Schedule::sheet)).allMatch(Sheets.IN_ORDER::contains);
    }

    @ParameterizedTest
    @MethodSource("budgets")
    void pages_show_lines_of_the_budget(Budget budget) {
        List<Line> shown = LinesOf.pages(FarmPages.of(budget));
        assertThat(shown).hasSizeGreaterThan(400);
        assertThat(budget.lines()).containsAll(shown);
    }

    @ParameterizedTest
    @MethodSource("budgets")
    void a_line_is_read_or_shown_or_asked_for_by_name(Budget budget) {
        Set<Line> used = new HashSet<>(LinesOf.pages(FarmPages.of(budget)));
        used.addAll(budget.warnings());
        axes(budget).forEach(axis -> budget.rowName(axis).ifPresent(used::add));
        Set<Line> read = read(budget);
        List<String> left = budget.lines().stream()
                .filter(line -> !used.contains(line) && !read.contains(line))
                .map(Line::id)
                .filter(id -> !WHERE_A_USUAL_IS_KNOWN.contains(id))
                .toList();
        assertThat(left).isSubsetOf(askedByName());
    }

    @Test
    void what_is_asked_for_by_name_is_neither_read_nor_shown() {
        Budget budget = Sample.troughHouse();
        Set<String> used = new TreeSet<>();
        Stream.concat(LinesOf.pages(FarmPages.of(budget)).stream(), read(budget).stream())
                .forEach(line -> used.add(line.id()));
        assertThat(askedByName())
                .doesNotHaveDuplicates()
                .allMatch(id -> budget.find(id).isPresent())
                .doesNotContainAnyElementsOf(used);
    }

    private static Set<Axis> axes(Budget budget) {
        Set<Axis> axes = new HashSet<>();
        budget.lines().forEach(line -> axes.addAll(line.axes()));
        return axes;
    }

    /** The lines that a formula of another line or a search looks at. */
    private static Set<Line> read(Budget budget) {
        Map<Line, List<Line>> reads = new HashMap<>();
        for (Line line : budget.lines()) {
            List<Line> found = new ArrayList<>();
            budget.formula(line)
                    .ifPresent(formula -> IntStream.range(0, line.size())
                            .mapToObj(cell -> Dependencies.of(line, formula, cell))
                            .forEach(cells -> cells.stream().map(CellRef::line).forEach(found::add)));
            found.removeIf(other -> other == line);
            reads.put(line, found);
        }
        budget.solved()
                .forEach(line -> reads.get(line).addAll(budget.search(line).reads()));
        Set<Line> all = new HashSet<>();
        reads.values().forEach(all::addAll);
        return all;
    }
}
