package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.energy.EnergyUnits.ENERGY_A_MONTH;
import static org.benchmetre.farm.energy.EnergyUnits.ENERGY_A_YEAR;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
import static org.benchmetre.farm.energy.EnergyUnits.KILOWATT;
import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_MONTH;
import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_YEAR;
import static org.benchmetre.farm.energy.EnergyUnits.WATT_PER_AREA;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Electricity by month: power times hours of vent fans, cooler, circulation fans and lights, and what runs all day. Pumps are not
 * here: their energy stands with the irrigation systems and is counted once. Common practice, no source.
 */
public final class Electricity {

    private static final Bounds HOURS = new Bounds(0, true, 24, false);

    /** What it costs, money/mo, by month. */
    public final Line cost;
    /** What it costs in a year, money/a. */
    public final Line costOfYear;
    /** Electricity in a year, without pumps, kWh/a. */
    public final Line energyOfYear;

    private final Months months;
    private final ScheduleBuilder hours;
    private final ScheduleBuilder byMonth;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months days, their axis and the columns of hours
     * @param floor of the house
     * @param price of electricity, money/kWh
     */
    public Electricity(BudgetBuilder b, FarmEntries entries, Months months, Line floor, Line price) {
        this.months = months;
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "What runs on electricity");
        s.note("Without pumps: their energy stands with the irrigation systems. Without lights unless entered.");
        hours = b.schedule(Sheets.OPERATIONS, "Hours of running");
        byMonth = b.shared(Sheets.OPERATIONS, Tables.ENERGY);
        Line fans = perArea(s, entries, "fan_power", "Vent fans, power per m² of floor");
        Line cooler = power(s, entries, "cooler_power", "Cooler, power");
        Line circulation = perArea(s, entries, "circulation_power", "Circulation fans, power per m² of floor");
        Line lights = perArea(s, entries, "light_power", "Lights, power per m² of floor");
        Line base = power(s, entries, "base_power", "What runs all day: controls, inflation fans");

        Line ofFans = load("fan", "Vent fans", fans.times(floor));
        Line ofCooler = load("cooler", "Cooler", cooler);
        Line ofCirculation = load("circulation", "Circulation fans", circulation.times(floor));
        Line ofLights = load("light", "Lights", lights.times(floor));
        Line ofBase = energy("base", "What runs all day", base, number(24, HOURS_A_DAY));
        Line all = byMonth.line(
                "electricity_energy",
                "Electricity, without pumps",
                ENERGY_A_MONTH,
                ofFans.plus(ofCooler).plus(ofCirculation).plus(ofLights).plus(ofBase));
        cost = byMonth.line(
                "electricity_cost",
                "Cost of electricity, without pumps",
                MONEY_A_MONTH,
                all.times(price).in(MONEY_A_MONTH));

        ScheduleBuilder year = b.schedule(Sheets.OPERATIONS, "Electricity of a year, without pumps");
        energyOfYear = year.line("electricity_energy_total", "Electricity", ENERGY_A_YEAR, yearOf(all, months.axis));
        costOfYear = year.line(
                "electricity_cost_total",
                "Cost of electricity",
                MONEY_A_YEAR,
                energyOfYear.times(price).in(MONEY_A_YEAR));
    }

    private static Line perArea(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, WATT_PER_AREA).from(0, 2000));
    }

    private static Line power(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, KILOWATT).from(0, 100_000));
    }

    private Line load(String what, String label, Formula power) {
        Line running = months.numbers(hours, what + "_hours", what + "_hours", label, HOURS_A_DAY, HOURS);
        return energy(what, label, power, running);
    }

    private Line energy(String what, String label, Formula power, Formula running) {
        return byMonth.line(
                what + "_energy",
                label,
                ENERGY_A_MONTH,
                power.times(running).times(months.days).in(ENERGY_A_MONTH));
    }
}
