package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What is burnt: heat in a unit of fuel as it is sold, its price, and the share that reaches the house.
 *
 * <pre>
 * F = Q / (e f)
 * F  fuel, fuel_unit   Q  heat that reaches the house, kWh   e  efficiency, a share   f  heat in a unit of fuel, kWh/fuel_unit
 * </pre>
 *
 * Bartok, <i>Greenhouse heat loss</i>. The heat is that of {@link FuelTable} for the fuel and the unit named, or the one entered; where
 * neither is known no fuel is counted, and that is said.
 */
public final class Fuel {

    private static final Unit HEAT = Unit.parse("kWh/fuel_unit");
    private static final double FAR = 0.25;

    /** Where fuel for an amount of heat comes from. */
    static final String SOURCE = "heat over efficiency and heat of the fuel: Bartok, Greenhouse heat loss";

    /** Price of a unit of fuel, money/fuel_unit. */
    public final Line price;

    /** Unit in which fuel is sold, a text. */
    final Line soldBy;

    private final Line name;
    private final Line ofTable;
    private final Line heat;
    /** Share of the fuel's heat that reaches the house. */
    final Line efficiency;

    /**
     * Declares entries.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     */
    public Fuel(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Fuel and heater");
        s.note(
                "A fuel_unit is one litre, US gallon, kilogram or kWh of fuel, as it is sold: say which. The table of fuels below says "
                        + "what the usual ones hold.");
        name = entries.add(s.textEntry("fuel_name", "Fuel").words(TextForm.GROUP));
        soldBy = entries.add(
                s.textEntry("fuel_sold_by", "Unit in which fuel is sold").words(TextForm.GROUP));
        Line entered = entries.add(s.entry("fuel_heat", "Heat in a unit of fuel; 0 takes it from the table", HEAT)
                .from(0, 20_000));
        price = entries.add(
                s.entry("fuel_price", "Price of a unit of fuel; 0 not entered", Unit.parse("money/fuel_unit"))
                        .from(0, 1_000_000));
        efficiency = entries.add(s.entry("heater_efficiency", "Share of the fuel's heat that reaches the house", ONE)
                .above(0, 8));
        ofTable = new FuelTable(b, entries.profile(), name, soldBy).heat;
        heat = s.line(
                "fuel_heat_counted",
                "Heat in a unit of fuel, counted",
                HEAT,
                when(entered.isPositive(), entered, ofTable));
        Line apart = s.line(
                "fuel_heat_apart",
                "Heat entered against the table, apart by, share",
                ONE,
                when(
                        and(entered.isPositive(), ofTable.isPositive()),
                        greater(entered.minus(ofTable), ofTable.minus(entered)).over(ofTable),
                        none(ONE)));
        Line allowed = s.line(
                "fuel_heat_apart_most",
                "That share, most",
                ONE,
                number(FAR, ONE),
                "common practice, no source: fuels of one name differ");
        s.warning(
                "fuel_heat_warning",
                "Heat of the fuel",
                apart.exceeds(allowed),
                joined(
                        text("The heat entered is not that of "),
                        name,
                        text(" by the "),
                        soldBy,
                        text(
                                ": correct fuel_heat, fuel_name or fuel_sold_by, or enter a fuel_heat of 0 for that of the table.")));
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
        Unit time = needed.unit().over(Unit.parse("kWh"));
        Formula burnt = needed.over(efficiency.times(heat));
        return when(heat.isPositive(), burnt, none(Unit.parse("fuel_unit").times(time)));
    }

    /**
     * Warns where heat is counted and the fuel or its price is not known.
     *
     * @param s where the warnings are added
     * @param needed heat of a year
     */
    void watch(ScheduleBuilder s, Line needed) {
        s.warning(
                "fuel_unknown_warning",
                "Heat of the fuel",
                and(needed.isPositive(), not(heat.isPositive())),
                joined(
                        text("The table has no "),
                        name,
                        text(" by the "),
                        soldBy,
                        text(
                                ", so no fuel is counted: enter fuel_heat, or take a fuel and a unit that stand together in the table of fuels.")));
        s.warning(
                "fuel_price_warning",
                "Price of the fuel",
                and(needed.isPositive(), not(price.isPositive())),
                "The house is heated and its fuel has no price, so that heat costs nothing: enter fuel_price, in money for the unit of "
                        + "fuel_sold_by.");
    }
}
