package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Picking and packing. What is graded out is picked and paid for and not packed; what is missed or lost is not picked. Walking along the benches comes on top of picking, so kilograms an hour fall in thin months, when a pass finds
 * little.
 *
 * <pre>
 * H = Y k / p + n b / v     K = Y / q
 * H  hours of picking, h/mo     K  hours of packing, h/mo     Y  marketable fruit, kg/mo     k  fruit picked for each of its kilograms
 * p, q  fruit picked or packed in an hour, kg/h     n  passes, 1/mo     b  metres of bench, m     v  bench walked along in an hour, m/h
 * </pre>
 *
 * Common practice, no source.
 */
public final class PickingWork {

    private static final Unit HOURS_A_MONTH = Unit.parse("h/mo");
    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");
    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");
    private static final Unit MONEY_A_KG = Unit.parse("money/kg");
    private static final Unit KG_AN_HOUR = Unit.parse("kg/h");
    private static final String HOURS =
            "fruit picked, graded-out fruit with it, over rate plus passes times bench over pace: common practice, no source";
    private static final Bounds PASSES = new Bounds(0, true, 62, false);
    private static final Unit A_MONTH = Unit.parse("1/mo");

    /**
     * One kind of work that follows the fruit.
     *
     * @param wageClass who does it
     * @param monthHours hours in each month
     * @param wage cost of an hour in the economic budget
     * @param year what it comes to in a year
     */
    public record Work(Line wageClass, Line monthHours, Line wage, Year year) {}

    /**
     * What work comes to in a year.
     *
     * @param hours hours a year
     * @param cost cost a year, family labour included
     */
    public record Year(Line hours, Line cost) {}

    /** Picking. */
    public final Work picking;
    /** Packing. */
    public final Work packing;
    /** What picking for one more marketable kilogram costs, money/kg; walking is done anyway. */
    public final Line pickingMoves;
    /** What packing a kilogram costs, money/kg. */
    public final Line packingMoves;

    /** Marketable fruit in a year, kg/a. */
    final Line marketable;

    private final FarmEntries entries;
    private final Wages wages;
    private final Months months;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param wages what hours cost
     * @param months the months
     * @param harvest marketable fruit in each month and in a year, and what is picked for it
     * @param benchMetres all benches end to end
     */
    public PickingWork(
            BudgetBuilder b, FarmEntries entries, Wages wages, Months months, Harvest harvest, Line benchMetres) {
        Line monthYield = harvest.monthYield;
        marketable = harvest.yield;
        this.entries = entries;
        this.wages = wages;
        this.months = months;
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Picking and packing");
        s.note("The picking rate is for benches full of ripe fruit; walking along the benches comes on top of it.");
        Line pickingRate = rate(s, "picking_rate", "Fruit picked in an hour, benches full");
        Line pace = entries.add(s.entry("pick_walk_rate", "Bench walked along in an hour", Unit.parse("m/h"))
                .above(0, 10_000));
        Line aWeek = entries.add(s.entry("picks_a_week", "Passes a week while there is fruit", Unit.parse("1/wk"))
                .above(0, 14));
        Line packingRate = rate(s, "packing_rate", "Fruit packed in an hour");
        Line pickers = workers(s, "picking_wage_class", "Picking is done by: general, skilled or family");
        Line packers = workers(s, "packing_wage_class", "Packing is done by: general, skilled or family");

        ScheduleBuilder m = b.shared(Sheets.OPERATIONS, Tables.LABOUR);
        Line picked = m.line(
                "fruit_picked_in_month",
                "Fruit picked, graded-out fruit with it",
                monthYield.unit(),
                monthYield.times(harvest.pickedPerKg));
        Line walking = m.line(
                "walking_hours_in_month",
                "Hours of walking along the benches, while there is fruit",
                HOURS_A_MONTH,
                passes(m, harvest.monthShare, aWeek)
                        .times(benchMetres)
                        .over(pace)
                        .in(HOURS_A_MONTH),
                "passes times bench over pace: common practice, no source");
        Line pick = m.line(
                "picking_hours_in_month",
                "Hours of picking",
                HOURS_A_MONTH,
                picked.over(pickingRate).plus(whileFruit(harvest, walking)),
                HOURS);
        m.line(
                "kg_per_hour",
                "Fruit an hour of picking",
                KG_AN_HOUR,
                onlyWhen(pick.isPositive(), picked.over(pick).in(KG_AN_HOUR), "no fruit"));
        Line pack = m.line("packing_hours_in_month", "Hours of packing", HOURS_A_MONTH, monthYield.over(packingRate));

        ScheduleBuilder y = b.schedule(Sheets.OPERATIONS, "Picking and packing in a year");
        Line walked = y.line(
                "walking_hours",
                "Walking along the benches, hours, while there is fruit",
                HOURS_A_YEAR,
                yearOf(walking, months.axis));
        Formula toPick =
                harvest.yield.times(harvest.pickedPerKg).over(pickingRate).plus(whileFruit(harvest, walked));
        Line hours = y.line("picking_hours", "Picking, hours", HOURS_A_YEAR, toPick, HOURS);
        picking = work(y, "picking", "Picking", pickers, pick, hours);
        packing = work(
                y,
                "packing",
                "Packing",
                packers,
                pack,
                y.line("packing_hours", "Packing, hours", HOURS_A_YEAR, harvest.yield.over(packingRate)));
        averages(y, marketable);
        pickingMoves = y.line(
                "picking_cost_of_one_more_kg",
                "Picking, one more marketable kg",
                MONEY_A_KG,
                picking.wage().times(harvest.pickedPerKg).over(pickingRate),
                "of marketable fruit, with what is graded out of it; walking does not move with yield");
        packingMoves = y.line(
                "packing_cost_of_one_more_kg",
                "Packing, one more kg",
                MONEY_A_KG,
                packing.wage().over(packingRate));
    }

    private Line rate(ScheduleBuilder s, String id, String label) {
        return entries.add(s.entry(id, label, KG_AN_HOUR).above(0, 10_000));
    }

    private Line workers(ScheduleBuilder s, String id, String label) {
        return entries.add(s.textEntry(id, label).oneOf(Wages.CLASSES));
    }

    /** Nobody walks along benches that bear nothing. */
    private static Formula whileFruit(Harvest harvest, Line walking) {
        return when(harvest.yield.isPositive(), walking, none(walking.unit()));
    }

    private Line passes(ScheduleBuilder m, Line fruitShare, Line aWeek) {
        Line entered =
                months.numbers(m, "picks", "pick_passes", "Passes entered, 0 for the usual number", A_MONTH, PASSES);
        Formula usual = aWeek.times(months.days).in(A_MONTH);
        return m.line(
                "pick_passes_in_month",
                "Passes along the benches, while there is fruit",
                A_MONTH,
                when(fruitShare.isPositive(), when(entered.isPositive(), entered, usual), none(A_MONTH)));
    }

    private Work work(ScheduleBuilder y, String id, String label, Line workers, Line monthHours, Line hours) {
        Line wage = y.line(
                id + "_wage", label + ", cost of an hour", Wages.MONEY_AN_HOUR, wages.cost(workers), Wages.OF_FAMILY);
        Line cost = y.line(
                id + "_cost_total",
                label + ", labour cost",
                MONEY_A_YEAR,
                hours.times(wage).in(MONEY_A_YEAR));
        return new Work(workers, monthHours, wage, new Year(hours, cost));
    }

    private void averages(ScheduleBuilder y, Line fruit) {
        average(y, "picking_cost_per_kg", "Picking, average of a marketable kg", picking, fruit);
        average(y, "packing_cost_per_kg", "Packing, average of a kg", packing, fruit);
    }

    private static void average(ScheduleBuilder y, String id, String label, Work work, Line fruit) {
        y.line(
                id,
                label,
                MONEY_A_KG,
                onlyWhen(fruit.isPositive(), work.year().cost().over(fruit), "no fruit"));
    }
}
