package org.benchmetre.farm.pages;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;

/**
 * The single entries of a budget, gathered by what they are about. A subject names entries; all others stand with those of their
 * schedule, so that a new entry finds its place by itself. The ends of a usual range stand in the row of the
 * entry they belong to. Entries of a schedule of which no subject names anything stand under its own title, last.
 */
final class Subjects {

    private static final List<Subject> ALL = List.of(
            new Subject(
                    "House and benches",
                    "bench_count",
                    "house_cost_per_area",
                    "house_charge_by",
                    "bench_week_charge",
                    "bench_weeks_charged",
                    "house_of"),
            new Subject(
                    "Trough and substrate", "trough_top_width", "container_pitch", "coir_parts", "mulch_soiled_share"),
            new Subject(
                    "Planting and crop",
                    "stock_choice",
                    "planting_month",
                    "plant_type",
                    "plant_price_level",
                    "planting_pattern",
                    "crops_per_year",
                    "yield_per_plant",
                    "first_grade_share",
                    "fruit_mean_least",
                    "bent_root_loss",
                    "raising_density"),
            new Subject(
                    "Irrigation and water",
                    "irrigation_choice",
                    "irrigation_rival",
                    "supply_flow",
                    "header_length",
                    "filter_loss",
                    "watering_hours",
                    "drain_fraction",
                    "water_price",
                    "water_temperature",
                    "water_ph",
                    "filter_opening",
                    "check_interval",
                    "days_until_seen",
                    "outlet_check_rate"),
            new Subject(
                    "Nutrient solution",
                    "recipe_nitrogen",
                    "raw_water_calcium",
                    "acid_choice",
                    "calcium_nitrate_choice",
                    "phosphorus_declared_as",
                    "stock_dilution",
                    "feed_price_year",
                    "micronutrient_rate",
                    "ion_balance_limit",
                    "recipe_tolerance",
                    "feed_ec_least"),
            new Subject(
                    "Climate, heat and power",
                    "eave_height",
                    "roof_glazing",
                    "fuel_name",
                    "design_temperature",
                    "solar_transmission",
                    "temperature_spread",
                    "vent_set",
                    "fan_power",
                    "heating_use",
                    "electricity_price"),
            new Subject("Selling", "receipts_by", "second_grade_price"),
            new Subject(
                    "Labour", "wage_level", "wage_general", "install_wage", "picking_rate", "hours_per_person_month"),
            new Subject(
                    "Money and plan",
                    "plan_year",
                    "plan_years",
                    "finance_rate",
                    "recovery_method",
                    "recovery_rate",
                    "insurance_rate",
                    "property_tax_rate",
                    "contingency_share",
                    "parts_price_level",
                    "management_cost",
                    "management_by",
                    "office_cost",
                    "land_rent",
                    "land_of",
                    "operating_rate"),
            new Subject(
                    "Funds and loans",
                    "owner_funds",
                    "loan_to_value_limit",
                    "loan_rounding",
                    "security_share_land",
                    "sales_terms",
                    "owner_draw",
                    "owner_rate",
                    "inflation_rate",
                    "start_month",
                    "tax_rate",
                    "shock_interest",
                    "coverage_limit",
                    "prepared_by"),
            new Subject("What a bank looks at", "term_debt_coverage_strong", "stress_price"),
            new Subject("What a whole budget holds", "waived_house"));

    private final Budget budget;
    private final Map<String, Set<Line>> gathered = new LinkedHashMap<>();

    private record Subject(String title, List<String> named) {

        Subject(String title, String... named) {
            this(title, List.of(named));
        }

        long namedIn(Schedule schedule) {
            return schedule.lines().stream()
                    .filter(line -> named.contains(line.id()))
                    .count();
        }
    }

    private Subjects(Budget budget) {
        this.budget = budget;
        ALL.forEach(subject -> gathered.put(subject.title(), new LinkedHashSet<>()));
        ALL.forEach(subject -> subject.named().forEach(name -> addSchedulesOf(subject, name)));
        budget.schedules().forEach(this::addUnnamed);
        gathered.values().removeIf(Set::isEmpty);
    }

    /**
     * Gathers the entries.
     *
     * @param budget a farm
     * @return single entries by the title of their subject, each once, in reading order
     */
    static Map<String, List<Line>> of(Budget budget) {
        Map<String, List<Line>> lists = new LinkedHashMap<>();
        new Subjects(budget).gathered.forEach((title, lines) -> lists.put(title, List.copyOf(lines)));
        return lists;
    }

    /** The names that subjects give, for a look whether they are those of entries. */
    static List<String> named() {
        return ALL.stream().flatMap(subject -> subject.named().stream()).toList();
    }

    private void addSchedulesOf(Subject subject, String name) {
        for (Schedule schedule : budget.schedules()) {
            if (schedule.lines().stream().anyMatch(line -> line.id().equals(name))) {
                singles(schedule).stream()
                        .filter(line -> titleOf(schedule, line).equals(subject.title()))
                        .forEach(line -> add(subject.title(), line));
            }
        }
    }

    private void addUnnamed(Schedule schedule) {
        singles(schedule).forEach(line -> add(titleOf(schedule, line), line));
    }

    private void add(String title, Line line) {
        if (gathered.values().stream().noneMatch(lines -> lines.contains(line))) {
            gathered.computeIfAbsent(title, any -> new LinkedHashSet<>()).add(line);
        }
    }

    private List<Line> singles(Schedule schedule) {
        return schedule.lines().stream()
                .filter(line -> line.axes().isEmpty() && budget.entry(line).isPresent() && !budget.isEnd(line))
                .toList();
    }

    /** The subject that names the entry, else the one that names most of its schedule, else the schedule itself. */
    private static String titleOf(Schedule schedule, Line line) {
        Subject found = null;
        for (Subject subject : ALL) {
            if (subject.named().contains(line.id())) {
                return subject.title();
            }
            if (subject.namedIn(schedule) > (found == null ? 0 : found.namedIn(schedule))) {
                found = subject;
            }
        }
        return found == null ? schedule.title() : found.title();
    }
}
