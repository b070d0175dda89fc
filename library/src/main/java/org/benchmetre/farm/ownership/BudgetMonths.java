package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.crop.Crops;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.crop.PlantOrder;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Cash by month of the calendar, in a full year in which the house is planted. Receipts, selling, labour, inputs, water and energy come
 * in their months, plants in that of planting; what has no month is spread evenly, parts that are used up within a year among it. Parts
 * that last, loans and tax are not here.
 */
public final class BudgetMonths {

    private static final Unit MONTHLY = Unit.parse("money/mo");
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Unit PER_VOLUME = Unit.parse("money/m3");

    /**
     * What has a month.
     *
     * @param harvest receipts and what selling takes
     * @param work labour paid in cash
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

    /**
     * Plants, which are paid in the month of planting.
     *
     * @param year the crop year
     * @param order plants as they are ordered
     * @param crops the crops they are for
     * @param life how long those of each crop last, in years
     */
    public record Plants(CropYear year, PlantOrder order, Crops crops, Line life) {}

    /** Water given in each month, m3/mo. */
    public final Line waterGiven;
    /** Water given in a year, m3/a. */
    public final Line waterOfYear;
    /** Receipts by month, money/mo. */
    public final Line receipts;
    /** Packs, freight, commission and other costs by the kg, by month, money/mo. */
    public final Line selling;
    /** Water, nutrient solution, drain and pumping by month, money/mo. */
    public final Line water;
    /** Cash that goes out by month, money/mo. */
    public final Line costs;
    /** What plants cost in a year in which the house is planted, money/a. */
    public final Line plantsOfYear;
    /** Cash that has no month, money/a. */
    public final Line evenOfYear;
    /** Cash that goes out in a year, money/a. */
    public final Line costsOfYear;
    /** Cash that is left in a year, money/a. */
    public final Line leftOfYear;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param months the months
     * @param p what has a month
     * @param plants paid in the month of planting
     * @param evenly cash of a year that has no month
     */
    public BudgetMonths(BudgetBuilder b, Months months, Parts p, Plants plants, Formula evenly) {
        ScheduleBuilder year = b.schedule(Sheets.BUDGET, "Cash of a year in which the house is planted");
        year.note("Before loans and tax. Parts that last stand with the cash of the years of the plan.");
        ScheduleBuilder s = b.schedule(Sheets.BUDGET, "Receipts and cash costs by month");
        s.note(
                "Irrigation maintenance, replanting, what is used up, repairs, insurance, property tax and overhead have no month: evenly.");
        Axis crops = plants.crops().axis;
        Line ofCrop = b.shared(Sheets.CROP, Tables.CROPS)
                .line(
                        "crop_plants_cash",
                        "Plants of a year, in cash",
                        YEARLY,
                        plants.order()
                                .costByCrop
                                .times(greater(
                                        number(1, PER_YEAR), number(1, ONE).over(plants.life()))),
                        "paid in full in the year of planting; those that last less than a year are bought as often as they "
                                + "wear out, all counted in the planting month: a choice of this project, no source");
        plantsOfYear = year.line("plants_cash_year", "Plants of a year", YEARLY, sum(ofCrop, crops));
        evenOfYear = year.line("cash_without_month", "Cash that has no month", YEARLY, evenly);
        waterOfYear = year.line(
                "water_given_chosen",
                "Water given, chosen system",
                p.water().year().unit(),
                p.water().year());
        Line perVolume = perVolume(year, p.water());
        waterGiven = s.line(
                "month_water_given",
                "Water given",
                p.water().byMonth().unit(),
                p.water().byMonth());
        Harvest h = p.harvest();
        receipts = s.line("budget_month_receipts", "Receipts", MONTHLY, h.receiptsByMonth);
        selling = s.line(
                "budget_month_selling",
                "Packs, freight, commission, other costs by the kg",
                MONTHLY,
                h.receiptsByMonth.minus(h.leftByMonth));
        water = s.line(
                "budget_month_water", "Water, nutrient solution, drain, pumping", MONTHLY, waterGiven.times(perVolume));
        Line bought = s.line(
                "budget_month_plants",
                "Plants",
                MONTHLY,
                monthOf(sumWhere(ofCrop, plants.crops().planting, plants.year().monthName, crops)));
        Formula even = monthOf(evenOfYear.over(number(Months.IN_A_YEAR, ONE)));
        costs = s.line(
                "budget_month_costs",
                "Cash out",
                MONTHLY,
                selling.plus(p.work())
                        .plus(p.inputs())
                        .plus(water)
                        .plus(p.energy())
                        .plus(bought)
                        .plus(even),
                "what has no month is spread evenly over the twelve: a choice of this project, no source");
        costsOfYear = year.line("cash_out_year", "Cash out in a year", YEARLY, yearOf(costs, months.axis));
        leftOfYear = year.line("cash_left_year", "Cash left in a year", YEARLY, h.receipts.minus(costsOfYear));
    }

    private Line perVolume(ScheduleBuilder s, Water water) {
        Line cost = s.line(
                "watering_cost_chosen",
                "Water, nutrient solution, drain and pumping, chosen system",
                water.cost().unit(),
                water.cost());
        return s.line(
                "watering_per_volume",
                "Water, nutrient solution, drain and pumping for a cubic metre given",
                PER_VOLUME,
                when(waterOfYear.isPositive(), cost.over(waterOfYear), none(PER_VOLUME)));
    }
}
