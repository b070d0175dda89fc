package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Marketable fruit picked by month and grade: what is left after fruit lost to dry plants, spread over the months. Plain
 * arithmetic.
 */
public final class Picking {

    private static final Unit KG = Unit.parse("kg/a");
    private static final Unit MONTHLY = Unit.parse("kg/mo");

    /** Marketable fruit by month, kg/mo. */
    public final Line byMonth;
    /** Marketable fruit a year, kg/a. */
    public final Line total;
    /** Share of marketable fruit that dry plants leave. */
    public final Line kept;
    /** Share of first grade. */
    public final Line firstGrade;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param yield marketable fruit before dry plants
     * @param pattern shares of the months
     * @param lostDry marketable fruit that plants without water lose, in kg/a; nothing when no section reckons it
     */
    public Picking(BudgetBuilder b, FarmEntries entries, Yield yield, MonthPattern pattern, Formula lostDry) {
        ScheduleBuilder dry = b.schedule(Sheets.CROP, "Fruit after loss to dry plants");
        Line shareLost = dry.line(
                "fruit_dry_share",
                "Share lost to plants left dry by clogged outlets",
                ONE,
                when(
                        yield.marketable.isPositive(),
                        lesser(greater(lostDry, none(KG)), yield.marketable).over(yield.marketable),
                        none(ONE)));
        Formula left = one().minus(shareLost);
        kept = dry.line(
                "fruit_kept_share",
                "Share kept",
                ONE,
                when(left.exceeds(none(ONE)), left, none(ONE)),
                "less than a millionth counts as none, so that rounding leaves no fruit where every plant is dry");
        dry.line(
                "fruit_lost_dry",
                "Lost to plants left dry by clogged outlets",
                KG,
                yield.marketable.times(one().minus(kept)));
        firstGrade = entries.add(dry.entry("first_grade_share", "First grade, share of marketable fruit", ONE)
                .from(0, 1));
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.FRUIT_BY_MONTH);
        Formula all = yield.marketable.times(kept);
        byMonth = s.line(
                "month_yield",
                "Marketable fruit",
                MONTHLY,
                monthOf(pattern.chosen.times(all)),
                "shares of a year; the sum of the months is the year");
        total = b.shared(Sheets.CROP, Tables.FRUIT_OF_A_YEAR)
                .line("yield_total", "Marketable fruit", KG, all.times(pattern.together));
    }
}
