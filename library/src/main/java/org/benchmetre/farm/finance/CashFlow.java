package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.takeoff.FirstCost;

/**
 * Yearly cash over the plan, at today's prices, before loans and tax. Year 0 is the start, in whole packs and plants; each later year earns
 * receipts and pays for selling, for running, for repairs, insurance, property tax, what wears out and what is used up; the last one
 * takes in what a sale would bring and pays for taking out. No capital recovery and no interest: the rate only discounts. American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook,
 * 2000, for keeping cash apart from cost.
 */
public final class CashFlow {

    /** Longest plan, in years. The plan's own length is an entry up to this. */
    public static final int LIMIT = 30;

    private static final Unit YEAR = Unit.parse("a");

    /** What the start takes. */
    public final StartUp startUp;
    /** Insurance and property tax, money/a. */
    public final Line charges;

    /** The start and the years of the plan after it, up to {@link #LIMIT}. */
    public final Axis years = Axis.periods(
            "year",
            "Year",
            IntStream.rangeClosed(0, LIMIT).mapToObj(Integer::toString).toList(),
            IntStream.rangeClosed(0, LIMIT).mapToObj(n -> "Year " + n).toList());

    /** Years of the plan, {@code a}, an entry. */
    public final Line horizon;
    /** Number of the year along the years, {@code a}; 0 at the start. */
    public final Line year;
    /** What the cash before loans and tax is worth. */
    public final Returns returns;
    /** The tables in which rates of return are sought, shared by all streams of cash. */
    public final RateAxes rates;

    private final Line inPlan;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param first first cost, what it is made of and what was chosen
     * @param harvest receipts
     * @param yearly yearly cost
     * @param running what a full year takes in cash beside selling, repairs, insurance and property tax
     */
    public CashFlow(
            BudgetBuilder b, FarmEntries entries, FirstCost first, Harvest harvest, YearlyCost yearly, Line running) {
        FirstCost.Parts p = first.parts;
        PartsYearly owned = yearly.owned;
        ScheduleBuilder answers = b.schedule(Sheets.CASH_FLOW, "What the plan is worth, before loans and tax");
        ScheduleBuilder flow = b.schedule(Sheets.CASH_FLOW, "Cash by year, at today's prices");
        ScheduleBuilder single = b.schedule(Sheets.CASH_FLOW, "Cash of one year");

        horizon = entries.add(answers.entry("plan_years", "Years of the plan", YEAR)
                .from(1, LIMIT)
                .whole());
        year = flow.declare("year_number", "Year", YEAR, Kind.NUMBER, List.of(years), "year 0 is the start");
        b.define(year, previous(year, number(-1, YEAR)).plus(number(1, YEAR)));
        inPlan = flow.line(
                "year_in_plan", "In the plan, 1 or 0", ONE, when(year.exceeds(horizon), none(ONE), number(1, ONE)));
        Wear w = new Wear(flow, year, horizon);
        PartsOverYears over = new PartsOverYears(b, first, owned, w);

        startUp = new StartUp(b, single, first, yearly.house.cost, yearly.contingency.cost);
        charges = single.line(
                "charges_cash",
                "Insurance and property tax",
                Unit.parse("money/a"),
                owned.chargesTotal.plus(yearly.house.charges));
        Line residual = single.line(
                "residual_value",
                "Residual value",
                MONEY,
                sum(over.residual, p.materials().axis)
                        .plus(w.residual(yearly.house.life, yearly.house.cost, yearly.house.resale)),
                Wear.LEFT);
        Line takingOut =
                single.line("taking_out_cost", "Taking out at the end", MONEY, sum(over.takingOut, p.materials().axis));

        Line ramp = flow.line(
                "yield_ramp",
                "Yield against a full year",
                ONE,
                ramp(harvest),
                "growers learn: the first and second year as entered, then a full one; common practice, no source");
        Line receipts = flow.line(
                "cash_receipts", "Receipts", MONEY, eachYear(harvest.receipts).times(ramp));
        Line yieldCosts = flow.line(
                "cash_yield_costs",
                "Packs, freight, commission, other costs by the kg",
                MONEY,
                eachYear(harvest.yieldCosts).times(ramp));
        Line run = flow.line("cash_running", "Water, labour, inputs, energy, overhead", MONEY, eachYear(running));
        Line kept = flow.line(
                "cash_repairs", "Repairs, insurance, property tax", MONEY, eachYear(owned.repairsTotal.plus(charges)));
        Line parts = flow.line(
                "cash_replacements",
                "Parts and house by area bought again",
                MONEY,
                sum(over.replaced, p.materials().axis)
                        .plus(w.ended(yearly.house.life).times(yearly.house.cost)),
                Wear.AGAIN);
        Axis crops = first.order.grown.crops().axis;
        Line again = b.schedule(Sheets.CASH_FLOW, "Plants bought again, by crop and year")
                .line(
                        "crop_plants_replaced",
                        "Plants bought again",
                        MONEY,
                        w.ended(yearly.plants.life).times(first.order.costByCrop),
                        Wear.AGAIN);
        Line plants = flow.line("cash_plants", "Plants bought again", MONEY, sum(again, crops));
        Formula atStart = when(year.isPositive(), none(MONEY), startUp.cash);
        Line outlay = flow.line("cash_startup", "Start-up", MONEY, atStart);
        Line end = flow.line("cash_residual", "Residual value", MONEY, w.atTheEnd(residual));
        Line out = flow.line("cash_taking_out", "Taking out at the end", MONEY, w.atTheEnd(takingOut));
        Line net = flow.line(
                "cash_net",
                "Cash of the year",
                MONEY,
                receipts.minus(yieldCosts)
                        .minus(run)
                        .minus(kept)
                        .minus(parts)
                        .minus(plants)
                        .minus(outlay)
                        .minus(out)
                        .plus(end));
        rates = new RateAxes(b);
        returns = results(b, answers, flow, owned.rates.rate(), net);
    }

    /** Growers learn: the first and the second year may yield less than a full one. */
    private Formula ramp(Harvest harvest) {
        Formula early = when(year.exceeds(number(1, YEAR)), harvest.secondYear, harvest.firstYear);
        return when(year.exceeds(number(2, YEAR)), number(1, ONE), early);
    }

    private Formula eachYear(Formula yearly) {
        Formula earns = and(year.isPositive(), inPlan.isPositive());
        return when(earns, yearly.times(number(1, YEAR)), none(MONEY));
    }

    private Returns results(BudgetBuilder b, ScheduleBuilder s, ScheduleBuilder flow, Line rate, Line net) {
        return new Returns(b, s, flow, rates, new CashStream("", "", net, rate, horizon, year));
    }
}
