package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.loans.Uses;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.takeoff.FirstCost;

/** What wears out and is bought again in each year of the plan, and what is left of all of it at the end, in today's money. */
public final class BoughtAgain {

    /** Parts and house by area bought again, money. */
    public final Line parts;
    /** Of that, what is used up within a year, money. */
    public final Line usedUp;
    /** Plants bought again, money. */
    public final Line plants;
    /** What a sale of what is left brings, money, in the last year. */
    public final Line residual;
    /** Taking out, money, in the last year. */
    public final Line takingOut;

    /**
     * What is owned.
     *
     * @param first first cost and what it is made of
     * @param yearly lives of parts, plants and house
     * @param uses what the start takes beside them
     */
    record Owned(FirstCost first, YearlyCost yearly, Uses uses) {}

    /** When, and at which prices. */
    record Over(PlanYears plan, Growth growth) {}

    BoughtAgain(BudgetBuilder b, ScheduleBuilder flow, ScheduleBuilder single, Owned owned, Over over) {
        YearlyCost yearly = owned.yearly();
        FirstCost first = owned.first();
        Axis materials = first.parts.materials().axis;
        Line costs = over.growth().costs;
        Wear w = new Wear(over.plan());
        PartsOverYears worn = new PartsOverYears(b, first, yearly.owned, w);
        Line left = single.line(
                "residual_value",
                "Residual value",
                MONEY,
                sum(worn.residual, materials)
                        .plus(w.residual(yearly.house.life, yearly.house.cost, yearly.house.resale)),
                Wear.LEFT);
        Line out = single.line("taking_out_cost", "Taking out at the end", MONEY, sum(worn.takingOut, materials));
        parts = flow.line(
                "cash_replacements",
                "Parts and house by area bought again",
                MONEY,
                sum(worn.replaced, materials)
                        .plus(w.ended(yearly.house.life).times(yearly.house.cost))
                        .times(costs),
                Wear.AGAIN);
        usedUp = flow.line(
                "cash_used_up",
                "Of parts bought again, used up within a year",
                MONEY,
                sumProduct(worn.replaced, yearly.owned.isUsedUp, materials).times(costs));
        Line byCrop = b.schedule(Sheets.CASH_FLOW, "Plants bought again, by crop and year")
                .line(
                        "crop_plants_replaced",
                        "Plants bought again",
                        MONEY,
                        w.ended(yearly.plants.life).times(first.order.costByCrop),
                        Wear.AGAIN);
        Axis crops = first.order.grown.crops().axis;
        plants = flow.line(
                "cash_plants", "Plants bought again", MONEY, sum(byCrop, crops).times(costs));
        residual = flow.line(
                "cash_residual",
                "Residual value",
                MONEY,
                w.atTheEnd(left).times(costs).plus(w.atTheEnd(owned.uses().ofKind(FundKind.LAND))),
                "land brings what it cost: our choice, no source");
        takingOut = flow.line(
                "cash_taking_out",
                "Taking out at the end",
                MONEY,
                w.atTheEnd(out).times(costs));
    }
}
