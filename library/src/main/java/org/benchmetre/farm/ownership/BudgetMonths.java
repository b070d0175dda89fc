package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * Receipts and operating costs by month, as far as they have a month: selling, work, inputs, water and feed, energy. Plants, care of the
 * lines, repairs, interest, ownership and overhead stand with the year. Water costs follow the water given in each month.
 */
public final class BudgetMonths {

    private static final Unit MONTHLY = Unit.parse("money/mo");
    private static final Unit PER_VOLUME = Unit.parse("money/m3");

    /**
     * What has a month.
     *
     * @param harvest receipts and what selling takes
     * @param work cost of work
     * @param inputs inputs of work
     * @param energy heat and electricity
     * @param water water of the chosen way
     */
    public record Parts(Harvest harvest, Line work, Line inputs, Line energy, Water water) {}

    /**
     * Water of the chosen way.
     *
     * @param byMonth water given in each month
     * @param year water given in a year
     * @param cost what water, feed, drain and pumping cost in a year
     */
    public record Water(Formula byMonth, Formula year, Formula cost) {}

    /** Receipts by month, money/mo. */
    public final Line receipts;
    /** Costs that have a month, money/mo. */
    public final Line costs;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param months the months
     * @param p what has a month
     */
    public BudgetMonths(BudgetBuilder b, Months months, Parts p) {
        ScheduleBuilder rate = b.schedule(Sheets.BUDGET, "Water by the cubic metre");
        ScheduleBuilder s = b.schedule(Sheets.BUDGET, "Receipts and costs by month");
        s.note(
                "Costs that have a month. Plants, irrigation maintenance, repairs, interest, ownership and overhead stand with the year.");
        s.roomBelow(24);
        Line given = rate.line(
                "water_given_chosen",
                "Water given, chosen system",
                p.water().year().unit(),
                p.water().year());
        Line watering = rate.line(
                "watering_cost_chosen",
                "Water, nutrient solution, drain and pumping, chosen system",
                p.water().cost().unit(),
                p.water().cost());
        Line perVolume = rate.line(
                "watering_per_volume",
                "Water, nutrient solution, drain and pumping for a cubic metre given",
                PER_VOLUME,
                when(given.isPositive(), watering.over(given), none(PER_VOLUME)));
        Harvest h = p.harvest();
        receipts = s.line("budget_month_receipts", "Receipts", MONTHLY, h.receiptsByMonth);
        Line selling = s.line(
                "budget_month_selling",
                "Packs, freight, commission, other costs by the kg",
                MONTHLY,
                h.receiptsByMonth.minus(h.monthYield.times(h.netByMonth)));
        Line work = s.line("budget_month_work", "Labour", MONTHLY, p.work());
        Line inputs = s.line("budget_month_inputs", "Inputs", MONTHLY, p.inputs());
        Line water = s.line(
                "budget_month_water",
                "Water, nutrient solution, drain, pumping",
                MONTHLY,
                p.water().byMonth().times(perVolume));
        Line energy = s.line("budget_month_energy", "Heat and electricity", MONTHLY, p.energy());
        costs = s.line(
                "budget_month_costs",
                "Costs that have a month",
                MONTHLY,
                selling.plus(work).plus(inputs).plus(water).plus(energy));
        Line left = s.line("budget_month_left", "Receipts less costs of the month", MONTHLY, receipts.minus(costs));
        Line sum = s.declare(
                "budget_month_so_far", "Receipts less costs so far", MONTHLY, Kind.NUMBER, List.of(months.axis), "");
        b.define(sum, previous(sum, none(MONTHLY)).plus(left));
    }
}
