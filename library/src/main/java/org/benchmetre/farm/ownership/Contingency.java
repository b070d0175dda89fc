package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * A reserve for what building turns out to cost more: a share of the cost of the parts, for every irrigation system, recovered or used up
 * as the parts are. It is spent at the start; when parts are bought again their price is known, and nothing of it is left at the end of the plan. A
 * share of the estimate is common practice, no source.
 */
public final class Contingency {

    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Unit YEARLY = Unit.parse("money/a");

    /** Share of the cost of parts. */
    public final Line share;
    /** What is set aside, money, by irrigation system. */
    public final Line wayCost;
    /** What that comes to in a year, money/a, by irrigation system. */
    public final Line wayRecovery;
    /** What is set aside, money, for the chosen way. */
    public final Line cost;
    /** What that comes to in a year, money/a, for the chosen way. */
    public final Line recovery;

    /**
     * Declares entry and lines.
     *
     * @param b where schedules are added
     * @param entries gives the entry its value
     * @param t quantities and costs of the parts
     * @param owned what parts cost in a year
     */
    public Contingency(BudgetBuilder b, FarmEntries entries, TakeOff t, PartsYearly owned) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Contingency");
        ScheduleBuilder byWay = b.shared(Sheets.MATERIALS, Tables.PARTS_BY_SYSTEM);
        share = entries.add(s.entry("contingency_share", "Contingency, share of the cost of parts", ONE)
                .from(0, 1));
        Line parts = byWay.line(
                "way_parts_cost",
                "Parts, exact quantity",
                MONEY,
                sum(t.wayCost, t.wayCost.axes().get(0)));
        Line recovered = byWay.line(
                "way_parts_recovery",
                "Parts, recovered or used up",
                YEARLY,
                sumProduct(
                        t.wayAmount,
                        owned.driverYearly,
                        owned.driverYearly.axes().get(0)));
        wayCost = byWay.line("way_contingency_cost", "Contingency on parts", MONEY, parts.times(share));
        wayRecovery = byWay.line(
                "way_contingency_recovery", "Contingency, recovered as the parts are", YEARLY, recovered.times(share));
        cost = s.line("contingency_cost", "Contingency on parts", MONEY, t.exactTotal.times(share));
        Line pace = s.line(
                "parts_recovery_share",
                "Parts recovered or used up, share of their cost",
                PER_YEAR,
                when(
                        t.exactTotal.isPositive(),
                        owned.recoveryTotal
                                .plus(owned.usedUpTotal)
                                .over(t.exactTotal)
                                .in(PER_YEAR),
                        none(PER_YEAR)));
        recovery = s.line("contingency_recovery", "Contingency, recovered as the parts are", YEARLY, cost.times(pace));
    }
}
