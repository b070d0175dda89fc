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
 * What a marketable kilogram brings and costs: by month and on average over the months where each channel sells its share, and on
 * average of what is sold, with what full channels pass on ({@link Overflow}). Plain arithmetic.
 */
public final class WorthOfKg {

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final String MOVED =
            "by the shares of the channels, and what passing on adds over the fruit of the year";

    /** What it brings by shares at prices as entered, money/kg, by month. */
    final Line enteredByMonth;
    /** Commission on that, money/kg, by month. */
    final Line enteredCommission;
    /** What it brings by shares, money/kg, by month. */
    public final Line byMonth;
    /** What it brings by shares at prices as entered, money/kg. */
    final Line priceByShares;
    /** Commission on that, money/kg. */
    final Line feeByShares;
    /** What it costs by shares but for commission, money/kg. */
    final Line costsByShares;
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
    /** Shares of the months. */
    final MonthPattern pattern;

    private final Selling selling;
    private final Line fruit;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param selling how fruit is sold
     * @param sales channels, and what they sell of a kilogram
     * @param pattern shares of the months
     * @param moved what channels pass on
     * @param picking marketable fruit
     */
    public WorthOfKg(
            BudgetBuilder b,
            Selling selling,
            ChannelSales sales,
            MonthPattern pattern,
            Overflow.Money moved,
            Picking picking) {
        this.pattern = pattern;
        this.selling = selling;
        fruit = picking.total;
        Channels c = sales.c;
        Formula level = selling.priceLevel;
        ScheduleBuilder m =
                b.schedule(Sheets.CROP, "What a marketable kg brings by the shares of the channels, by month");
        ScheduleBuilder k =
                b.schedule(Sheets.CROP, "What a marketable kg brings and costs by the shares of the channels");
        ScheduleBuilder a = b.schedule(Sheets.CROP, "What a marketable kg brings and costs, on average");
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
        Line enteredFirst = m.line(
                "month_first_entered",
                "First grade in that",
                PER_KG,
                selling.either(
                        enteredByMonth.times(picking.firstGrade), sumProduct(c.price, sales.firstWeight, c.axis)));
        byMonth = m.line("month_price", "What a marketable kg brings", PER_KG, enteredByMonth.times(level));
        priceByShares = k.line(
                "price_by_shares_entered",
                "Price, at prices as entered",
                PER_KG,
                selling.either(selling.single, pattern.average(enteredByMonth)));
        feeByShares = k.line(
                "commission_by_shares_entered", "Commission on that", PER_KG, pattern.average(enteredCommission));
        Line packsByShares = k.line(
                "packs_by_shares", "Packs", PER_KG, selling.byChannels(sumProduct(c.share, sales.packsPerKg, c.axis)));
        Line freightByShares = k.line(
                "freight_by_shares", "Freight", PER_KG, selling.byChannels(sumProduct(c.share, c.freight, c.axis)));
        costsByShares = k.line(
                "costs_by_shares",
                "All costs but commission",
                PER_KG,
                selling.otherCosts.plus(packsByShares).plus(freightByShares));
        Line priceEntered = a.line(
                "price_average_entered",
                "Average price, at prices as entered",
                PER_KG,
                with(priceByShares, moved.receipts()),
                MOVED);
        Line feeEntered = a.line(
                "commission_per_kg_entered",
                "Commission on that",
                PER_KG,
                with(feeByShares, moved.commission()),
                MOVED);
        Line firstEntered = a.line(
                "first_per_kg_entered",
                "First grade in that",
                PER_KG,
                with(pattern.average(enteredFirst), moved.first()),
                MOVED);
        price = a.line("price_average", "Average price", PER_KG, priceEntered.times(level));
        first = a.line("first_per_kg", "First grade in that", PER_KG, firstEntered.times(level));
        commissionPerKg = a.line("commission_per_kg", "Commission", PER_KG, feeEntered.times(level));
        commission = a.line("commission_average", "Commission, share of price", ONE, shareOf(feeEntered, priceEntered));
        packs = a.line("packs_per_kg", "Packs", PER_KG, with(packsByShares, moved.packs()), MOVED);
        freight = a.line("freight_per_kg", "Freight", PER_KG, with(freightByShares, moved.freight()), MOVED);
        costs = a.line(
                "costs_per_kg",
                "All costs but commission",
                PER_KG,
                selling.otherCosts.plus(packs).plus(freight));
    }

    /** A figure of a kilogram by shares, with what passing on adds. */
    private Formula with(Formula byShares, Line moved) {
        return byShares.plus(when(fruit.isPositive(), moved.over(fruit), none(PER_KG)));
    }

    /** Commission as a share of a price; nothing of a price that is no more than rounding. */
    Formula shareOf(Line fee, Line price) {
        return selling.either(selling.commission, when(price.exceeds(none(PER_KG)), fee.over(price), none(ONE)));
    }

    /** What a kilogram leaves by month where each channel sells its share, money/kg. */
    Formula netByShares() {
        return byMonth.minus(enteredCommission.times(selling.priceLevel)).minus(costsByShares);
    }
}
