package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.House;

/**
 * General farm overhead: management, office, land, vehicles and licences by the year, and the house where it is charged by the metre
 * of bench and week in place of its parts. American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook, 2000, for keeping overhead
 * apart from operating and ownership. Management, land and house of one's own cost no cash.
 */
public final class Overhead {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final String BY_PARTS = "parts";
    private static final String BY_BENCH_WEEK = "bench_week";
    private static final String OWN = "own";
    private static final String RENTED = "rented";

    /** Management, a year. */
    public final Line management;
    /** Office, a year. */
    public final Line office;
    /** Rent of the land, or what it would rent for: by area, and as a sum. */
    public final Line land;
    /** Vehicles, a year. */
    public final Line vehicles;
    /** Licences, permits, certificates, dues, a year. */
    public final Line licences;
    /** Floor the rent is paid for. */
    final Line floor;
    /** The house by bench and week, a year; 0 where its parts are charged. */
    public final Line houseCharge;
    /** Management that costs cash, a year. */
    final Formula managementCash;
    /** Land that costs cash, a year. */
    final Formula landCash;
    /** The house by bench and week, where it costs cash. */
    final Formula houseCash;
    /** All overhead, money/a. */
    public final Line total;
    /** Overhead that costs cash, money/a. */
    public final Line cash;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param house benches and floor
     * @param structure cost of the parts that belong to the house
     */
    public Overhead(BudgetBuilder b, FarmEntries entries, House house, Line structure) {
        ScheduleBuilder e = b.schedule(Sheets.ENTRIES, "Management, office, land, house");
        management = entries.add(
                e.entry("management_cost", "Management, a year", YEARLY).from(0, 1e12));
        Line manager = entries.add(e.textEntry("management_by", "Management is").oneOf(List.of(OWN, "hired")));
        office = entries.add(e.entry("office_cost", "Office, accounts, telephone, a year", YEARLY)
                .from(0, 1e12));
        Line rent = entries.add(e.entry("land_rent", "Rent of land under the house", Unit.parse("money/(m2 a)"))
                .from(0, 1e6));
        Line landSum = entries.add(e.entry("land_sum", "Land, a sum a year beside rent by area", YEARLY)
                .from(0, 1e12));
        Line owner = entries.add(e.textEntry("land_of", "Land is").oneOf(List.of(OWN, RENTED)));
        vehicles =
                entries.add(e.entry("vehicles_cost", "Vehicles, a year", YEARLY).from(0, 1e12));
        licences = entries.add(e.entry("licences_cost", "Licences, certificates, dues, a year", YEARLY)
                .from(0, 1e12));
        Line method =
                entries.add(e.textEntry("house_charge_by", "House charged by").oneOf(List.of(BY_PARTS, BY_BENCH_WEEK)));
        Line charge = entries.add(
                e.entry("bench_week_charge", "Charge for a metre of bench a week", Unit.parse("money/(m wk)"))
                        .from(0, 1e6));
        Line weeks = entries.add(e.entry("bench_weeks_charged", "Weeks of a year charged", Unit.parse("wk/a"))
                .from(0, 53));
        Line houseOf = entries.add(
                e.textEntry("house_of", "House charged by bench and week is").oneOf(List.of(OWN, RENTED)));
        ScheduleBuilder s = b.schedule(Sheets.BUDGET, "Overhead");
        land = s.line("land_cost", "Land", YEARLY, rent.times(house.houseArea).plus(landSum));
        floor = house.houseArea;
        Formula byWeek = charge.times(house.benchMetres).times(weeks);
        houseCharge = s.line(
                "house_charge",
                "House by bench and week",
                YEARLY,
                when(method.is(BY_BENCH_WEEK), byWeek, none(YEARLY)));
        total = s.line(
                "overhead_total",
                "Overhead",
                YEARLY,
                management.plus(office).plus(land).plus(vehicles).plus(licences).plus(houseCharge));
        managementCash = unlessOwn(manager, management);
        landCash = unlessOwn(owner, land);
        houseCash = unlessOwn(houseOf, houseCharge);
        cash = s.line(
                "overhead_cash",
                "Of that, cash",
                YEARLY,
                office.plus(managementCash)
                        .plus(landCash)
                        .plus(vehicles)
                        .plus(licences)
                        .plus(houseCash),
                "management, land and house of one's own cost no cash: Commodity Costs and Returns Estimation Handbook, 2000");
        Formula byWeeks = method.is(BY_BENCH_WEEK);
        s.warning(
                "house_charge_warning",
                "House charged once",
                and(byWeeks, or(not(houseCharge.isPositive()), structure.isPositive())),
                "The house is charged by bench and week: give a bench_week_charge, and leave its structure out of materials.csv, the "
                        + "parts counted by house_area or of the block house, so that it is charged once.");
    }

    private static Formula unlessOwn(Line whose, Line cost) {
        return when(whose.is(OWN), none(YEARLY), cost);
    }
}
