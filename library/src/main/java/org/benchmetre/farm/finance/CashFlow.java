package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
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
import org.benchmetre.budget.Structure;
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
import org.benchmetre.scenario.EntryRun;
import org.benchmetre.scenario.RunLength;

/**
 * Yearly cash over the plan, in today's money, before loans and tax. Year 0 is the start, in whole packs and plants; each later year earns
 * receipts and pays for selling, for running, for repairs, insurance, property tax, what wears out and what is used up; the last one
 * takes in what a sale would bring and pays for taking out. The first two years are sums of their months. No capital recovery and no
 * interest: the rate only discounts. American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook,
 * 2000, for keeping cash apart from cost.
 */
public final class CashFlow {

    /** Longest plan, in years. The plan's own length is an entry up to this. */
    public static final int LIMIT = 30;

    private static final Unit YEAR = Unit.parse("a");
    private static final String LENGTH = "plan_years";

    /** The years that a plan has room for: its own and some to spare, so that it may be lengthened. */
    public static final EntryRun YEARS = new EntryRun(new RunLength.Factor(LENGTH, YEAR, 10), 1, 1, 6, LIMIT);

    private static final Unit REAL = Unit.parse("real/a");
    private static final String BY_MONTH =
            "the first two years by their months, later ones in full: a choice of this project, no source";

    /** What the start takes. */
    public final StartUp startUp;
    /** What may go wrong. */
    public final Shocks shocks;
    /** How prices move. */
    public final Growth growth;
    /** Years of the plan, a. */
    public final Line horizon;
    /** Number of each year, a; 0 is the start. */
    public final Line year;
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
    /** Parts and house bought again, money. */
    public final Line parts;
    /** Plants bought again, money. */
    public final Line plants;
    /** What a sale of what is left brings, money, in the last year. */
    public final Line residual;
    /** Taking out, money, in the last year. */
    public final Line takingOut;
    /** The years, from the start on. */
    public final Axis years;

    /** Commission, share of the costs of selling. */
    public final Line commissionShare;
    /** Repairs, insurance and property tax of a month, money. */
    public final Line keptInMonth;
    /** Marks the last year of the plan. */
    public final Line lastTag;
    /** Rate at which cash before finance is discounted, real/a. */
    public final Line discountRate;
    /** 1 in the last year of the plan, else 0. */
    public final Line isLast;
    /** 1 in the years of the plan, 0 after them. */
    public final Line inPlan;
    /** Of parts bought again, what is used up within a year, money. */
    public final Line usedUp;
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

        int room = room(b.structure());
        years = Axis.periods(
                "year",
                "Year",
                IntStream.rangeClosed(0, room).mapToObj(Integer::toString).toList(),
                IntStream.rangeClosed(0, room).mapToObj(n -> "Year " + n).toList());
        horizon = entries.add(
                answers.entry(LENGTH, "Years of the plan", YEAR).from(1, room).whole());
        shocks = new Shocks(b, entries, room);
        months = new MonthsBase(
                b, new PlanMonths(b, entries, byMonth.crop()), shocks, harvest, byMonth.flows(), byMonth.selling());
        year = flow.declare("year_number", "Year", YEAR, Kind.NUMBER, List.of(years), "year 0 is the start");
        b.define(year, previous(year, number(-1, YEAR)).plus(number(1, YEAR)));
        growth = new Growth(b, entries, years, year);
        inPlan = flow.line(
                "year_in_plan", "In the plan, 1 or 0", ONE, when(year.exceeds(horizon), none(ONE), number(1, ONE)));
        Wear w = new Wear(flow, year, horizon);
        isLast = w.last;
        lastTag = flow.textLine("year_last_mark", "Last", when(isLast.isPositive(), text(SeasonCash.MARK), text("")));
        discountRate = owned.rates.rate();
        PartsOverYears over = new PartsOverYears(b, first, owned, w);

        startUp = new StartUp(b, single, first, yearly.house.cost, yearly.contingency.cost);
        commissionShare = single.line(
                "selling_commission_share",
                "Commission, share of costs of selling",
                ONE,
                when(harvest.yieldCosts.isPositive(), harvest.commissionCost.over(harvest.yieldCosts), none(ONE)));
        Line residualValue = single.line(
                "residual_value",
                "Residual value",
                MONEY,
                sum(over.residual, p.materials().axis)
                        .plus(w.residual(yearly.house.life, yearly.house.cost, yearly.house.resale)),
                Wear.LEFT);
        Line takingOutCost =
                single.line("taking_out_cost", "Taking out at the end", MONEY, sum(over.takingOut, p.materials().axis));

        Formula isLost = isYear(shocks.lost);
        Line withFruit = flow.line(
                "year_fruit_share",
                "Share of a full year's fruit, from year 3 on",
                ONE,
                when(isLost, none(ONE), when(isYear(number(3, YEAR)), months.thirdYear(single), number(1, ONE))),
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
                earning(owned.repairsTotal.plus(full.charges()).times(number(1, YEAR)))
                        .times(growth.costs));
        parts = flow.line(
                "cash_replacements",
                "Parts and house by area bought again",
                MONEY,
                sum(over.replaced, p.materials().axis)
                        .plus(w.ended(yearly.house.life).times(yearly.house.cost))
                        .times(growth.costs),
                Wear.AGAIN);
        usedUp = flow.line(
                "cash_used_up",
                "Of parts bought again, used up within a year",
                MONEY,
                sumProduct(over.replaced, owned.isUsedUp, p.materials().axis).times(growth.costs));
        Axis crops = first.order.grown.crops().axis;
        Line again = b.schedule(Sheets.CASH_FLOW, "Plants bought again, by crop and year")
                .line(
                        "crop_plants_replaced",
                        "Plants bought again",
                        MONEY,
                        w.ended(yearly.plants.life).times(first.order.costByCrop),
                        Wear.AGAIN);
        plants = flow.line(
                "cash_plants", "Plants bought again", MONEY, sum(again, crops).times(growth.costs));
        Uses uses = built.uses();
        Formula atStart = when(year.isPositive(), none(MONEY), startUp.cash.plus(sum(uses.amount, uses.axis)));
        Line outlay = flow.line("cash_startup", "Start-up", MONEY, atStart);
        residual = flow.line(
                "cash_residual",
                "Residual value",
                MONEY,
                w.atTheEnd(residualValue).times(growth.costs).plus(w.atTheEnd(uses.ofKind(Uses.LAND))),
                "land brings what it cost: our choice, no source");
        takingOut = flow.line(
                "cash_taking_out",
                "Taking out at the end",
                MONEY,
                w.atTheEnd(takingOutCost).times(growth.costs));
        Line net = flow.line(
                "cash_net",
                "Cash of the year",
                MONEY,
                receipts.minus(selling)
                        .minus(labour)
                        .minus(energy)
                        .minus(running)
                        .minus(kept)
                        .minus(parts)
                        .minus(plants)
                        .minus(outlay)
                        .minus(takingOut)
                        .plus(residual));
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

    /**
     * How many years a structure has room for.
     *
     * @param structure of a scenario, or of one that says nothing
     * @return at most {@link #LIMIT}
     */
    public static int room(Structure structure) {
        int asked = structure.keys(EntryRun.lengthOf(LENGTH)).keys().size();
        return asked == 0 ? LIMIT : asked;
    }

    private static Line earned(ScheduleBuilder s, String id, String label, Formula ofYear) {
        return s.line(id, label, MONEY, ofYear, BY_MONTH);
    }

    /** A year's amount: by month in the first two years, in full in later ones. */
    private Formula inYears(String id, Line byMonth, Formula full) {
        return earning(months.ofYear(id, byMonth, full, year));
    }

    private Formula isYear(Formula wanted) {
        return and(not(year.exceeds(wanted)), not(wanted.exceeds(year)));
    }

    private Formula earning(Formula money) {
        return when(and(year.isPositive(), inPlan.isPositive()), money, none(MONEY));
    }

    private Returns results(BudgetBuilder b, ScheduleBuilder s, ScheduleBuilder flow, Line rate, Line net) {
        return new Returns(b, s, flow, rates, new CashStream("", "", net, rate, horizon, year));
    }
}
