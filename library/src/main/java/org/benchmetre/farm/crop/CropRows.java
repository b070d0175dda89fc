package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.rule.AddToOne;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * What a scenario says of each crop of a year: rows of {@code crops.csv}, in which a blank cell stands for what the plan says; where that
 * file is missing the one crop of the plan.
 */
final class CropRows {

    private static final Unit GRAMS = Unit.parse("g/(plant crop)");
    private static final Unit MONTH = Unit.parse("mo");
    private static final Unit WEEK = Unit.parse("wk");
    private static final Bounds SHARE = new Bounds(0, true, 1, false);

    /**
     * What the plan says where a crop says nothing.
     *
     * @param stock kinds of plant stock
     * @param growth how each kind grows
     * @param choice key of the kind chosen
     * @param types types of plant
     * @param year month of planting, and the months of the calendar
     */
    record Plan(PlantStock stock, StockGrowth growth, Line choice, PlantTypes types, CropYear year) {}

    /** One row for each crop. */
    final Axis axis;
    /** Keys. */
    final Line key;
    /** Labels. */
    final Line label;
    /** Key of the plant stock. */
    final Line stock;
    /** Key of the plant type. */
    final Line plantType;
    /** Number of the month of planting, 1 to 12. */
    final Line plantingNumber;
    /** Number of the month of clearing out, 1 to 12. */
    final Line clearOutNumber;
    /** Share of the benches. */
    final Formula benchShare;
    /** Key of the crop whose plants stay for this one; empty where plants are new. */
    final Formula plantsOf;
    /** Share of fruit in each month, by crop, where crops say so. */
    final Optional<Line> monthShare;

    /** Fruit of a plant and crop, where crops say so, g/(plant crop). */
    final Optional<Line> grams;

    private CropRows(BudgetBuilder b, Months months, Plan plan, Columns c, ScheduleBuilder s) {
        axis = c.axis();
        label = c.names("crop_label", "Crop");
        key = c.keys("crop_key", "Key");
        Line ownStock = c.word(
                "stock", "crop_stock_entered", "Plant stock", TextForm.keyOf(plan.stock.key.id()), Blank.NOTHING);
        Line ownType = c.word("plant_type", "crop_type_entered", "Plant type", plan.types.form, Blank.NOTHING);
        Line planted = c.word("planting_month", "crop_planting_entered", "Planted in", CropYear.MONTH, Blank.NOTHING);
        Line cleared = c.word("clear_out_month", "crop_clear_out", "Cleared in", CropYear.MONTH, Blank.REFUSED);
        Line fruit = c.numbers(
                "yield_per_plant", "crop_yield_entered", "Fruit a plant", GRAMS, new Bounds(0, true, 10_000, false), 0);
        benchShare = c.numbers(
                "bench_share", "crop_bench_share", "Share of benches", ONE, new Bounds(0, false, 1, false), 1);
        Line before =
                c.word("plants_of", "crop_plants_of", "On the plants of", TextForm.keyOf(key.id()), Blank.NOTHING);
        ScheduleBuilder block = b.schedule(Sheets.CROP, "Crops: share of the fruit by month, as entered");
        Line shares = c.in(block).across(months.axis, "crop_share_entered", "Share of the crop's fruit", ONE, SHARE);
        b.rule(new AddToOne(shares, months.axis, "shares of the crop's fruit by month"));
        b.rule(new PlantsBegin(key, before));
        c.words("source", "crop_source", "Source");
        plantsOf = before;
        grams = Optional.of(fruit);
        monthShare = Optional.of(shares);
        stock = s.textLine("crop_stock", "Plant stock counted", orPlan(ownStock, plan.choice));
        plantType = s.textLine("crop_type", "Plant type counted", orPlan(ownType, plan.types.chosen));
        plantingNumber = s.line(
                "crop_planting_number",
                "Planted in, its number",
                ONE,
                whereFilled(when(planted.isFilled(), plan.year.numberOf(planted), plan.year.plantingNumber)));
        clearOutNumber = s.line(
                "crop_clear_out_number", "Cleared in, its number", ONE, whereFilled(plan.year.numberOf(cleared)));
    }

    private CropRows(Plan plan, ScheduleBuilder s) {
        axis = Axis.rows(FarmTable.CROPS.axis(), FarmTable.CROPS.title(), List.of("crop"), 0);
        label = s.textLine("crop_label", "Crop", single(text("The crop")));
        key = s.textLine("crop_key", "Key", single(text("crop")));
        benchShare = single(one());
        plantsOf = single(text(""));
        grams = Optional.empty();
        monthShare = Optional.empty();
        stock = s.textLine("crop_stock", "Plant stock", single(plan.choice));
        plantType = s.textLine("crop_type", "Plant type", single(plan.types.chosen));
        plantingNumber =
                s.line("crop_planting_number", "Planted in, its number", ONE, single(plan.year.plantingNumber));
        Line stands = s.line(
                "crop_months_standing",
                "Months it stands",
                ONE,
                lookup(plan.growth.benchWeeks, plan.stock.key, stock)
                        .counting(WEEK)
                        .in(MONTH)
                        .counting(ONE)
                        .wholeUp());
        Formula counted = plantingNumber.plus(stands);
        Line years = s.line(
                "crop_years_on",
                "Turns of the year until it is cleared",
                ONE,
                counted.minus(one()).over(number(Months.IN_A_YEAR, ONE)).wholeDown(),
                Months.COUNTING);
        clearOutNumber = s.line(
                "crop_clear_out_number",
                "Cleared in, its number",
                ONE,
                counted.minus(years.times(number(Months.IN_A_YEAR, ONE))),
                "whole months from planting on, rounded up: a choice of this project, no source");
    }

    /**
     * The crops of a plan.
     *
     * @param b where schedules are added; knows which crops there are
     * @param months the months
     * @param plan what counts where a crop says nothing
     */
    static CropRows of(BudgetBuilder b, Months months, Plan plan) {
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        CropRows rows = FarmTable.CROPS.hasRows(b.structure())
                ? new CropRows(b, months, plan, Columns.of(b, FarmTable.CROPS, s), s)
                : new CropRows(plan, s);
        b.nameRows(rows.axis, rows.label);
        return rows;
    }

    /** Fruit of a plant and crop, as entered, else that of the plan, g/(plant crop). */
    Formula gramsOr(Line perPlant) {
        return whereFilled(
                grams.<Formula>map(own -> when(own.isPositive(), own, perPlant)).orElse(perPlant));
    }

    /** Guards a formula against spare rows. */
    Formula whereFilled(Formula formula) {
        Formula along = formula.axes().contains(axis) ? formula : single(formula);
        return when(key.isFilled(), along, none(formula.unit()));
    }

    /** The same for every crop. */
    private Formula single(Formula formula) {
        return new Rows(axis, Collections.nCopies(axis.size(), formula));
    }

    private Formula orPlan(Line own, Line plan) {
        return when(key.isFilled(), when(own.isFilled(), own, plan), text(""));
    }
}
