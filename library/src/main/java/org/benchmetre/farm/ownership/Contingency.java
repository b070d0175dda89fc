package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * A reserve for what building turns out to cost more: a share of the cost of the parts of the plan as it is chosen. It is one sum for the
 * plan, so that it does not decide between ways to water, and is recovered at the pace of the parts it stands for. It is spent at the
 * start and leaves nothing. A share of the estimate is common practice, no source.
 */
public final class Contingency {

    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Unit YEARLY = Unit.parse("money/a");

    /** What is set aside, money. */
    public final Line cost;
    /** What it comes to in a year, money/a. */
    public final Line recovery;

    /**
     * Declares entry and lines.
     *
     * @param b where a schedule is added
     * @param entries gives the entry its value
     * @param parts cost of all parts, money
     * @param recovered capital recovery of all parts, money/a
     */
    public Contingency(BudgetBuilder b, FarmEntries entries, Line parts, Line recovered) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Contingency");
        Line share = entries.add(s.entry("contingency_share", "Contingency, share of the cost of parts", ONE)
                .from(0, 1));
        cost = s.line("contingency_cost", "Contingency on parts", MONEY, share.times(parts));
        Line pace = s.line(
                "parts_recovery_share",
                "Capital recovery of parts, share of their cost",
                PER_YEAR,
                when(parts.isPositive(), recovered.over(parts).in(PER_YEAR), none(PER_YEAR)));
        recovery = s.line("contingency_recovery", "Contingency, recovered as the parts are", YEARLY, cost.times(pace));
    }
}
