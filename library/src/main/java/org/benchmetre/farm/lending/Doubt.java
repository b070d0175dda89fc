package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.decision.EntryWords;

/**
 * An assumption that a lender may doubt: nobody decides it, and it can turn out otherwise. What a plan decides, such as benches, spacing,
 * years or the owner's draw, is none, and what says the same as another one, such as the wage of each class beside the level of all wages,
 * is left out. Chosen are those that moved net present value and lowest coverage of the samples most: a choice of this project, no source.
 *
 * @param entry name of a single entry
 * @param label what a reader sees
 * @param factor what it is multiplied with where it is told
 * @param decimals of it
 * @param unit words behind it; empty for the unit of the entry
 */
record Doubt(String entry, String label, double factor, int decimals, String unit) {

    private static final double HUNDRED = 100;

    private static final List<Doubt> ALL = List.of(
            plain("yield_per_plant", "Fruit per plant", 0),
            times("yield_level", "Fruit of all crops"),
            times("price_level", "Price of fruit"),
            share("expected_loss", "Fruit lost to frost, pests", 0),
            share("marketable_share", "Marketable share", 0),
            share("first_grade_share", "First grade", 0),
            share("year_1_share", "Yield of the first year", 0),
            share("commission_share", "Commission", 0),
            new Doubt("shock_late", "First harvest late by", 1, 0, "months"),
            plain("picking_rate", "Picking rate", 1),
            plain("packing_rate", "Packing rate", 1),
            times("wage_level", "Wages"),
            share("on_cost_share", "On-costs of wages", 0),
            times("plant_price_level", "Price of plants"),
            times("parts_price_level", "Price of parts"),
            plain("house_cost_per_area", "House, by area", 0),
            share("contingency_share", "Contingency", 0),
            new Doubt("set_point_shift", "Heating set points", 1, 1, "K warmer"),
            new Doubt("air_changes", "Air leaks of the house", 1, 1, "an hour"),
            share("heater_efficiency", "Heater efficiency", 0),
            plain("fuel_price", "Price of fuel", 2),
            plain("electricity_price", "Price of electricity", 2),
            plain("base_power", "Power that runs all day", 2),
            new Doubt("check_interval", "Between checks of outlets", 1, 2, "months"),
            rate("recovery_rate", "Real rate of interest"),
            rate("fruit_price_growth", "Growth of fruit prices"),
            rate("cost_growth", "Growth of costs"),
            rate("shock_interest", "Change of loan rates"));

    /** For a level those entries that it multiplies, whose evidence is its own. */
    static final Map<String, List<String>> BEHIND = Map.of(
            "yield_level", List.of("crop_yield_entered"),
            "price_level", List.of("channel_price", "fruit_price"),
            "wage_level", List.of("wage_general"),
            "plant_price_level", List.of("stock_price"),
            "parts_price_level", List.of("material_price"));

    private static Doubt plain(String entry, String label, int decimals) {
        return new Doubt(entry, label, 1, decimals, "");
    }

    private static Doubt times(String entry, String label) {
        return new Doubt(entry, label, 1, 2, "times");
    }

    private static Doubt share(String entry, String label, int decimals) {
        return new Doubt(entry, label, HUNDRED, decimals, "%");
    }

    private static Doubt rate(String entry, String label) {
        return new Doubt(entry, label, HUNDRED, 1, "% a year");
    }

    /** Those that a plan has. */
    static List<Doubt> of(Predicate<String> isWanted) {
        return ALL.stream().filter(doubt -> isWanted.test(doubt.entry())).toList();
    }

    private String words(Line line, String currency) {
        return unit.isEmpty() ? line.unit().display(currency) : unit;
    }

    /** Its value with its unit, live. */
    Formula value(Line line, String currency) {
        Formula plain = line.counting(ONE);
        Formula told = factor == 1 ? plain : plain.times(number(factor, ONE));
        return joined(shown(told, decimals), text(" " + words(line, currency)));
    }

    /** How its range is told. */
    EntryWords.Told told(Line line, String currency) {
        return new EntryWords.Told(factor, decimals, words(line, currency));
    }
}
