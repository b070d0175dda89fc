package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.finance.MonthsBase;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * What stands in the books: capital at cost less depreciation in a straight line, apart from capital recovery of the enterprise budget, and
 * what the growing crop has taken so far. All that is paid at the start but land, plants, what is used up and cash is capital; it wears at
 * the average pace of parts and house.
 */
final class BookValue {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final Unit A_YEAR = Unit.parse("1/a");
    private static final String CAPITAL = "Capital at the start";
    private static final String STRAIGHT =
            "straight line over lives of parts and house, salvage left out, and never more than is left in the "
                    + "books; parts bought again count at what they cost then: Farm Financial Standards, method; the average pace is our choice";

    /** Capital at the start that wears. */
    final Line capital;
    /** Depreciation of each year. */
    final Line depreciation;
    /** Capital in the books at the end of each year, land among it. */
    final Line book;
    /** Parts and house bought again that last, by year. */
    final Line lastingBought;
    /** The growing crop, plants and supplies at the end of each year. */
    final Line inventory;

    BookValue(
            BudgetBuilder b, YearOperations y, Funding funds, YearlyCost yearly, TakeOff parts, Formula usedUpAtStart) {
        CashFlow flow = y.flow;
        ScheduleBuilder one = b.shared(Sheets.LENDING, CAPITAL);
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Capital and crop in the books");
        Line usedUp = one.line(
                "used_up_at_start", "Parts used up within the first year", NOMINAL, usedUpAtStart.counting(NOMINAL));
        capital = one.line(
                "capital_at_start",
                "Capital that wears",
                NOMINAL,
                funds.total
                        .minus(funds.workingCapital)
                        .minus(funds.plants)
                        .minus(funds.land)
                        .minus(usedUp));
        Line pace = one.line("capital_pace", "Wears in a year, share", A_YEAR, pace(b, one, yearly, parts));
        lastingBought = s.line("year_lasting_parts", "Capital bought again", NOMINAL, y.parts.minus(y.usedUp));
        Formula index = flow.growth.money.times(flow.growth.costs).counting(ONE);
        Line gross = s.declare("capital_gross", "Capital at cost", NOMINAL, Kind.NUMBER, List.of(y.axis), STRAIGHT);
        Formula dearer = lastingBought.times(one().minus(one().over(index)));
        b.define(gross, previous(gross, capital).plus(dearer));
        book = s.declare("capital_book", "Capital in the books", NOMINAL, Kind.NUMBER, List.of(y.axis), "");
        Formula before = previous(book, none(NOMINAL));
        Formula worn = previous(gross, none(NOMINAL)).times(pace).times(number(1, Unit.parse("a")));
        Formula left = greater(before.plus(lastingBought).minus(funds.land), none(NOMINAL));
        Formula goesOn = and(flow.plan.number.isPositive(), flow.plan.inPlan.isPositive());
        depreciation = s.line(
                "year_depreciation",
                "Depreciation",
                NOMINAL,
                when(goesOn, lesser(worn, left), none(NOMINAL)),
                STRAIGHT);
        b.define(
                book,
                when(
                        goesOn,
                        before.plus(lastingBought).minus(depreciation),
                        when(flow.plan.number.isPositive(), none(NOMINAL), capital.plus(funds.land))));
        Line growing = growingCrop(one, flow);
        inventory = s.line(
                "year_inventory",
                "Growing crop, plants and supplies",
                NOMINAL,
                when(
                        flow.plan.number.isPositive(),
                        growing.times(flow.growth.money)
                                .times(flow.growth.costs)
                                .times(flow.plan.inPlan)
                                .plus(y.plants)
                                .plus(y.usedUp),
                        funds.plants.plus(usedUp)),
                "at what was paid for it; plants and supplies bought for the next year among it: common practice, no source");
    }

    /** One over the average life, each weighed by what it costs. */
    private static Formula pace(BudgetBuilder b, ScheduleBuilder single, YearlyCost yearly, TakeOff t) {
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Wear of parts");
        Line used = yearly.owned.isUsedUp;
        Axis parts = t.exact.axes().get(0);
        Line wear = s.line(
                "material_wear",
                "Wears in a year",
                MONEY.over(Unit.parse("a")),
                t.exact.times(one().minus(used)).over(yearly.owned.life));
        Line all = single.line(
                "wearing_cost",
                "Parts and house that wear",
                MONEY,
                sum(t.exact, parts).minus(sumProduct(t.exact, used, parts)).plus(yearly.house.cost));
        Formula worn = sum(wear, parts).plus(yearly.house.cost.over(yearly.house.life));
        return when(all.isPositive(), worn.over(all), none(A_YEAR));
    }

    /** What the crop in the ground at the end of a year has taken, less what its fruit so far has carried; none where crops end with the year. */
    private static Line growingCrop(ScheduleBuilder s, CashFlow flow) {
        MonthsBase months = flow.months;
        Line spent = s.line(
                "growing_crop_spent",
                "Labour, energy, water, inputs and overhead of the first year",
                MONEY,
                months.firstYear(months.labour)
                        .plus(months.firstYear(months.energy))
                        .plus(months.firstYear(months.running))
                        .minus(months.idle()),
                "overhead of months before planting is carried by no crop; " + Months.COUNTING);
        Formula full = flow.full
                .labour()
                .plus(flow.full.energy())
                .plus(flow.full.running())
                .times(number(1, Unit.parse("a")));
        Formula receipts = flow.full.harvest().receipts.times(number(1, Unit.parse("a")));
        Formula soldShare =
                when(receipts.isPositive(), months.firstYear(months.inFull).over(receipts), number(1, ONE));
        return s.line(
                "growing_crop_cost",
                "The growing crop at the end of a year, at today's prices",
                MONEY,
                when(
                        months.months.wait.isPositive(),
                        greater(spent.minus(full.times(soldShare)), none(MONEY)),
                        none(MONEY)),
                "spent since planting less the share of a year's cost that fruit sold so far has carried: our choice, no source");
    }
}
