package org.benchmetre.farm.crop;

import java.util.function.Function;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.layout.Planting;

/** Fruit and receipts of the chosen plant stock, put together; and the kinds of plant stock compared. */
public final class Crop {

    /** The lines that other sections read. */
    public final Harvest harvest;
    /** Fruit of each kind and of the chosen one. */
    public final Yield yield;
    /** The entry that moves the fruit of all crops: fruit per plant of the one crop, or the level of several. */
    public final Line fruitEntry;
    /** All prices of fruit against those entered. */
    public final Line priceLevel;
    /** The plants of the crops. */
    public final CropPlants chosen;

    /** Months of each kind. */
    final MonthPattern pattern;
    /** Marketable fruit by month. */
    final Picking picking;
    /** What a kilogram brings and leaves. */
    final Receipts receipts;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months the months
     * @param planting plants
     * @param chosen the plants of the crops
     * @param stands months in which each crop stands
     * @param lostDry what dry plants lose in kg/a, given the line of marketable fruit before that
     */
    public Crop(
            BudgetBuilder b,
            FarmEntries entries,
            Months months,
            Planting planting,
            CropPlants chosen,
            CropStands stands,
            Function<Line, Formula> lostDry) {
        this.chosen = chosen;
        yield = new Yield(b, entries, planting, chosen);
        pattern = new MonthPattern(b, months, chosen, yield, stands);
        picking = new Picking(b, entries, yield, pattern, lostDry.apply(yield.marketable));
        receipts = new Receipts(b, entries, months, pattern, picking);
        priceLevel = receipts.priceLevel;
        fruitEntry = FarmTable.CROPS.hasRows(b.structure()) ? yield.level : yield.perPlant;
        harvest = new Harvest(chosen.crops(), yield, pattern, picking, receipts);
    }

    /**
     * Adds the comparison of the kinds.
     *
     * @param b where its schedule is added
     * @param workPerKg work that one more kilogram takes, money/kg
     * @param yearlyCost cost of the plants a year, by kind
     * @param benchMetres bench metres
     */
    public void compare(BudgetBuilder b, Line workPerKg, Line yearlyCost, Line benchMetres) {
        new StockCompared(b, this, workPerKg, yearlyCost, benchMetres);
    }
}
