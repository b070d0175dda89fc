package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
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

    /** What it brings at prices as entered, money/kg, by month. */
    private final Line enteredByMonth;
    /** Commission on that, money/kg, by month. */
    private final Line enteredCommission;
    /** First grade in what it brings at prices as entered, money/kg, by month. */
    private final Line enteredFirst;
    /** What it brings, money/kg, by month. */
    public final Line byMonth;
    /** What it leaves, money/kg, by month. */
    public final Line netByMonth;
    /** What it brings, on average, money/kg. */
    public final Line price;
    /** First grade in that, money/kg. */
    final Line first;
    /** Commission on it, money/kg. */
    final Line commissionPerKg;
    /** Packs for it, money/kg. */
    final Line packs;
    /** Its freight, money/kg. */
    final Line freight;
    /** What it costs but for commission, money/kg. */
    public final Line costs;
    /** Commission, share of the average price. */
    public final Line commission;
    /** What it leaves, on average, money/kg. */
    public final Line net;

    private final Formula level;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param selling how fruit is sold
     * @param c channels
     * @param sales what they sell of a kilogram
     * @param pattern shares of the months
     * @param firstGrade share of first grade
     */
    public WorthOfKg(
            BudgetBuilder b, Selling selling, Channels c, ChannelSales sales, MonthPattern pattern, Line firstGrade) {
        level = selling.priceLevel;
        ScheduleBuilder m = b.schedule(Sheets.CROP, "What a marketable kg brings and returns, by month");
        ScheduleBuilder k = b.schedule(Sheets.CROP, "What a marketable kg brings and costs, on average");
        enteredByMonth = m.line(
                "month_price_entered",
                "What a marketable kg brings, at prices as entered",
                PER_KG,
                selling.either(selling.single, sumProduct(c.price, sales.weight, c.axis)));
        enteredCommission = m.line(
                "month_commission_entered",
                "Commission on that",
                PER_KG,
                selling.either(
                        enteredByMonth.times(selling.commission), sumProduct(c.price, sales.commissionWeight, c.axis)));
        enteredFirst = m.line(
                "month_first_entered",
                "First grade in that",
                PER_KG,
                selling.either(enteredByMonth.times(firstGrade), sumProduct(c.price, sales.firstWeight, c.axis)));
        byMonth = m.line("month_price", "What a marketable kg brings", PER_KG, enteredByMonth.times(level));
        Line priceEntered = k.line(
                "price_average_entered",
                "Average price, at prices as entered",
                PER_KG,
                selling.either(selling.single, pattern.average(enteredByMonth)));
        Line feeEntered =
                k.line("commission_per_kg_entered", "Commission on that", PER_KG, pattern.average(enteredCommission));
        Line firstEntered =
                k.line("first_per_kg_entered", "First grade in that", PER_KG, pattern.average(enteredFirst));
        price = k.line("price_average", "Average price", PER_KG, priceEntered.times(level));
        first = k.line("first_per_kg", "First grade in that", PER_KG, firstEntered.times(level));
        commissionPerKg = k.line("commission_per_kg", "Commission", PER_KG, feeEntered.times(level));
        commission = k.line(
                "commission_average",
                "Commission, share of price",
                ONE,
                selling.either(
                        selling.commission, when(priceEntered.isPositive(), feeEntered.over(priceEntered), none(ONE))));
        packs = k.line(
                "packs_per_kg", "Packs", PER_KG, selling.byChannels(sumProduct(c.share, sales.packsPerKg, c.axis)));
        freight =
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
                price.minus(commissionPerKg).minus(costs));
        netByMonth = m.line(
                "month_net_per_kg",
                "Returns of a further kg",
                PER_KG,
                byMonth.minus(commissionByMonth()).minus(costs));
    }

    /** Commission on a marketable kilogram by month, money/kg. */
    private Formula commissionByMonth() {
        return enteredCommission.times(level);
    }
}
