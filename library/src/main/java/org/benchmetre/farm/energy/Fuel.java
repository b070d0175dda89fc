package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.INVENTED;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What is burnt: heat in a unit of fuel as it is sold, its price, and the share that reaches the house. Fuel used is heat over
 * efficiency and heat of the fuel. Heats of oil and propane: Bartok, <i>Greenhouse heat loss</i>.
 */
public final class Fuel {

    private static final Unit HEAT = Unit.parse("kWh/fuel_unit");
    private static final double LITRE_OF_PROPANE =
            92_500 * Unit.parse("Btu/gal").factorTo(Unit.parse("kWh/L")).toDouble();

    /** Price of a unit of fuel, money/fuel_unit. */
    public final Line price;

    private final Line heat;
    private final Line efficiency;

    /**
     * Declares entries.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     */
    public Fuel(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Fuel and heater");
        s.note(
                "A fuel_unit is one litre, gallon, kilogram or kWh of fuel, as it is sold: say which. Propane holds 92,500 Btu/gal "
                        + "or 7.16 kWh/L, heating oil 138,500 Btu/gal or 10.72 kWh/L; fuel sold by the kWh holds 1.");
        entries.add(s.textEntry("fuel_name", "Fuel").oneOf("propane", INVENTED, List.of()));
        entries.add(s.textEntry("fuel_sold_by", "Unit in which fuel is sold (fuel_unit)")
                .oneOf("litre", INVENTED, List.of()));
        heat = entries.add(s.entry("fuel_heat", "Heat in a unit of fuel", HEAT)
                .above(0, 20_000)
                .typical(
                        1,
                        LITRE_OF_PROPANE,
                        45,
                        "Bartok, Greenhouse heat loss: propane 92,500 Btu/gal, oil 138,500 Btu/gal"));
        price = entries.add(s.entry("fuel_price", "Price of a unit of fuel", Unit.parse("money/fuel_unit"))
                .from(0, 1_000_000)
                .typical(0.05, 0.7, 8, INVENTED));
        efficiency = entries.add(s.entry("heater_efficiency", "Share of the fuel's heat that reaches the house", ONE)
                .above(0, 8)
                .typical(0.6, 0.8, 0.95, "eXtension, unit on greenhouses: below 0.6 old, above 0.9 new"));
        s.warning(
                "efficiency_warning",
                "Efficiency of the heater",
                efficiency.exceeds(one()),
                "The heater gives out more heat than its fuel holds: only a heat pump does; enter a share such as 0.8.");
    }

    /**
     * Fuel for an amount of heat.
     *
     * @param needed heat that must reach the house, in kWh by month, day or otherwise
     * @return units of fuel for the same time
     */
    Formula fuelFor(Formula needed) {
        return needed.over(efficiency.times(heat));
    }
}
