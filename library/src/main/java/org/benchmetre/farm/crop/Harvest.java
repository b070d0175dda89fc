package org.benchmetre.farm.crop;

import org.benchmetre.budget.Line;

/** Fruit, receipts and what selling takes: the lines that other sections read. Kilograms are marketable kilograms a year. */
public final class Harvest {

    /** Crops in a year, crop/a. */
    public final Line cropsPerYear;
    /** Marketable fruit a year, kg/a. */
    public final Line yield;
    /** Marketable fruit by month, kg/mo. */
    public final Line monthYield;
    /** Share of the crop's fruit in each month. */
    public final Line monthShare;
    /** Fruit of a plant and crop as told, average over the crops, g/(plant crop). */
    public final Line planned;
    /** Marketable fruit before fruit lost to dry plants, kg/a. */
    public final Line beforeDry;
    /** Fruit picked for each marketable kilogram. */
    public final Line pickedPerKg;
    /** Share of marketable fruit that dry plants leave. */
    public final Line kept;
    /** What a marketable kilogram brings, on average, money/kg. */
    public final Line pricePerKg;
    /** All costs per kilogram but commission, on average, money/kg. */
    public final Line perKg;
    /** Commission, share of the average price. */
    public final Line commission;
    /** What a further marketable kilogram brings, money/kg. */
    public final Line furtherPrice;
    /** All costs of it but commission, money/kg. */
    public final Line furtherCosts;
    /** Commission on it, share of its price. */
    public final Line furtherCommission;
    /** What it leaves before picking and packing, money/kg. */
    public final Line netPerKg;
    /** What the fruit of a year leaves above as many further kilograms, since the first ones sell better, money/a. */
    public final Line aboveMargin;
    /** Receipts less what selling takes, by month, money/mo. */
    public final Line leftByMonth;
    /** How full channels pass fruit on. */
    public final Overflow overflow;
    /** What they pass on, money/a. */
    public final Overflow.Money moved;
    /** Receipts a year, money/a. */
    public final Line receipts;
    /** Receipts by month, money/mo. */
    public final Line receiptsByMonth;
    /** Receipts of first grade, money/a. */
    public final Line firstGradeReceipts;
    /** Receipts of second grade, money/a. */
    public final Line secondGradeReceipts;
    /** Fruit of first grade, kg/a. */
    public final Line firstGradeKg;
    /** Fruit of second grade, kg/a. */
    public final Line secondGradeKg;
    /** Packs, money/a. */
    public final Line packsCost;
    /** Commission, money/a. */
    public final Line commissionCost;
    /** Freight of channels, money/a. */
    public final Line channelFreight;
    /** Other costs by the kilogram, money/a. */
    public final Line otherCosts;
    /** Packs, freight, commission and other costs by the kilogram, money/a. */
    public final Line yieldCosts;
    /** Yield of the first year against a full one. */
    public final Line firstYear;
    /** Yield of the second year against a full one. */
    public final Line secondYear;

    /**
     * Gathers the lines.
     *
     * @param crops crops a year
     * @param y yield
     * @param pattern shares of the months
     * @param picking fruit by month
     * @param r receipts and costs
     */
    public Harvest(Crops crops, Yield y, MonthPattern pattern, Picking picking, Receipts r) {
        cropsPerYear = crops.total;
        yield = picking.total;
        monthYield = picking.byMonth;
        monthShare = pattern.chosen;
        planned = y.planned;
        beforeDry = y.marketable;
        pickedPerKg = y.pickedPerKg;
        kept = picking.kept;
        pricePerKg = r.pricePerKg;
        perKg = r.perKg;
        commission = r.commission;
        furtherPrice = r.further.price;
        furtherCosts = r.further.costs;
        furtherCommission = r.further.commission;
        netPerKg = r.further.net;
        aboveMargin = r.further.aboveMargin;
        leftByMonth = r.further.leftByMonth;
        overflow = r.overflow;
        moved = r.moved.money();
        receipts = r.total;
        receiptsByMonth = r.byMonth;
        firstGradeReceipts = r.firstGradeReceipts;
        secondGradeReceipts = r.secondGradeReceipts;
        firstGradeKg = r.firstGradeKg;
        secondGradeKg = r.secondGradeKg;
        packsCost = r.packsCost;
        commissionCost = r.commissionCost;
        channelFreight = r.channelFreight;
        otherCosts = r.otherCosts;
        yieldCosts = r.yieldCosts;
        firstYear = y.firstYear;
        secondYear = y.secondYear;
    }
}
