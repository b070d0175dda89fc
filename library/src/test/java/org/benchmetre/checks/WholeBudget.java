package org.benchmetre.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.PlanBuilder;
import org.benchmetre.ScenarioException;

/**
 * A published budget of a whole farm as a scenario: each printed row is entered as what it is, and what the source does not charge
 * (wages of one's own, interest, insurance) is nothing. Benches and plants, which no source prints, are round numbers for the floor.
 */
final class WholeBudget {

    /** What no source charges apart from its rows. */
    private static final List<String> NOTHING = List.of(
            "wage_level",
            "recovery_rate",
            "insurance_rate",
            "property_tax_rate",
            "operating_rate",
            "commission_share",
            "land_rent",
            "electricity_price",
            "water_price",
            "drain_cost",
            "acid_treatment_cost",
            "nitric_acid_price",
            "micronutrient_price",
            "calcium_nitrate_price",
            "magnesium_sulphate_price",
            "monopotassium_phosphate_price",
            "potassium_nitrate_price",
            "potassium_sulphate_price");

    /** Years of the parts; which one does not matter, since a row is their cost over it. */
    private static final double LIFE = 10;

    private static final double PLANTS_ON_A_BENCH = 100;
    private static final double FLOOR_OF_A_BENCH = 10;
    private static final String PRICE_YEAR = "2020";

    private final Map<String, String> entries = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> tasks = new LinkedHashMap<>();
    private final Map<String, Double> printed = new LinkedHashMap<>();

    private WholeBudget(List<CSVRecord> rows) {
        NOTHING.forEach(each -> entries.put(each, "0"));
        for (CSVRecord row : rows) {
            if (!row.get("amount").isEmpty()) {
                take(row, row.get("amount"));
            }
        }
    }

    /** The plan of the rows of one budget. */
    static Plan plan(List<CSVRecord> rows) throws ScenarioException {
        return new WholeBudget(rows).built();
    }

    private void take(CSVRecord row, String amount) {
        String as = row.get("entered_as");
        switch (as) {
            case "task" ->
                tasks.put(
                        row.get("row").toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "_"),
                        Map.of(
                                "group", row.get("row").replace(",", ""),
                                "driver", "one",
                                "times", "1",
                                "times_unit", "a",
                                "pattern", "even",
                                "input_cost", amount,
                                "price_year", PRICE_YEAR));
            case "currency" -> entries.put("plan_currency", amount);
            case "office" -> entries.put("office_cost", amount);
            default -> printed.put(as, Double.valueOf(amount));
        }
    }

    private double of(String what) {
        return printed.getOrDefault(what, 0.0);
    }

    private Plan built() throws ScenarioException {
        double floor = of("house_area");
        double benches = Math.floor(floor / FLOOR_OF_A_BENCH);
        double plants = benches * PLANTS_ON_A_BENCH;
        house(floor, benches);
        fruit(plants);
        money(floor);
        PlanBuilder plan = Benchmetre.plan("strawberry");
        entries.forEach(plan::entry);
        tasks.forEach((key, cells) -> plan.row("tasks", key, cells));
        return plan.row("materials", "house", part())
                .row("irrigation", "none", Map.of("lines", "1", "outlets_per_plant", "1"))
                .row("plant_stock", "plants", Map.of("price", "" + of("plants") / plants, "price_year", PRICE_YEAR))
                .build();
    }

    /** Benches of 10 m with 100 plants, one for every 10 m2. */
    private void house(double floor, double benches) {
        entries.put("house_length", "" + floor / 20);
        entries.put("house_width", "20");
        entries.put("bench_count", String.format(Locale.ROOT, "%.0f", benches));
        entries.put("bench_length", "10");
        entries.put("end_margin", "0.05");
        entries.put("plant_spacing", "0.1");
    }

    /** All fruit is picked, sold and of the first grade, at its mean price. */
    private void fruit(double plants) {
        entries.put("yield_per_plant", "" + of("yield") / plants + " kg/(plant crop)");
        entries.put("harvest_losses", "0");
        entries.put("marketable_share", "1");
        entries.put("first_grade_share", "1");
        entries.put("fruit_price", "" + of("receipts") / of("yield"));
        entries.put("cost_per_kg", "" + of("per_kg") / of("yield"));
    }

    /** Straight line: a rate is charged on the average investment, half of the cost. */
    private void money(double floor) {
        double variable = tasks.values().stream()
                .mapToDouble(task -> Double.parseDouble(task.get("input_cost")))
                .sum();
        entries.put("recovery_method", "straight_line");
        entries.put("land_rent", "" + of("land") / floor);
        if (printed.containsKey("rate_on_parts")) {
            entries.put("recovery_rate", "" + 2 * of("rate_on_parts") / partCost());
        }
        if (printed.containsKey("rate_on_variable")) {
            entries.put("operating_rate", "" + of("rate_on_variable") / variable);
            entries.put("operating_outstanding", "1");
            entries.put("operating_months", "12");
        }
    }

    private double partCost() {
        return of("part") * LIFE;
    }

    private Map<String, String> part() {
        double repairs = of("repairs") == 0 ? 0 : of("repairs") / partCost();
        return Map.of(
                "group",
                "Depreciation",
                "driver",
                "one",
                "rate",
                "1",
                "price",
                "" + partCost(),
                "price_year",
                PRICE_YEAR,
                "life",
                "" + LIFE,
                "repairs",
                "" + repairs);
    }
}
