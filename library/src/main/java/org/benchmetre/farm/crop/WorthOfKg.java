package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * What a marketable kilogram brings, costs and leaves: by month over all channels, and on average over the months by their share of
 * fruit. Since all of it moves with yield, the average is what one kilogram more or less brings, costs and leaves. Plain arithmetic.
 */
public final class WorthOfKg {

    private static final Unit PER_KG = Unit.parse("money/kg");

    /** What it brings, money/kg, by month. */
    public final Line byMonth;
    /** What it leaves, money/kg, by month. */
    public final Line netByMonth;
    /** Commission on a marketable kilogram by month. */
    final Line commissionByMonth;
    /** What it brings, on average, money/kg. */
    public final Line price;
    /** What it costs but for commission, money/kg. */
    public final Line costs;
    /** Commission, share of the average price. */
    public final Line commission;
    /** What it leaves, on average, money/kg. */
    public final Line net;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param selling how fruit is sold
     * @param c channels
     * @param sales what they bring and cost
     * @param pattern shares of the months
     */
    public WorthOfKg(BudgetBuilder b, Selling selling, Channels c, ChannelSales sales, MonthPattern pattern) {
        Axis months = pattern.months;
        ScheduleBuilder m = b.schedule(Sheets.CROP, "What a marketable kg brings and returns, by month");
        ScheduleBuilder k = b.schedule(Sheets.CROP, "What a marketable kg brings and costs, on average");
        byMonth = m.line(
                "month_price",
                "What a marketable kg brings",
                PER_KG,
                selling.either(selling.single.times(selling.priceLevel), sum(sales.partOfKg, c.axis)));
        commissionByMonth = m.line(
                "month_commission",
                "Commission on it",
                PER_KG,
                selling.either(byMonth.times(selling.commission), sumProduct(sales.partOfKg, c.commission, c.axis)));
        price = k.line(
                "price_average",
                "Average price",
                PER_KG,
                selling.either(selling.single.times(selling.priceLevel), sumProduct(pattern.chosen, byMonth, months)));
        Line fee = k.line(
                "commission_per_kg", "Commission", PER_KG, sumProduct(pattern.chosen, commissionByMonth, months));
        commission = k.line(
                "commission_average",
                "Commission, share of price",
                ONE,
                selling.either(selling.commission, when(price.isPositive(), fee.over(price), none(ONE))));
        Line packs = k.line(
                "packs_per_kg", "Packs", PER_KG, selling.byChannels(sumProduct(c.share, sales.packsPerKg, c.axis)));
        Line freight =
                k.line("freight_per_kg", "Freight", PER_KG, selling.byChannels(sumProduct(c.share, c.freight, c.axis)));
        costs = k.line(
                "costs_per_kg",
                "All costs but commission",
                PER_KG,
                selling.otherCosts.plus(packs).plus(freight));
        net = k.line(
                "net_per_kg",
                "Returns of a further kg",
                PER_KG,
                price.minus(price.times(commission)).minus(costs));
        netByMonth = m.line(
                "month_net_per_kg",
                "Returns of a further kg",
                PER_KG,
                byMonth.minus(commissionByMonth).minus(costs));
    }
}
