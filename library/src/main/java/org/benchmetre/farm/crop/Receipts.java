package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.INVENTED;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Table;

/**
 * Receipts and what moves with yield: by channels, or all fruit at one price. Each month's receipts are fruit times price; the year
 * is their sum. What a further kilogram leaves is its price less commission, packs, freight and other costs per kilogram, averaged
 * over the months by their share of fruit. Plain arithmetic.
 */
public final class Receipts {

    private static final String CHANNELS = "channels";
    private static final String ONE_PRICE = "one_price";
    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit MONTHLY = Unit.parse("money/mo");
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit KG = Unit.parse("kg/a");

    /** All prices of fruit against those entered. */
    public final Line priceLevel;
    /** Receipts by month. */
    public final Line byMonth;
    /** Receipts a year. */
    public final Line total;
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
    /** Picking, packing and other costs per kilogram, a year. */
    public final Line otherCosts;
    /** All that moves with yield, a year. */
    public final Line yieldCosts;
    /** What a marketable kilogram brings, on average. */
    public final Line price;
    /** What a marketable kilogram costs but for commission. */
    public final Line perKg;
    /** Commission, share of the average price. */
    public final Line commission;
    /** What a further marketable kilogram leaves. */
    public final Line netPerKg;
    /** What a further marketable kilogram leaves, by month. */
    public final Line netByMonth;

    private final Formula onePrice;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param table {@code channels.csv}; it may be absent
     * @param months the months
     * @param pattern shares of the months
     * @param picking marketable fruit
     * @param faults where faults are collected
     */
    public Receipts(
            BudgetBuilder b,
            FarmEntries entries,
            Table table,
            Months months,
            MonthPattern pattern,
            Picking picking,
            Faults faults) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Prices and what moves with yield");
        String usual = table.rows().isEmpty() ? ONE_PRICE : CHANNELS;
        Line method = entries.add(s.textEntry("receipts_by", "Receipts by channels or one_price")
                .oneOf(usual, "channels where channels.csv has rows", List.of(CHANNELS, ONE_PRICE)));
        onePrice = method.is(ONE_PRICE);
        priceLevel = entries.add(s.entry("price_level", "All prices of fruit against those entered", ONE)
                .from(0, 100)
                .typical(Double.NaN, 1, Double.NaN, "1 for prices as entered"));
        Line single = entries.add(s.entry("fruit_price", "Price of marketable fruit, for one_price", PER_KG)
                .from(0, 1_000_000)
                .typical(3, 6, 12, INVENTED));
        Line others = entries.add(s.entry("cost_per_kg", "Other costs that move with yield, per kg", PER_KG)
                .from(0, 1_000_000)
                .typical(0, 0, 3, "0: picking and packing are counted by their hours, packs by channels")
                .note("Beside picking and packing, which the sheet of operations counts; with packs for one_price."));
        Line share = entries.add(s.entry("commission_share", "Commission, share of price, for one_price", ONE)
                .from(0, 0.95)
                .typical(0, 0.1, 0.2, INVENTED));
        Channels c = new Channels(b, table, months, faults);
        ChannelSales sales = new ChannelSales(b, entries, c, picking, months.axis, priceLevel);
        shareWarning(b, c);

        ScheduleBuilder m = b.schedule(Sheets.CROP, "Receipts by month");
        Line brings = m.line(
                "month_price",
                "What a marketable kg brings",
                PER_KG,
                when(onePrice, single.times(priceLevel), sum(sales.partOfKg, c.axis)));
        Line takes = m.line(
                "month_commission",
                "Commission on it",
                PER_KG,
                when(onePrice, brings.times(share), sumProduct(sales.partOfKg, c.commission, c.axis)));
        byMonth = m.line("month_receipts", "Receipts", MONTHLY, picking.byMonth.times(brings));
        Line first = m.line(
                "month_receipts_first",
                "of first grade",
                MONTHLY,
                when(onePrice, byMonth.times(picking.firstGrade), picking.byMonth.times(sum(sales.firstOfKg, c.axis))));
        Line second = m.line("month_receipts_second", "of second grade", MONTHLY, byMonth.minus(first));

        ScheduleBuilder k = b.schedule(Sheets.CROP, "What a marketable kg brings and costs, on average");
        price = k.line(
                "price_average",
                "Average price",
                PER_KG,
                when(onePrice, single.times(priceLevel), sumProduct(pattern.chosen, brings, months.axis)));
        Line fee = k.line("commission_per_kg", "Commission", PER_KG, sumProduct(pattern.chosen, takes, months.axis));
        commission = k.line(
                "commission_average",
                "Commission, share of price",
                ONE,
                when(onePrice, share, when(price.isPositive(), fee.over(price), none(ONE))));
        Line packs = k.line("packs_per_kg", "Packs", PER_KG, byChannel(sumProduct(c.share, sales.packsPerKg, c.axis)));
        Line freight = k.line("freight_per_kg", "Freight", PER_KG, byChannel(sumProduct(c.share, c.freight, c.axis)));
        perKg = k.line(
                "costs_per_kg",
                "All costs but commission",
                PER_KG,
                others.plus(packs).plus(freight));
        netPerKg = k.line(
                "net_per_kg",
                "Left of a further kg",
                PER_KG,
                price.minus(price.times(commission)).minus(perKg));
        netByMonth = m.line(
                "month_net_per_kg",
                "Left of a further kg",
                PER_KG,
                brings.minus(takes).minus(perKg));

        ScheduleBuilder y = b.schedule(Sheets.CROP, "Receipts of a year and what moves with yield");
        total = y.line(
                "receipts_total", "Receipts", YEARLY, sum(byMonth, months.axis).counting(YEARLY));
        firstGradeReceipts = y.line(
                "receipts_first",
                "of first grade",
                YEARLY,
                sum(first, months.axis).counting(YEARLY));
        secondGradeReceipts = y.line(
                "receipts_second",
                "of second grade",
                YEARLY,
                sum(second, months.axis).counting(YEARLY));
        y.line("fruit_unsold", "Fruit not sold", KG, when(onePrice, none(KG), sum(sales.unsold, c.axis)));
        firstGradeKg = y.line("fruit_first", "Fruit of first grade", KG, picking.total.times(picking.firstGrade));
        secondGradeKg = y.line("fruit_second", "Fruit of second grade", KG, picking.total.minus(firstGradeKg));
        packsCost = y.line("packs_cost", "Packs", YEARLY, byChannel(sum(sales.packs, c.axis)));
        channelFreight = y.line("channel_freight_total", "Freight", YEARLY, byChannel(sum(sales.freight, c.axis)));
        commissionCost = y.line(
                "commission_cost",
                "Commission",
                YEARLY,
                sumProduct(picking.byMonth, takes, months.axis).counting(YEARLY));
        otherCosts =
                y.line("other_yield_costs", "Other costs that move with yield", YEARLY, picking.total.times(others));
        yieldCosts = y.line(
                "yield_costs_total",
                "Packs, freight, commission and other costs by the kg",
                YEARLY,
                otherCosts.plus(packsCost).plus(channelFreight).plus(commissionCost),
                "what moves with yield");
    }

    private Formula byChannel(Formula value) {
        return when(onePrice, none(value.unit()), value);
    }

    private void shareWarning(BudgetBuilder b, Channels c) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Channels: do the shares add up?");
        Line all = s.line("channel_share_sum", "Shares together", ONE, sum(c.share, c.axis));
        s.warning(
                "channel_share_warning",
                "Shares",
                and(not(onePrice), or(all.exceeds(one()), one().exceeds(all))),
                "The shares of the channels do not add up to 1: change them until they do.");
    }
}
