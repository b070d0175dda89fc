package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;

/**
 * Pressure, power, energy and money of the pump, by irrigation system.
 *
 * <pre>
 * p = p(bench inlet) + p(header) + p(filter) + p(regulator and fittings) + w z - p(source), never below 0
 * P = Q p / (ep em)        E = G p / (ep em)        T = G / Qz
 * p  pressure the pump adds, kPa     z  lift, m       w  a metre of water, 9.80665 kPa
 * P  power drawn, kW                 Q  flow of the largest zone, L/h    ep, em  efficiency of pump and motor
 * E  electricity, kWh/a              G  water given, m³/a
 * T  hours run, h/a                  Qz flow of a zone on average, L/h: zones run one after the other, small ones as long as large
 * </pre>
 *
 * Any text of hydraulics. The pressure of the largest zone is counted for all of them.
 */
public final class Pumping {

    private static final Unit KILOPASCAL = Unit.parse("kPa");

    /** Price of electricity, money/kWh. */
    public final Line electricityPrice;
    /** Pressure the pump adds, kPa, by way. */
    public final Line pressure;
    /** Power the pump draws, kW, by way. */
    public final Line power;
    /** Hours the supply runs, h/a, by way. */
    public final Line hours;
    /** Electricity, kWh/a, by way. */
    public final Line energy;
    /** Electricity, money/a, by way. */
    public final Line cost;

    private final FarmEntries entries;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param h hydraulics of the benches
     * @param supply source and zones
     * @param header friction of the header
     * @param gross water given in m3/a, by way
     */
    public Pumping(BudgetBuilder b, FarmEntries entries, Hydraulics h, Supply supply, HeaderPipe header, Line gross) {
        this.entries = entries;
        Unit hoursPerYear = Unit.parse("h/a");
        Unit kilowatt = Unit.parse("kW");
        Unit energyPerYear = Unit.parse("kWh/a");
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Pump and electricity");
        Line filter = loss(s, "filter_loss", "Pressure lost in the filter");
        Line fittings = loss(s, "regulator_loss", "Pressure lost in regulator, valves, injector and fittings");
        Line lift = entries.add(s.entry("lift_height", "Height from the source's water level to the benches", METRE)
                .from(-100, 500));
        Line pump = efficiency(s, "pump_efficiency", "Efficiency of the pump");
        Line motor = efficiency(s, "motor_efficiency", "Efficiency of its motor");
        electricityPrice = entries.add(s.entry("electricity_price", "Price of electricity", Unit.parse("money/kWh"))
                .from(0, 1_000_000));

        ScheduleBuilder list = b.shared(Sheets.IRRIGATION, Tables.ZONES_AND_PUMP);
        list.note(
                "Needed at the pump while the largest zone runs; a source with enough pressure of its own needs no pump.");
        Formula needed = h.inletPressure
                .plus(header.loss)
                .plus(filter)
                .plus(fittings)
                .plus(lift.counting(Unit.parse("mH2O")).in(KILOPASCAL))
                .minus(supply.pressure);
        pressure = list.line(
                "way_pump_pressure",
                "Pressure the pump adds",
                KILOPASCAL,
                h.ways.whereFilled(greater(needed, none(KILOPASCAL))),
                "bench inlet + header + filter + regulator and fittings + lift - source");
        power = list.line(
                "way_pump_power",
                "Power the pump draws",
                kilowatt,
                supply.zoneFlow.times(pressure).over(pump.times(motor)).in(kilowatt),
                "flow of the largest zone x pressure / (pump efficiency x motor efficiency)");
        hours = list.line(
                "way_pump_hours",
                "Hours the supply runs, a year",
                hoursPerYear,
                when(
                        supply.averageZoneFlow.isPositive(),
                        gross.over(supply.averageZoneFlow).in(hoursPerYear),
                        none(hoursPerYear)),
                "water given over the flow of a zone on average: all zones, one after the other");
        energy = list.line(
                "way_pump_energy",
                "Electricity of the pump, a year",
                energyPerYear,
                when(
                        supply.zoneFlow.isPositive(),
                        gross.times(pressure).over(pump.times(motor)).in(energyPerYear),
                        none(energyPerYear)),
                "water given x pressure / (pump efficiency x motor efficiency)");
        cost = list.line("way_pumping_cost", "Pumping, a year", Unit.parse("money/a"), energy.times(electricityPrice));
    }

    private Line loss(ScheduleBuilder s, String id, String label) {
        EntryBuilder entry = s.entry(id, label, KILOPASCAL).from(0, 2000);
        return entries.add(entry);
    }

    private Line efficiency(ScheduleBuilder s, String id, String label) {
        EntryBuilder entry = s.entry(id, label, ONE).above(0, 1);
        return entries.add(entry);
    }
}
