package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.takeoff.FirstCost;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * Parts over the years of the plan: what is bought again with its labour, what a sale brings at the end, and what taking out takes
 * then: hours at the wage of installing, and disposal, which is a salvage below zero. Plain sums of what stands.
 */
final class PartsOverYears {

    /** What is bought again, money, by part and year. */
    final Line replaced;
    /** What a sale brings at the end, money, by part. */
    final Line residual;
    /** Taking out at the end, money, by part. */
    final Line takingOut;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param first first cost, what it is made of and what was chosen
     * @param owned what parts cost in a year
     * @param w what wears out over the plan
     */
    PartsOverYears(BudgetBuilder b, FirstCost first, PartsYearly owned, Wear w) {
        ScheduleBuilder wear =
                b.schedule(Sheets.CASH_FLOW, "Parts: what one replacement costs, and the end of the plan");
        Materials m = first.parts.materials();
        TakeOff t = first.parts.takeOff();
        Formula units = t.amount.times(t.rate);
        Line labour = wear.line(
                "material_change_labour",
                "Labour of one replacement",
                MONEY,
                units.times(m.installHours.plus(m.removeHours)).times(first.chosen.wage()));
        Line salvage =
                wear.line("material_salvage_value", "Salvage, all of it", MONEY, t.quantity.times(owned.unitSalvage));
        Line change = wear.line(
                "material_change_cost",
                "One replacement, salvage taken off",
                MONEY,
                t.exact.plus(labour).minus(salvage));
        residual = wear.line(
                "material_residual",
                "Residual value",
                MONEY,
                greater(salvage, none(MONEY)).plus(w.residual(owned.life, t.exact.minus(salvage), m.resale)),
                Wear.LEFT);
        takingOut = wear.line(
                "material_taking_out",
                "Taking out at the end",
                MONEY,
                units.times(m.removeHours)
                        .times(first.chosen.wage())
                        .plus(greater(none(MONEY).minus(salvage), none(MONEY))),
                "what stands at the end is taken out, and paid for where its salvage is below zero: a choice of this project, no source");
        replaced = b.schedule(Sheets.CASH_FLOW, "Parts replaced, by year")
                .line(
                        "material_replaced",
                        "Cost of replacements",
                        MONEY,
                        change.times(w.ended(owned.life)),
                        Wear.AGAIN);
    }
}
