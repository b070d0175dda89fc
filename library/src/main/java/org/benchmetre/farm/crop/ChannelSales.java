package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What each channel sells, brings and costs. Fruit sent is the channel's share of each month's marketable fruit; what is not sold
 * brings nothing but was packed and sent; first and second grade have their own price. Packs and freight go by the kilogram sent,
 * commission by receipts. Exact packs. Plain arithmetic.
 */
public final class ChannelSales {

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit MONTHLY = Unit.parse("money/mo");
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit KG_MONTH = Unit.parse("kg/mo");
    private static final Unit KG_YEAR = Unit.parse("kg/a");

    /** What a marketable kilogram of the farm brings through each channel, money/kg, by month. */
    public final Line partOfKg;
    /** First grade in what a marketable kilogram of the farm brings through each channel, money/kg, by month. */
    public final Line firstOfKg;
    /** Receipts of first grade by channel and month, money/mo. */
    public final Line first;
    /** Receipts of second grade by channel and month, money/mo. */
    public final Line second;
    /** Commission by channel, money/a. */
    public final Line commission;
    /** Packs by channel, money/a. */
    public final Line packs;
    /** Freight by channel, money/a. */
    public final Line freight;
    /** Packs for a kilogram sent through each channel, money/kg. */
    public final Line packsPerKg;
    /** Fruit not sold by channel, kg/a. */
    public final Line unsold;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param c channels
     * @param picking marketable fruit
     * @param months the months
     * @param priceLevel all prices of fruit against those entered
     */
    public ChannelSales(
            BudgetBuilder b, FarmEntries entries, Channels c, Picking picking, Axis months, Line priceLevel) {
        Line usual = entries.add(b.schedule(Sheets.CROP, "Second grade")
                .entry("second_grade_price", "Second grade, share of first, where a channel has no price", ONE)
                .from(0, 1));
        ScheduleBuilder table = b.schedule(Sheets.CROP, "Channels: what a kg sent is worth");
        Line grade = table.line(
                "channel_second_counted",
                "Second grade counted, share of price",
                ONE,
                when(c.secondPrice.isPositive(), c.secondPrice, usual));
        Line sold = table.line("channel_sold_share", "Sold, share", ONE, one().minus(c.shrink));
        packsPerKg = table.line(
                "channel_pack_per_kg",
                "Packs for a kg",
                PER_KG,
                when(c.packSize.isPositive(), c.packCost.over(c.packSize), none(PER_KG)));

        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Channels by month: fruit, prices and receipts");
        Line kg = blocks.line("channel_month_kg", "Fruit sent", KG_MONTH, c.share.times(picking.byMonth));
        Formula priced = c.price.times(priceLevel).times(sold);
        Line firstWorth = blocks.line(
                "channel_first_worth", "First grade in a kg sent", PER_KG, priced.times(picking.firstGrade));
        Line secondWorth = blocks.line(
                "channel_second_worth",
                "Second grade in a kg sent",
                PER_KG,
                priced.times(grade).times(one().minus(picking.firstGrade)));
        partOfKg = blocks.line(
                "channel_part_of_kg",
                "Part of what a kg of all fruit brings",
                PER_KG,
                firstWorth.plus(secondWorth).times(c.share));
        firstOfKg = blocks.line(
                "channel_first_of_kg",
                "First grade in what a kg of all fruit brings",
                PER_KG,
                firstWorth.times(c.share));
        first = blocks.line("channel_month_first", "Receipts, first grade", MONTHLY, kg.times(firstWorth));
        second = blocks.line("channel_month_second", "Receipts, second grade", MONTHLY, kg.times(secondWorth));
        Line receipts = blocks.line("channel_month_receipts", "Receipts", MONTHLY, first.plus(second));

        ScheduleBuilder year = b.schedule(Sheets.CROP, "Channels: a year");
        Line sent = year.line("channel_kg", "Fruit sent", KG_YEAR, yearOf(kg, months));
        unsold = year.line("channel_unsold", "Not sold", KG_YEAR, sent.times(c.shrink));
        year.line("channel_first", "First grade", YEARLY, yearOf(first, months));
        year.line("channel_second", "Second grade", YEARLY, yearOf(second, months));
        Line brought = year.line("channel_receipts", "Receipts", YEARLY, yearOf(receipts, months));
        commission = year.line("channel_commission_cost", "Commission", YEARLY, brought.times(c.commission));
        Unit packCount = Unit.parse("pack/a");
        year.line(
                "channel_packs",
                "Packs",
                packCount,
                when(c.packSize.isPositive(), sent.over(c.packSize), none(packCount)));
        packs = year.line("channel_packs_cost", "Cost of packs", YEARLY, sent.times(packsPerKg));
        freight = year.line("channel_freight_cost", "Freight", YEARLY, sent.times(c.freight));
        year.line(
                "channel_left",
                "Receipts less costs of selling",
                YEARLY,
                brought.minus(commission).minus(packs).minus(freight));
        unpriced(b, c, kg, months);
    }

    private static void unpriced(BudgetBuilder b, Channels c, Line kg, Axis months) {
        Line without = b.schedule(Sheets.CROP, "Channels by month: fruit without a price")
                .line(
                        "channel_month_unpriced",
                        "Fruit sent without a price",
                        KG_MONTH,
                        when(c.price.isPositive(), none(KG_MONTH), kg));
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Channels: is all fruit priced?");
        Line all = s.line("channel_unpriced", "Fruit sent without a price", KG_YEAR, yearOf(without, months));
        s.warning(
                "channel_price_warning",
                "Prices",
                all.isPositive(),
                "This channel has no price in a month with fruit: give price or the month's own, such as price_dec.");
    }
}
