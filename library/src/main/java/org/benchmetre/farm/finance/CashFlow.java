package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.presentValue;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.rateOfReturn;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
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
import org.benchmetre.farm.takeoff.Materials;

/**
 * Yearly cash over the plan, at today's prices, before loans and tax. Year 0 is the start, in whole packs and plants; each later year earns
 * receipts and pays for selling, for running, for repairs, insurance, property tax and what wears out. No capital recovery and no
 * interest: the rate only discounts. American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook,
 * 2000, for keeping cash apart from cost.
 */
public final class CashFlow {

    /** Longest plan, in years. The plan's own length is an entry up to this. */
    public static final int LIMIT = 30;

    private static final Unit YEAR = Unit.parse("a");
    private static final Unit REAL = Unit.parse("real/a");
    private static final double NEVER = 1000;

    /** What the start takes. */
    public final StartUp startUp;
    /** Insurance and property tax, money/a. */
    public final Line charges;

    private final Axis years = Axis.periods(
            "year",
            "Year",
            IntStream.rangeClosed(0, LIMIT).mapToObj(Integer::toString).toList(),
            IntStream.rangeClosed(0, LIMIT).mapToObj(n -> "Year " + n).toList());

    private final Line horizon;

    private final Line year;
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
        ScheduleBuilder wear = b.schedule(Sheets.CASH_FLOW, "Parts: what one replacement costs and its residual value");
        ScheduleBuilder replaced = b.schedule(Sheets.CASH_FLOW, "Parts replaced, by year");

        horizon = entries.add(answers.entry("plan_years", "Years of the plan", YEAR)
                .from(1, LIMIT)
                .whole());
        year = flow.declare("year_number", "Year", YEAR, Kind.NUMBER, List.of(years), "year 0 is the start");
        b.define(year, previous(year, number(-1, YEAR)).plus(number(1, YEAR)));
        inPlan = flow.line(
                "year_in_plan", "In the plan, 1 or 0", ONE, when(year.exceeds(horizon), none(ONE), number(1, ONE)));
        Wear w = new Wear(year, horizon);

        Line wageHours = wear.line(
                "material_change_labour",
                "Labour of one replacement",
                MONEY,
                p.takeOff()
                        .amount
                        .times(p.takeOff().rate)
                        .times(changeHours(p.materials()))
                        .times(first.chosen.wage()));
        Line salvage = wear.line(
                "material_salvage_value",
                "Salvage, all of it",
                MONEY,
                p.takeOff().quantity.times(owned.unitSalvage));
        Line change = wear.line(
                "material_change_cost",
                "One replacement, salvage taken off",
                MONEY,
                p.takeOff().exact.plus(wageHours).minus(salvage));
        Line left = wear.line(
                "material_residual",
                "Residual value",
                MONEY,
                w.residual(owned.life, p.takeOff().exact, salvage),
                Wear.LEFT);
        Line changes = replaced.line(
                "material_replaced", "Cost of replacements", MONEY, change.times(w.ended(owned.life)), Wear.AGAIN);

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
                sum(left, p.materials().axis)
                        .plus(w.residual(yearly.plantsLife, first.plants, none(MONEY)))
                        .plus(w.residual(yearly.house.life, yearly.house.cost, none(MONEY))),
                Wear.LEFT);

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
                "Parts and house by area replaced",
                MONEY,
                sum(changes, p.materials().axis).plus(w.ended(yearly.house.life).times(yearly.house.cost)),
                Wear.AGAIN);
        Line plants = flow.line(
                "cash_plants",
                "Plants replaced",
                MONEY,
                w.ended(yearly.plantsLife).times(first.order.cost),
                Wear.AGAIN);
        Formula atStart = when(year.isPositive(), none(MONEY), startUp.cash);
        Line outlay = flow.line("cash_startup", "Start-up", MONEY, atStart);
        Formula isEnd = and(not(year.exceeds(horizon)), not(horizon.exceeds(year)));
        Line end = flow.line("cash_residual", "Residual value", MONEY, when(isEnd, residual, none(MONEY)));
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
                        .plus(end));
        results(b, answers, flow, owned.rates.rate(), net);
    }

    private static Formula changeHours(Materials m) {
        return m.installHours.plus(m.removeHours);
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

    private void results(BudgetBuilder b, ScheduleBuilder s, ScheduleBuilder flow, Line rate, Line net) {
        Line sum = flow.declare("cash_cumulative", "Cumulative cash", MONEY, Kind.NUMBER, List.of(years), "");
        b.define(sum, previous(sum, none(MONEY)).plus(net));
        Formula falls = none(MONEY).minus(net).isPositive();
        Line sign = flow.declare(
                "cash_sign",
                "Sign of the last cash that is not zero",
                ONE,
                Kind.NUMBER,
                List.of(years),
                "1 or -1; 0 until there is cash");
        Formula before = previous(sign, none(ONE));
        b.define(sign, when(net.isPositive(), number(1, ONE), when(falls, number(-1, ONE), before)));
        Line turns = flow.line(
                "cash_turns",
                "Sign changes",
                ONE,
                when(none(ONE).minus(before.times(sign)).isPositive(), number(1, ONE), none(ONE)));
        Formula gap = none(MONEY).minus(previous(sum, none(MONEY)));
        Formula crosses = and(gap.isPositive(), not(none(MONEY).minus(sum).isPositive()));
        Line paid = flow.line(
                "cash_payback",
                "Years until paid back; 1000 in all other years",
                YEAR,
                when(crosses, year.minus(number(1, YEAR)).plus(gap.over(net).counting(YEAR)), number(NEVER, YEAR)),
                "the year before and the part of the year that fills the gap, cash taken as even over a year: common practice, no source");

        s.line(
                "net_present_value",
                "Net present value (real)",
                MONEY,
                presentValue(rate, net, years),
                "flows over (1 + rate)^year, year 0 at once: Commodity Costs and Returns Estimation Handbook, 2000");
        SearchStart start = new SearchStart(b, net, years);
        Line guess =
                s.line("irr_guess", "Where the search for the rate of return begins", REAL, start.highestThatPays());
        Line changes = s.line("irr_sign_changes", "Times the cash changes sign", ONE, sum(turns, years));
        Formula single = and(changes.isPositive(), not(changes.exceeds(number(1, ONE))));
        s.line(
                "internal_rate_of_return",
                "Internal rate of return (real)",
                REAL,
                onlyWhen(
                        and(single, start.paysAtAll()),
                        rateOfReturn(net, years, guess),
                        when(single, text("no rate above -99 %"), text("no single rate"))),
                "the rate at which the present value is 0; there is one where the cash changes sign once");
        Line found = s.line("payback_found", "First year of paying back, 1000 for none", YEAR, least(paid, years));
        s.line(
                "payback_years",
                "Years until cash is paid back",
                YEAR,
                onlyWhen(number(NEVER, YEAR).exceeds(found), found, "never"),
                "1000 stands for never");
    }
}
