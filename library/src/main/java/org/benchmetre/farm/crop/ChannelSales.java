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
import org.benchmetre.farm.input.Tables;

/**
 * What each channel sells, brings and costs. Fruit sent is the channel's share of marketable fruit; what is not sold brings nothing but
 * was packed and sent; first and second grade have their own price. Packs and freight go by the kilogram sent, commission by receipts.
 * Exact packs.
 *
 * <pre>
 * w1 = s (1 - u) g     w = w1 + s (1 - u) r (1 - g)
 * w1, w  first grade sold, and all that is sold counted as first grade, in a kilogram of all fruit     s  share of fruit sent
 * u  share not sold     g  share of first grade     r  price of second grade against first
 * </pre>
 *
 * A channel brings fruit times price times weight. What other channels pass on to it, and what it passes on itself, comes on top
 * ({@link Overflow}). Plain arithmetic.
 */
public final class ChannelSales {

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit KG_MONTH = Unit.parse("kg/mo");
    private static final Unit KG_YEAR = Unit.parse("kg/a");

    /** First grade that a channel sells of a kilogram of all fruit. */
    public final Line firstWeight;
    /** All that a channel sells of a kilogram of all fruit, counted as first grade. */
    public final Line weight;
    /** Commission on that, counted as first grade. */
    public final Line commissionWeight;
    /** Packs for a kilogram sent through each channel, money/kg. */
    public final Line packsPerKg;
    /** First grade sold of a kilogram sent through each channel. */
    final Line sentFirst;
    /** All that is sold of a kilogram sent through each channel, counted as first grade. */
    final Line sentWeight;
    /** Commission on that, counted as first grade. */
    final Line sentCommission;
    /** The channels. */
    final Channels c;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param c channels
     * @param firstGrade share of first grade
     */
    public ChannelSales(BudgetBuilder b, FarmEntries entries, Channels c, Line firstGrade) {
        this.c = c;
        Line usual = entries.add(b.schedule(Sheets.CROP, "Second grade")
                .entry("second_grade_price", "Price of second grade, share of that of first", ONE)
                .from(0, 1));
        ScheduleBuilder table = b.shared(Sheets.CROP, Tables.CHANNELS);
        Formula grade = when(c.secondPrice.isPositive(), c.secondPrice, usual);
        Formula kept = one().minus(c.shrink);
        Formula sold = c.share.times(kept);
        packsPerKg = table.line(
                "channel_pack_per_kg",
                "Packs for a kg",
                PER_KG,
                when(c.packSize.isPositive(), c.packCost.over(c.packSize), none(PER_KG)));
        firstWeight = table.line("channel_first_weight", "First grade sold", ONE, sold.times(firstGrade));
        weight = table.line(
                "channel_weight",
                "All that is sold, counted as first grade",
                ONE,
                firstWeight.plus(sold.times(grade).times(one().minus(firstGrade))),
                "second grade by its share of the price");
        sentFirst = table.line("channel_sent_first", "First grade sold of a kg sent", ONE, kept.times(firstGrade));
        sentWeight = table.line(
                "channel_sent_weight",
                "All that is sold of a kg sent, counted as first grade",
                ONE,
                sentFirst.plus(kept.times(grade).times(one().minus(firstGrade))));
        sentCommission = table.line(
                "channel_sent_commission", "Commission on it, of a kg sent", ONE, sentWeight.times(c.commission));
        commissionWeight = table.line(
                "channel_commission_weight",
                "Commission on it, counted as first grade",
                ONE,
                weight.times(c.commission));
    }

    /**
     * What each channel sells and brings in a year.
     *
     * @param b where schedules are added
     * @param picking marketable fruit
     * @param pattern shares of the months
     * @param priceLevel all prices of fruit against those entered
     * @param moved what channels pass on
     * @return fruit that a channel was sent and did not sell, kg/a
     */
    Line ofYear(BudgetBuilder b, Picking picking, MonthPattern pattern, Line priceLevel, Overflow.Moved moved) {
        ScheduleBuilder year = b.shared(Sheets.CROP, Tables.CHANNELS);
        Line sent = year.line(
                "channel_kg",
                "Fruit sent",
                KG_YEAR,
                c.share.times(picking.total).plus(moved.kg()));
        Line price = year.line(
                "channel_price_average",
                "Price of first grade, average over the fruit of the months, as entered",
                PER_KG,
                pattern.average(c.price));
        Formula atPrice = price.times(priceLevel).times(picking.total);
        Formula more = moved.atPrice().times(priceLevel);
        Line first = year.line(
                "channel_first",
                "First grade",
                YEARLY,
                atPrice.times(firstWeight).plus(more.times(sentFirst)));
        Line second = year.line(
                "channel_second",
                "Second grade",
                YEARLY,
                atPrice.times(weight.minus(firstWeight)).plus(more.times(sentWeight.minus(sentFirst))));
        Line brought = year.line("channel_receipts", "Receipts", YEARLY, first.plus(second));
        Line commission = year.line("channel_commission_cost", "Commission", YEARLY, brought.times(c.commission));
        Unit packCount = Unit.parse("pack/a");
        year.line(
                "channel_packs",
                "Packs",
                packCount,
                when(c.packSize.isPositive(), sent.over(c.packSize), none(packCount)));
        Line packs = year.line("channel_packs_cost", "Cost of packs", YEARLY, sent.times(packsPerKg));
        Line freight = year.line("channel_freight_cost", "Freight", YEARLY, sent.times(c.freight));
        year.line(
                "channel_left",
                "Receipts less costs of selling",
                YEARLY,
                brought.minus(commission).minus(packs).minus(freight));
        unpriced(b, picking.byMonth, pattern.months);
        return year.line("channel_unsold", "Not sold", KG_YEAR, sent.times(c.shrink));
    }

    private void unpriced(BudgetBuilder b, Line fruit, Axis months) {
        Line without = b.schedule(Sheets.CROP, "Channels by month: fruit without a price")
                .line(
                        "channel_month_unpriced",
                        "Fruit sent without a price",
                        KG_MONTH,
                        when(c.price.isPositive(), none(KG_MONTH), c.share.times(fruit)));
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CHANNELS);
        Line all = s.line("channel_unpriced", "Fruit sent without a price", KG_YEAR, yearOf(without, months));
        s.warning(
                "channel_price_warning",
                "Prices",
                all.isPositive(),
                "This channel has no price in a month with fruit: give price or the month's own, such as price_dec.");
    }
}
