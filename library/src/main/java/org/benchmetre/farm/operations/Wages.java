package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Formulas;
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

    /** What family labour costs, as a note of a line. */
    static final String OF_FAMILY =
            "family labour at what it would earn elsewhere, and no cash: Commodity Costs and Returns Estimation Handbook, 2000";

    private static final String METHOD =
            "wage, and what the employer pays on top of it: Commodity Costs and Returns Estimation Handbook, 2000";

    /** An hour of general labour, with on-costs, money/h. */
    final Line generalRate;
    /** An hour of skilled labour, with on-costs, money/h. */
    final Line skilledRate;
    /** What an hour of the family would earn elsewhere, money/h. */
    final Line familyRate;

    /**
     * Declares entries and lines.
     *
     * @param b where the schedule is added
     * @param entries gives entries their values
     * @param level all wages against those entered
     */
    public Wages(BudgetBuilder b, FarmEntries entries, Line level) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Wages");
        s.note(
                "On-costs are what the employer pays on top of hired wages: social charges, accident insurance, paid leave. "
                        + "Family labour costs no cash; its wage is what the hours would earn elsewhere. Installation has its own wage.");
        Line general = wage(s, entries, "wage_general", "Wage, general labour");
        Line skilled = wage(s, entries, "wage_skilled", "Wage, skilled labour");
        Line family = wage(s, entries, "wage_family", "Wage, family labour (what hours earn elsewhere)");
        Line onCosts = entries.add(s.entry("on_cost_share", "On-costs of hired wages, share of wage", ONE)
                .from(0, 2));
        Formula hired = level.times(one().plus(onCosts));
        generalRate = rate(s, "hired_general_rate", "An hour of general labour, with on-costs", general.times(hired));
        skilledRate = rate(s, "hired_skilled_rate", "An hour of skilled labour, with on-costs", skilled.times(hired));
        familyRate = rate(s, "family_rate", "An hour of family labour", family.times(level));
    }

    private static Line wage(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, MONEY_AN_HOUR).from(0, 1_000_000));
    }

    private static Line rate(ScheduleBuilder s, String id, String label, Formula worth) {
        return s.line(id, label, MONEY_AN_HOUR, worth, METHOD);
    }

    /** A wage class and a driver as one text, by which hours are added up. */
    Formula joined(Formula wageClass, Formula driver) {
        return Formulas.joined(wageClass, text(" "), driver);
    }

    /**
     * What an hour costs the economic budget.
     *
     * @param wageClass a text: one of {@link #CLASSES}, blank for general
     * @return money an hour
     */
    public Formula cost(Formula wageClass) {
        return when(wageClass.is(FAMILY), familyRate, hiredCost(wageClass));
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
