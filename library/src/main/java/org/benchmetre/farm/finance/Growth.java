package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * How prices move over the years of the plan: all money by inflation, fruit prices and costs by what they do beyond it. Money of a year is
 * money of today times the inflation until then. Prices of a whole year of the plan are alike.
 */
public final class Growth {

    private static final Unit REAL = Unit.parse("real/a");
    private static final Unit A_YEAR = Unit.parse("1/a");
    private static final Unit YEAR = Unit.parse("a");
    private static final String COMPOUND = "(1 + rate)^year: compound growth, plain arithmetic";
    private static final double LEAST = -0.2;

    /** Inflation, 1/a. */
    public final Line inflation;
    /** What money of a year is worth of today's, money of that year for one of today's. */
    public final Line money;

    /** Fruit prices of a year against today's, in today's money. */
    public final Line prices;
    /** Costs of a year against today's, in today's money. */
    public final Line costs;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param plan its years
     */
    public Growth(BudgetBuilder b, FarmEntries entries, PlanYears plan) {
        Line year = plan.number;
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, "Inflation and growth");
        inflation = entries.add(s.entry("inflation_rate", "Inflation", A_YEAR).from(LEAST, 1));
        Line fruit = entries.add(s.entry("fruit_price_growth", "Fruit prices, growth beyond inflation", REAL)
                .from(LEAST, 1));
        Line cost = entries.add(
                s.entry("cost_growth", "Costs, growth beyond inflation", REAL).from(LEAST, 1));
        ScheduleBuilder byYear = b.schedule(Sheets.CASH_FLOW, "Prices of each year against today's");
        money = byYear.line(
                "money_index",
                "Money of the year for one of today's",
                Unit.MONEY_NOMINAL.over(Unit.MONEY),
                grown(inflation, year).counting(Unit.MONEY_NOMINAL.over(Unit.MONEY)),
                COMPOUND);
        prices = byYear.line("fruit_price_index", "Fruit prices, real", ONE, grown(fruit, year), COMPOUND);
        costs = byYear.line("cost_index", "Costs, real", ONE, grown(cost, year), COMPOUND);
    }

    private static Formula grown(Line rate, Line year) {
        return one().plus(rate.counting(ONE)).power(year.over(number(1, YEAR)));
    }
}
