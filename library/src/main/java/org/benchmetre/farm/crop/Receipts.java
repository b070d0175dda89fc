package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Receipts and what selling takes: by channels, or all fruit at one price. Receipts are fruit times price, of a month
 * as of the year. Packs and freight go by the kilogram sent, commission by receipts, other costs by the kilogram. Plain arithmetic.
 */
public final class Receipts {

    private static final Unit MONTHLY = Unit.parse("money/mo");
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit KG = Unit.parse("kg/a");

    /** All prices of fruit against those entered. */
    public final Line priceLevel;
    /** Receipts by month, money/mo. */
    public final Line byMonth;
    /** Receipts a year, money/a. */
    public final Line total;
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
    /** What a marketable kilogram brings, on average, money/kg. */
    public final Line pricePerKg;
    /** What a marketable kilogram costs but for commission, on average, money/kg. */
    public final Line perKg;
    /** Commission, share of the average price. */
    public final Line commission;
    /** What one kilogram more or less brings and leaves before picking and packing. */
    public final FurtherKg further;
    /** How full channels pass fruit on. */
    public final Overflow overflow;
    /** What they pass on in the plan. */
    public final Overflow.Moved moved;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months the months
     * @param pattern shares of the months
     * @param picking marketable fruit
     */
    public Receipts(BudgetBuilder b, FarmEntries entries, Months months, MonthPattern pattern, Picking picking) {
        Selling selling = new Selling(
                b, entries, !b.structure().keys(Channels.FILE).keys().isEmpty());
        Channels c = new Channels(b, months);
        ChannelSales sales = new ChannelSales(b, entries, c, picking.firstGrade);
        selling.watch(b, c);
        overflow = new Overflow(b, selling, sales, pattern.months);
        moved = overflow.at("", "", picking.byMonth);
        WorthOfKg worth = new WorthOfKg(b, selling, sales, pattern, moved.money(), picking);
        further = new FurtherKg(b, selling, worth, overflow, moved, picking);
        new OverflowWords(b, c, moved.over(), pattern.months);
        priceLevel = selling.priceLevel;
        pricePerKg = worth.price;
        perKg = worth.costs;
        commission = worth.commission;
        Line fruit = picking.total;

        ScheduleBuilder m = b.shared(Sheets.CROP, Tables.FRUIT_BY_MONTH);
        byMonth = m.line(
                "month_receipts",
                "Receipts",
                MONTHLY,
                picking.byMonth.times(worth.byMonth).plus(further.movedByMonth.times(selling.priceLevel)));

        ScheduleBuilder y = b.schedule(Sheets.CROP, "Receipts of a year and what moves with yield");
        total = y.line("receipts_total", "Receipts", YEARLY, fruit.times(worth.price));
        firstGradeReceipts = y.line("receipts_first", "Receipts, first grade", YEARLY, fruit.times(worth.first));
        Line unsold = sales.ofYear(b, picking, pattern, selling.priceLevel, moved);
        y.line(
                "fruit_unsold",
                "Fruit not sold",
                KG,
                selling.byChannels(sum(unsold, c.axis)).plus(yearOf(moved.unsold(), pattern.months)));
        firstGradeKg = y.line("fruit_first", "Fruit of first grade", KG, fruit.times(picking.firstGrade));
        secondGradeKg = y.line("fruit_second", "Fruit of second grade", KG, fruit.minus(firstGradeKg));
        secondGradeReceipts = y.line(
                "receipts_second",
                "Receipts, second grade",
                YEARLY,
                when(secondGradeKg.isPositive(), total.minus(firstGradeReceipts), none(YEARLY)));
        packsCost = y.line("packs_cost", "Packs", YEARLY, fruit.times(worth.packs));
        channelFreight = y.line("channel_freight_total", "Freight", YEARLY, fruit.times(worth.freight));
        commissionCost = y.line("commission_cost", "Commission", YEARLY, fruit.times(worth.commissionPerKg));
        otherCosts = y.line(
                "other_yield_costs", "Other costs that move with yield", YEARLY, fruit.times(selling.otherCosts));
        yieldCosts = y.line(
                "yield_costs_total",
                "Packs, freight, commission and other costs by the kg",
                YEARLY,
                otherCosts.plus(packsCost).plus(channelFreight).plus(commissionCost),
                "what moves with yield");
    }
}
