package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.Uses;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.takeoff.FirstCost;

/**
 * Yearly cash over the plan, in today's money, before loans and tax. Year 0 is the start, in whole packs and plants; each later year earns
 * receipts and pays for selling, for running, for repairs, insurance, property tax, what wears out and what is used up; the last one
 * takes in what a sale would bring and pays for taking out. The first two years are sums of their months. No capital recovery and no
 * interest: the rate only discounts. American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook,
 * 2000, for keeping cash apart from cost.
 */
public final class CashFlow {

    private static final Unit YEAR = Unit.parse("a");
    private static final Unit REAL = Unit.parse("real/a");
    private static final String BY_MONTH =
            "the first two years by their months, later ones in full: a choice of this project, no source";

    /** The years of the plan. */
    public final PlanYears plan;
    /** What is bought again, and what is left at the end. */
    public final BoughtAgain again;
    /** What the start takes. */
    public final StartUp startUp;
    /** What may go wrong. */
    public final Shocks shocks;
    /** How prices move. */
    public final Growth growth;
    /** Receipts of each year, money. */
    public final Line receipts;
    /** Packs, freight, commission and other costs by the kg, money. */
    public final Line selling;
    /** Hired labour, money. */
    public final Line labour;
    /** Heat and electricity, money. */
    public final Line energy;
    /** Water, nutrient solution, inputs, irrigation maintenance, overhead, money. */
    public final Line running;
    /** Repairs, insurance, property tax, money. */
    public final Line kept;
    /** Commission, share of the costs of selling. */
    public final Line commissionShare;
    /** Repairs, insurance and property tax of a month, money. */
    public final Line keptInMonth;
    /** Rate at which cash before finance is discounted, real/a. */
    public final Line discountRate;
    /** What a year of the plan takes and brings in full. */
    public final FullYear full;

    /**
     * What is built.
     *
     * @param first first cost, what it is made of and what was chosen
     * @param yearly yearly cost
     * @param uses what the start takes beside parts, plants and installing
     */
    public record Built(FirstCost first, YearlyCost yearly, Uses uses) {}

    /**
     * A year of the plan in full, in cash and at today's prices, money/a.
     *
     * @param harvest receipts and costs of selling
     * @param labour hired labour
     * @param energy heat and electricity
     * @param running water, nutrient solution, inputs, irrigation maintenance, overhead
     * @param charges insurance and property tax
     */
    public record FullYear(Harvest harvest, Line labour, Line energy, Formula running, Line charges) {}

    /**
     * The first two years by month.
     *
     * @param crop the months of the crop year
     * @param flows what goes by month of the calendar
     * @param selling costs of selling by month of the calendar, money/mo
     */
    public record ByMonth(CropYear crop, MonthsBase.Flows flows, Line selling) {}

    /**
     * What moves with changes, before them, by year, money.
     *
     * @param receipts of the year
     * @param selling packs, freight, commission and other costs by the kg
     * @param labour hired labour
     * @param energy heat and electricity
     */
    public record Planned(Line receipts, Line selling, Line labour, Line energy) {}

    /** What moves with changes, before them. */
    public final Planned planned;
    /** What changes make of it. */
    public final Changes changes;
    /** The first two years, month by month. */
    public final MonthsBase months;
    /** What the cash before loans and tax is worth. */
    public final Returns returns;
    /** The tables in which rates of return are sought, shared by all streams of cash. */
    public final RateAxes rates;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param built what is built
     * @param full a full year
     * @param byMonth its months
     */
    public CashFlow(BudgetBuilder b, FarmEntries entries, Built built, FullYear full, ByMonth byMonth) {
        FirstCost first = built.first();
        YearlyCost yearly = built.yearly();
        this.full = full;
        FirstCost.Parts p = first.parts;
        PartsYearly owned = yearly.owned;
        Harvest harvest = full.harvest();
        ScheduleBuilder answers = b.schedule(Sheets.CASH_FLOW, "What the plan is worth, before loans and tax");
        ScheduleBuilder flow = b.schedule(Sheets.CASH_FLOW, "Cash by year, in today's money");
        ScheduleBuilder single = b.shared(Sheets.CASH_FLOW, "Cash of one year");

        plan = new PlanYears(b, entries);
        shocks = new Shocks(b, entries, plan.room());
        months = new MonthsBase(
                b, new PlanMonths(b, entries, byMonth.crop()), shocks, harvest, byMonth.flows(), byMonth.selling());
        growth = new Growth(b, entries, plan);
        discountRate = owned.rates.rate();
        startUp = new StartUp(b, single, first, yearly.house.cost, yearly.contingency.cost);
        commissionShare = single.line(
                "selling_commission_share",
                "Commission, share of costs of selling",
                ONE,
                when(harvest.yieldCosts.isPositive(), harvest.commissionCost.over(harvest.yieldCosts), none(ONE)));
        Formula isLost = plan.is(shocks.lost);
        Line withFruit = flow.line(
                "year_fruit_share",
                "Share of a full year's fruit, from year 3 on",
                ONE,
                when(isLost, none(ONE), when(plan.is(number(3, YEAR)), months.thirdYear(single), number(1, ONE))),
                "nothing in a year whose crop is lost; the third year may end the second crop year: " + BY_MONTH);
        planned = new Planned(
                earned(
                        flow,
                        "planned_receipts",
                        "Receipts before changes",
                        inYears("sold", months.sold, harvest.receipts.times(withFruit))
                                .times(growth.prices)),
                earned(
                        flow,
                        "planned_selling",
                        "Costs of selling before changes",
                        inYears("selling", months.selling, harvest.yieldCosts.times(withFruit))
                                .times(growth.costs)),
                earned(
                        flow,
                        "planned_labour",
                        "Hired labour before changes",
                        inYears("labour", months.labour, full.labour()).times(growth.costs)),
                earned(
                        flow,
                        "planned_energy",
                        "Heat and electricity before changes",
                        inYears("energy", months.energy, full.energy()).times(growth.costs)));
        changes = new Changes(single, shocks, commissionShare);
        receipts = flow.line("cash_receipts", "Receipts", MONEY, changes.receipts(planned.receipts()));
        selling = flow.line(
                "cash_yield_costs",
                "Packs, freight, commission, costs by the kg",
                MONEY,
                changes.selling(planned.selling()));
        labour = flow.line("cash_labour", "Hired labour", MONEY, changes.labour(planned.labour()));
        energy = flow.line("cash_energy", "Heat and electricity", MONEY, changes.energy(planned.energy()));
        running = flow.line(
                "cash_running",
                "Water, inputs, overhead",
                MONEY,
                inYears("running", months.running, full.running()).times(growth.costs),
                BY_MONTH);
        keptInMonth = single.line(
                "kept_in_month",
                "Repairs, insurance, property tax of a month",
                MONEY,
                owned.repairsTotal.plus(full.charges()).times(number(1, YEAR)).over(number(Months.IN_A_YEAR, ONE)),
                "spread evenly over the months: a choice of this project, no source");
        kept = flow.line(
                "cash_repairs",
                "Repairs, insurance, property tax",
                MONEY,
                plan.earning(owned.repairsTotal.plus(full.charges()).times(number(1, YEAR)))
                        .times(growth.costs));
        Uses uses = built.uses();
        Formula atStart = when(plan.number.isPositive(), none(MONEY), startUp.cash.plus(sum(uses.amount, uses.axis)));
        Line outlay = flow.line("cash_startup", "Start-up", MONEY, atStart);
        again = new BoughtAgain(
                b,
                flow,
                single,
                new BoughtAgain.Owned(first, yearly, built.uses()),
                new BoughtAgain.Over(plan, growth));
        Line net = flow.line(
                "cash_net",
                "Cash of the year",
                MONEY,
                receipts.minus(selling)
                        .minus(labour)
                        .minus(energy)
                        .minus(running)
                        .minus(kept)
                        .minus(again.parts)
                        .minus(again.plants)
                        .minus(outlay)
                        .minus(again.takingOut)
                        .plus(again.residual));
        Line costs = flow.line("cash_costs", "All costs, less what a sale brings", MONEY, receipts.minus(net));
        rates = new RateAxes(b);
        returns = results(b, answers, flow, discountRate, net);
        Line finance = entries.add(answers.entry("finance_rate", "Rate paid on what goes out, real", REAL)
                .from(0, 1));
        Line reinvestment = entries.add(answers.entry("reinvestment_rate", "Rate earned on what comes in, real", REAL)
                .from(0, 1));
        returns.modified(finance, reinvestment);
        returns.equivalentCost(costs, p.house().benchMetres);
    }

    private static Line earned(ScheduleBuilder s, String id, String label, Formula ofYear) {
        return s.line(id, label, MONEY, ofYear, BY_MONTH);
    }

    /** A year's amount: by month in the first two years, in full in later ones. */
    private Formula inYears(String id, Line byMonth, Formula full) {
        return plan.earning(months.ofYear(id, byMonth, full, plan.number));
    }

    private Returns results(BudgetBuilder b, ScheduleBuilder s, ScheduleBuilder flow, Line rate, Line net) {
        return new Returns(b, s, flow, rates, new CashStream("", "", net, rate, plan.horizon, plan.number));
    }
}
