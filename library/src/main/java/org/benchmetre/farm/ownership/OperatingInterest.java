package org.benchmetre.farm.ownership;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Interest on operating capital. Picking, packing and selling are paid as fruit is paid for and carry none; what is used up within a
 * year ({@link UsedUp}) carries it like all other expense before harvest.
 *
 * <pre>
 * I = E o r m f
 * I  interest, money/a             E  expense before harvest, money/a   o  share outstanding, on average
 * r  rate, real on money of today, real/a     m  time of use, a         f  share financed
 * </pre>
 *
 * Course material of the United States Department of Agriculture for beginning farmers.
 */
public final class OperatingInterest {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit REAL = Unit.parse("real/a");

    /** Interest a year, money/a, by irrigation system. */
    public final Line byWay;
    /** Interest a year with the way chosen, money/a. */
    public final Line interest;
    /** What that is paid on, money/a. */
    public final Line expense;
    /** Interest for each unit of expense. */
    public final Line factor;

    /**
     * Expense before harvest, a year.
     *
     * @param byWay what differs by irrigation system
     * @param chosen the same with the way chosen
     * @param alike what is the same for every way
     */
    public record Expense(Formula byWay, Formula chosen, Formula alike) {}

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param ways irrigation systems
     * @param before expense before harvest
     */
    public OperatingInterest(BudgetBuilder b, FarmEntries entries, Ways ways, Expense before) {
        ScheduleBuilder e = b.schedule(Sheets.ENTRIES, "Operating capital");
        Line rate = entries.add(e.entry("operating_rate", "Rate on operating capital, real", REAL)
                .from(OwnershipRates.LEAST_RATE, 1));
        Line outstanding = entries.add(e.entry("operating_outstanding", "Share outstanding, on average", ONE)
                .from(0, 1));
        Line months = entries.add(
                e.entry("operating_months", "Months of use", Unit.parse("mo")).from(0, 24));
        Line financed = entries.add(e.entry("operating_financed", "Share financed; 1 charges one's own money too", ONE)
                .from(0, 1));
        factor = b.shared(Sheets.BUDGET, Tables.OPERATING_CAPITAL)
                .line(
                        "operating_interest_factor",
                        "Interest for each unit of expense",
                        ONE,
                        outstanding
                                .times(rate.counting(Unit.parse("1/a")))
                                .times(months.in(Unit.parse("a")))
                                .times(financed),
                        "share outstanding times rate times time: USDA course material for beginning farmers");
        ScheduleBuilder y = b.shared(Sheets.BUDGET, Tables.OPERATING_CAPITAL);
        Line alike =
                y.line("operating_expense_alike", "Expense that is the same for every system", YEARLY, before.alike());
        expense = y.line(
                "operating_expense",
                "Expense before harvest",
                YEARLY,
                before.chosen().plus(alike));
        interest = y.line("operating_interest", "Interest on operating capital", YEARLY, expense.times(factor));
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.SYSTEM_COSTS);
        Line ofWay = s.line(
                "way_operating_expense",
                "Expense before harvest",
                YEARLY,
                ways.whereFilled(before.byWay().plus(alike)));
        byWay = s.line("way_operating_interest", "Interest on operating capital", YEARLY, ofWay.times(factor));
    }
}
