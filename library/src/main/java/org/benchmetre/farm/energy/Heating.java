package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.energy.EnergyUnits.ENERGY_A_MONTH;
import static org.benchmetre.farm.energy.EnergyUnits.ENERGY_A_YEAR;
import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_MONTH;
import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_YEAR;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.profile.CropProfile;

/**
 * Heat by month: what is lost for each kelvin that heat makes up, by day and by night behind the screen.
 *
 * <pre>
 * Q = H K h d s + Hn Kn (24 - h) d s
 * Q  heat, kWh/mo     H, Hn  lost for each kelvin by day and behind the screen, W/K     K, Kn  made up by day and by night, K
 * h  hours of light, h/d     d  days, d/mo     s  share of the month that heat is counted for
 * </pre>
 *
 * Loss for each kelvin times kelvins times hours: Bartok, <i>Greenhouse heat loss</i>.
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
     * @param profile what is published of heat
     * @param loss what the house loses for each kelvin
     * @param made what heat makes up
     * @param fuel what is burnt
     * @param floor of the house
     */
    public Heating(BudgetBuilder b, CropProfile profile, HeatLoss loss, MadeUpByHeat made, Fuel fuel, Line floor) {
        this.climate = made.climate;
        this.months = climate.months;
        fuelUnit = fuel.soldBy;
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEAT);
        Line day = s.line("day_heat", "Heat by day", ENERGY_A_MONTH, lost(loss.total, made.byDay, climate.light), LOST);
        Line night = s.line(
                "night_heat", "Heat by night", ENERGY_A_MONTH, lost(loss.atNight, made.byNight, made.dark), LOST);
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
        GasOfGlass.compare(year, profile, heatOfYear.over(floor).over(fuel.efficiency));
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

    private Formula lost(Line eachKelvin, Line kelvins, Line hours) {
        return eachKelvin
                .times(kelvins)
                .times(hours)
                .times(months.days)
                .times(climate.heated)
                .in(ENERGY_A_MONTH);
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
