package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
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
 * What an hour of work costs. A hired hour costs its wage times (1 + on-costs); an hour of the family costs no cash, and in the
 * economic budget what the same hour would earn elsewhere: American Agricultural Economics Association, Commodity Costs and
 * Returns Estimation Handbook, 2000, chapter on labour.
 */
public final class Wages {

    /** Hired, without special skill. */
    public static final String GENERAL = "general";
    /** Hired, with skill or charge of others. */
    public static final String SKILLED = "skilled";
    /** Done by the family, unpaid. */
    public static final String FAMILY = "family";
    /** All classes; the first is what a blank cell means. */
    public static final List<String> CLASSES = List.of(GENERAL, SKILLED, FAMILY);

    /** Money for an hour. */
    public static final Unit MONEY_AN_HOUR = Unit.parse("money/h");

    /** What family work costs, as a note of a line. */
    static final String OF_FAMILY =
            "family labour at what it would earn elsewhere, and no cash: Commodity Costs and Returns Estimation Handbook, 2000";

    private static final String METHOD = "wage times (1 + on-costs): Commodity Costs and Returns Estimation Handbook";

    /** What an hour of the family would earn elsewhere, money/h. */
    public final Line family;

    private final Line generalRate;
    private final Line skilledRate;

    /**
     * Declares entries and lines.
     *
     * @param b where the schedule is added
     * @param entries gives entries their values
     */
    public Wages(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Wages");
        s.note(
                "On-costs are what the employer pays on top of hired wages: social charges, accident insurance, paid leave. "
                        + "Family labour costs no cash; its wage is what the hours would earn elsewhere. Installation has its own wage.");
        Line general = wage(s, entries, "wage_general", "Wage, general labour");
        Line skilled = wage(s, entries, "wage_skilled", "Wage, skilled labour");
        family = wage(s, entries, "wage_family", "Wage, family labour (what the hours would earn elsewhere)");
        Line onCosts = entries.add(s.entry("on_cost_share", "On-costs of hired wages, share of wage", ONE)
                .from(0, 2));
        generalRate = hired(s, "hired_general_rate", "An hour of general labour", general, onCosts);
        skilledRate = hired(s, "hired_skilled_rate", "An hour of skilled labour", skilled, onCosts);
    }

    private static Line wage(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, MONEY_AN_HOUR).from(0, 1_000_000));
    }

    private static Line hired(ScheduleBuilder s, String id, String label, Line wage, Line onCosts) {
        return s.line(id, label + ", with on-costs", MONEY_AN_HOUR, wage.times(one().plus(onCosts)), METHOD);
    }

    /**
     * What an hour costs the economic budget.
     *
     * @param wageClass a text: one of {@link #CLASSES}, blank for general
     * @return money an hour
     */
    public Formula cost(Formula wageClass) {
        return when(wageClass.is(FAMILY), family, hiredCost(wageClass));
    }

    /**
     * What an hour costs in cash.
     *
     * @param wageClass a text: one of {@link #CLASSES}, blank for general
     * @return money an hour, nothing for the family
     */
    public Formula cash(Formula wageClass) {
        return when(wageClass.is(FAMILY), none(MONEY_AN_HOUR), hiredCost(wageClass));
    }

    private Formula hiredCost(Formula wageClass) {
        return when(wageClass.is(SKILLED), skilledRate, generalRate);
    }
}
