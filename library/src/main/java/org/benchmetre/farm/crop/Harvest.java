package org.benchmetre.farm.crop;

import org.benchmetre.budget.Line;

/** Fruit, receipts and what moves with yield: the lines that other sections read. Kilograms are marketable kilograms a year. */
public final class Harvest {

    /** Crops in a year. */
    public final Line cropsPerYear;
    /** Marketable fruit a year. */
    public final Line yield;
    /** Marketable fruit by month. */
    public final Line monthYield;
    /** Share of the plan's yield per plant that becomes marketable fruit, but for dry plants. */
    public final Line yieldShare;
    /** Share of marketable fruit that dry plants leave. */
    public final Line kept;
    /** All costs per kilogram but commission. */
    public final Line perKg;
    /** Commission, share of the average price. */
    public final Line commission;
    /** What a further marketable kilogram leaves. */
    public final Line netPerKg;
    /** What a further kilogram leaves by month, before picking and packing. */
    public final Line netByMonth;
    /** Receipts a year. */
    public final Line receipts;
    /** Receipts by month. */
    public final Line receiptsByMonth;
    /** Receipts of first grade, a year. */
    public final Line firstGradeReceipts;
    /** Receipts of second grade, a year. */
    public final Line secondGradeReceipts;
    /** Fruit of first grade, a year. */
    public final Line firstGradeKg;
    /** Fruit of second grade, a year. */
    public final Line secondGradeKg;
    /** Packs, a year. */
    public final Line packsCost;
    /** Commission, a year. */
    public final Line commissionCost;
    /** Freight of channels, a year. */
    public final Line channelFreight;
    /** Picking, packing and other costs by the kilogram, a year. */
    public final Line otherCosts;
    /** What moves with yield, a year. */
    public final Line yieldCosts;
    /** Yield of the first year against a full one. */
    public final Line firstYear;
    /** Yield of the second year against a full one. */
    public final Line secondYear;

    /**
     * Gathers the lines.
     *
     * @param growth crops a year
     * @param y yield
     * @param picking fruit by month
     * @param r receipts and costs
     */
    public Harvest(StockGrowth growth, Yield y, Picking picking, Receipts r) {
        cropsPerYear = growth.cropsPerYear;
        yield = picking.total;
        monthYield = picking.byMonth;
        yieldShare = y.share;
        kept = picking.kept;
        perKg = r.perKg;
        commission = r.commission;
        netPerKg = r.netPerKg;
        netByMonth = r.netByMonth;
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
