package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.profile.CropProfile;

/**
 * Heat told as natural gas for each square metre, whatever is burnt, held against what glass houses with the crop are published to
 * take. Where the profile of a crop publishes nothing, nothing is said.
 */
final class GasOfGlass {

    private static final Unit GAS = Unit.parse("fuel_unit/(m2 a)");
    private static final Unit HELD = Unit.parse("kWh/fuel_unit");

    private GasOfGlass() {}

    /**
     * Declares the lines.
     *
     * @param s where they are added
     * @param profile what is published, in {@code ranges.csv}
     * @param burnt heat in what is burnt for each square metre, kWh/(m2 a)
     */
    static void compare(ScheduleBuilder s, CropProfile profile, Formula burnt) {
        Usual usual = profile.range("gas_per_area", GAS);
        if (usual.equals(Usual.UNKNOWN)) {
            return;
        }
        Line gas = s.line(
                "gas_per_area",
                "As natural gas, m³ for each m² of floor",
                GAS,
                burnt.over(number(10.5, HELD)),
                "10.5 kWh in a cubic metre of natural gas, from memory");
        Line least = s.line(
                "gas_published_least",
                "Published, least",
                GAS,
                number(usual.range().low(), GAS),
                usual.source());
        Line most = s.line(
                "gas_published_most",
                "Published, most",
                GAS,
                number(usual.range().high(), GAS),
                usual.source());
        Formula below = when(least.exceeds(gas), text("below what is published of glass houses"), text("as published"));
        Formula words = when(gas.exceeds(most), text("above what is published of glass houses"), below);
        s.textLine("gas_compared", "That gas is", when(gas.isPositive(), words, text("no heat")));
    }
}
