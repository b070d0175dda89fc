package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.energy.EnergyUnits.ENERGY_A_MONTH;
import static org.benchmetre.farm.energy.EnergyUnits.ENERGY_A_YEAR;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
import static org.benchmetre.farm.energy.EnergyUnits.KELVIN;
import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_MONTH;
import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_YEAR;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Heat by month: by day what is lost less what the sun gives, by night what is lost behind the screen, neither below zero.
 *
 * <pre>
 * D = H (Ti - To) h d s     G = S A t u d s     N = Hn (Ti - To) (24 - h) d s     Q = max(D - G, 0) + N
 * D, N  lost by day and by night, kWh/mo   H, Hn  lost for each kelvin by day and behind the screen, W/K
 * Ti, To  held inside and mean outside of the hours of light or dark, degC; nothing where To is above Ti
 * h  hours of light, h/d                   d  days, d/mo        s  share of the month that heat is counted for
 * G  given by the sun, kWh/mo              S  sun on level ground, kWh/(m2 d)     A  floor, m2
 * t  share that comes through the roof     u  share of that which warms the air   Q  heat, kWh/mo
 * </pre>
 *
 * Loss for each kelvin times kelvins times hours: Bartok, <i>Greenhouse heat loss</i>. The sun: common practice, no source. Sun that
 * is left over by day is vented, not kept for the night; means of a month hide its mild and its cold nights, so months near the set
 * point come out low.
 */
public final class Heating {

    private static final String LOST = "loss for each kelvin times kelvins times hours: Bartok, Greenhouse heat loss";
    private static final String PUBLISHED = "published: 0.7 to 0.8, eXtension greenhouse energy course";

    /** Heat the house takes, kWh/mo, by month. */
    public final Line heat;
    /** What it costs, money/mo, by month. */
    public final Line cost;
    /** Heat of a year, kWh/a. */
    public final Line heatOfYear;
    /** What it costs in a year, money/a. */
    public final Line costOfYear;
    /** Fuel in a year, fuel_unit/a. */
    public final Line fuelOfYear;

    /** Months that are heated and have no climate. */
    public final Line monthsUnknown;

    /** Unit in which the fuel is sold, a text. */
    public final Line fuelUnit;

    private final Climate climate;
    private final Months months;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param loss what the house loses for each kelvin
     * @param climate outside and inside
     * @param fuel what is burnt
     * @param floor of the house
     */
    public Heating(BudgetBuilder b, FarmEntries entries, HeatLoss loss, Climate climate, Fuel fuel, Line floor) {
        this.climate = climate;
        this.months = climate.months;
        fuelUnit = fuel.soldBy;
        ScheduleBuilder sunshine = b.schedule(Sheets.OPERATIONS, "Sun that warms the house");
        Line through = entries.add(sunshine.entry("solar_transmission", "Share of sun that comes through the roof", ONE)
                .from(0, 1));
        Line useful = entries.add(sunshine.entry("solar_useful_share", "Share of that which warms the air", ONE)
                .from(0, 1));

        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEAT);
        s.note("Never below zero. Sun left over by day is vented, not kept for the night. Means hide cold nights: a "
                + "month whose mean is near the set point comes out low.");
        Formula colderByDay = colder(climate.heldByDay, climate.outsideByDay);
        Formula colderByNight = colder(climate.heldByNight, climate.outsideByNight);
        Line byDay =
                s.line("day_loss", "Lost by day", ENERGY_A_MONTH, lost(loss.total, colderByDay, climate.light), LOST);
        Line sun = s.line(
                "solar_gain",
                "Given by the sun",
                ENERGY_A_MONTH,
                inUse(climate.sun.times(floor).times(through).times(useful)),
                "sun times floor times what comes through times what warms the air: common practice, no source");
        Line day = s.line(
                "day_heat",
                "Heat by day",
                ENERGY_A_MONTH,
                greater(byDay.minus(sun), none(ENERGY_A_MONTH)),
                "sun left over is vented, not kept for the night: common practice, no source");
        Line dark = s.line(
                "dark_hours",
                "Hours of dark",
                HOURS_A_DAY,
                number(24, HOURS_A_DAY).minus(climate.light));
        Line night =
                s.line("night_heat", "Heat by night", ENERGY_A_MONTH, lost(loss.atNight, colderByNight, dark), LOST);
        heat = s.line("heat_energy", "Heat", ENERGY_A_MONTH, day.plus(night));
        Line burnt = s.line("fuel_use", "Fuel", Unit.parse("fuel_unit/mo"), fuel.fuelFor(heat), Fuel.SOURCE);
        cost = s.line("heating_cost", "Cost of fuel", MONEY_A_MONTH, burnt.times(fuel.price));

        ScheduleBuilder year = b.schedule(Sheets.OPERATIONS, "Heat of a year");
        Line nightOfYear = ofYear(year, "night_heat_total", "Heat by night", ENERGY_A_YEAR, night);
        heatOfYear = year.line(
                "heat_energy_total",
                "Heat",
                ENERGY_A_YEAR,
                yearOf(day, months.axis).plus(nightOfYear));
        Unit perArea = Unit.parse("kWh/(m2 a)");
        year.line("heat_energy_per_area", "Heat per m² of floor", perArea, heatOfYear.over(floor));
        fuelOfYear =
                year.line("fuel_use_total", "Fuel", Unit.parse("fuel_unit/a"), fuel.fuelFor(heatOfYear), Fuel.SOURCE);
        costOfYear = year.line("heating_cost_total", "Cost of fuel", MONEY_A_YEAR, fuelOfYear.times(fuel.price));
        nightShare(year, nightOfYear);
        monthsUnknown = year.line(
                "months_without_climate", "Months heated without a climate", ONE, sum(climate.unknown, months.axis));
        year.warning(
                "heating_warning",
                "Climate of the heated months",
                monthsUnknown.isPositive(),
                "No climate is given for months that are heated, so their heat is not counted: give day_temperature, "
                        + "night_temperature and day_hours in months.csv, or heated of 0 where nothing is heated.");
        fuel.watch(year, heatOfYear);
    }

    /** How much colder it is outside; nothing where it is warmer. */
    private Formula colder(Line inside, Line outside) {
        return greater(inside.minus(outside).plus(climate.shift), none(KELVIN));
    }

    private Formula lost(Line eachKelvin, Formula colder, Line hours) {
        return inUse(eachKelvin.times(colder).times(hours));
    }

    private Formula inUse(Formula aDay) {
        return aDay.times(months.days).times(climate.heated).in(ENERGY_A_MONTH);
    }

    private Line ofYear(ScheduleBuilder s, String id, String label, Unit unit, Line byMonth) {
        return s.line(id, label, unit, yearOf(byMonth, months.axis));
    }

    private void nightShare(ScheduleBuilder s, Line night) {
        Formula any = heatOfYear.isPositive();
        Line found = s.line(
                "night_heat_share",
                "Share of heat used at night",
                ONE,
                onlyWhen(any, night.over(heatOfYear), "no heat"),
                PUBLISHED);
        Line least = s.line("night_heat_least", "That share as published, least", ONE, number(0.7, ONE), PUBLISHED);
        Line most = s.line("night_heat_most", "That share as published, most", ONE, number(0.8, ONE), PUBLISHED);
        Formula share = found.numberOr(none(ONE));
        Formula below =
                when(least.exceeds(share), text("below the published 0.7 to 0.8"), text("as published, 0.7 to 0.8"));
        Formula words = when(share.exceeds(most), text("above the published 0.7 to 0.8"), below);
        s.textLine("night_heat_compared", "That share is", when(any, words, text("no heat")));
    }
}
