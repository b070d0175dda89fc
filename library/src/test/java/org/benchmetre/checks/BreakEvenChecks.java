package org.benchmetre.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;

/**
 * Published break-evens and interest through the enterprise budget of a house. Work costs nothing, other costs by the kilogram are as
 * published, and management brings what stays to the published amount, times a scale that leaves room for the rest of the house.
 */
final class BreakEvenChecks {

    /** The functions that published rows may ask for. */
    static final Set<String> FUNCTIONS = Set.of("operating_interest", "break_even_price", "break_even_yield");

    /** Published costs and kilograms are these times larger in the house; a price is none the wiser. */
    private static final double SCALE = 10_000;

    private static final List<String> PLAIN = List.of("fixed", "per_kg", "kg", "expense");

    private final Map<String, Double> given = new TreeMap<>();
    private final Budget house;

    private BreakEvenChecks(String inputs, Budget sample) {
        List<String> settings = new ArrayList<>(List.of(
                "wage_general=0 money/h",
                "wage_skilled=0 money/h",
                "wage_family=0 money/h",
                "receipts_by=one_price",
                "harvest_losses=0 1"));
        for (String input : inputs.split("; ")) {
            String[] sides = input.split("=");
            if (PLAIN.contains(sides[0])) {
                given.put(sides[0], Double.valueOf(sides[1]));
            } else {
                settings.add(input);
            }
        }
        house = Sample.with(sample, settings.toArray(String[]::new));
    }

    static double found(String function, String inputs, Budget sample) {
        BreakEvenChecks check = new BreakEvenChecks(inputs, sample);
        return switch (function) {
            case "operating_interest" ->
                Figures.of(check.house).number("operating_interest_factor") * check.given.get("expense");
            case "break_even_price" -> check.price();
            case "break_even_yield" -> check.kilograms();
            default -> throw new IllegalArgumentException("No check is written for " + function + ".");
        };
    }

    /** With the yield that gives the published kilograms. */
    private double price() {
        Figures f = Figures.of(house);
        double yield = f.number("yield_per_plant") * given.get("kg") * SCALE / f.number("yield_total");
        return withCosts(Sample.typedOver(house, "yield_per_plant=" + yield + " g/(plant crop)"))
                .number("break_even_price");
    }

    /** Marketable kilograms that the break-even in grams a plant makes. */
    private double kilograms() {
        Figures f = withCosts(house);
        double yield = f.number("break_even_yield");
        return Figures.of(Sample.typedOver(f.budget(), "yield_per_plant=" + yield + " g/(plant crop)"))
                        .number("yield_total")
                / SCALE;
    }

    private Figures withCosts(Budget budget) {
        Budget byKg = Sample.with(budget, "cost_per_kg=" + given.get("per_kg") + " money/kg");
        Figures f = Figures.of(byKg);
        double stays = f.number("total_cost") - f.number("moves_with_yield_total") - f.number("management_cost");
        double management = given.get("fixed") * SCALE - stays;
        return Figures.of(Sample.with(byKg, "management_cost=" + management + " money/a"));
    }
}
