package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * What one marketable kilogram more or less brings and leaves. Where no channel is full that is the average; where one is, a further
 * kilogram goes to the channel that has room, so that it brings less.
 *
 * <pre>
 * f = s + f'  where the channel is full, else 0
 * f, f'  of a further kilogram of the month, what a channel and the one before it pass on     s  share of the channel
 * </pre>
 *
 * True as long as no channel becomes full or gets room. Plain arithmetic.
 */
public final class FurtherKg {

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit MONTHLY = Unit.parse("money/mo");
    private static final Unit KG_MONTH = Unit.parse("kg/mo");
    private static final String HOLDS = "holds as long as no channel becomes full or gets room again";

    /** What it brings, money/kg. */
    final Line price;
    /** Commission on it, share of that. */
    final Line commission;
    /** What it costs but for commission, money/kg. */
    final Line costs;
    /** What it leaves, money/kg. */
    final Line net;
    /** What it leaves by month, money/kg. */
    final Line netByMonth;
    /** What a year leaves above that for each of its kilograms, since the first ones sell better, money/a. */
    final Line aboveMargin;
    /** What passing on adds to receipts by month, at prices as entered, money/mo. */
    final Line movedByMonth;
    /** Receipts less what selling takes, by month, money/mo. */
    final Line leftByMonth;

    private final Overflow overflow;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param selling how fruit is sold
     * @param worth what a kilogram brings and costs on average
     * @param overflow how channels pass fruit on
     * @param moved what they pass on of the fruit of the plan
     * @param picking marketable fruit
     */
    FurtherKg(
            BudgetBuilder b,
            Selling selling,
            WorthOfKg worth,
            Overflow overflow,
            Overflow.Moved moved,
            Picking picking) {
        this.overflow = overflow;
        MonthPattern pattern = worth.pattern;
        Channels c = overflow.c;
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Channels by month: what a kg sent brings");
        Line value = blocks.line(
                "channel_month_value",
                "What a kg sent brings, at prices as entered",
                PER_KG,
                c.price.times(overflow.sales.sentWeight));
        Line fee = b.schedule(Sheets.CROP, "Channels by month: commission on a kg sent")
                .line("channel_month_fee", "Commission on that", PER_KG, value.times(c.commission));
        Line gained = b.schedule(Sheets.CROP, "Channels by month: fruit from other channels less fruit passed on")
                .line(
                        "channel_month_moved",
                        "Fruit from others less fruit passed on",
                        KG_MONTH,
                        overflow.gained(KG_MONTH, moved.over(), (i, line) -> line));
        Line further = b.schedule(Sheets.CROP, "Channels by month: of a further kg, from others less passed on")
                .line(
                        "channel_month_further",
                        "Of a further kg, from others less passed on",
                        ONE,
                        overflow.gained(ONE, passedOn(b, moved.over(), picking.byMonth), (i, line) -> line));
        Line each = b.schedule(Sheets.CROP, "Channels: packs and freight")
                .line(
                        "channel_costs_per_kg",
                        "Packs and freight of a kg",
                        PER_KG,
                        overflow.sales.packsPerKg.plus(c.freight));

        ScheduleBuilder m =
                b.schedule(Sheets.CROP, "What passing on adds by month, and what a further kg brings and returns");
        movedByMonth = m.line(
                "month_moved_receipts",
                "Receipts that passing on adds, at prices as entered",
                MONTHLY,
                sumProduct(value, gained, c.axis));
        Line movedFees =
                m.line("month_moved_commission", "Commission on that", MONTHLY, sumProduct(fee, gained, c.axis));
        Line movedCosts = m.line("month_moved_costs", "Packs and freight", MONTHLY, sumProduct(gained, each, c.axis));
        Line morePrice = m.line(
                "month_further_price",
                "Further kg against the average by shares, at prices as entered",
                PER_KG,
                sumProduct(value, further, c.axis));
        Line moreFee =
                m.line("month_further_commission", "Commission on that", PER_KG, sumProduct(fee, further, c.axis));
        Line moreCosts = m.line("month_further_costs", "Packs and freight", PER_KG, sumProduct(further, each, c.axis));
        Formula level = selling.priceLevel;
        netByMonth = m.line(
                "month_net_per_kg",
                "Returns of a further kg",
                PER_KG,
                worth.enteredByMonth
                        .plus(morePrice)
                        .times(level)
                        .minus(worth.enteredCommission.plus(moreFee).times(level))
                        .minus(worth.costsByShares.plus(moreCosts)),
                HOLDS);
        leftByMonth = m.line(
                "month_left",
                "Receipts less what selling takes",
                MONTHLY,
                picking.byMonth
                        .times(worth.netByShares())
                        .plus(movedByMonth.minus(movedFees).times(level))
                        .minus(movedCosts));

        ScheduleBuilder k = b.schedule(Sheets.CROP, "What a further marketable kg brings and costs");
        Line more =
                k.line("further_price_more", "Price against the average by shares", PER_KG, pattern.average(morePrice));
        Line feesMore = k.line("further_commission_more", "Commission on that", PER_KG, pattern.average(moreFee));
        Line costsMore = k.line("further_costs_more", "Packs and freight", PER_KG, pattern.average(moreCosts));
        Line entered = k.line(
                "further_price_entered",
                "Price of a further kg, at prices as entered",
                PER_KG,
                worth.priceByShares.plus(more));
        Line fees =
                k.line("further_commission_entered", "Commission on that", PER_KG, worth.feeByShares.plus(feesMore));
        price = k.line("further_price", "Price of a further kg", PER_KG, entered.times(level), HOLDS);
        commission = k.line("further_commission", "Commission, share of that price", ONE, worth.shareOf(fees, entered));
        costs = k.line("further_costs", "All costs but commission", PER_KG, worth.costsByShares.plus(costsMore));
        net = k.line(
                "net_per_kg",
                "Returns of a further kg",
                PER_KG,
                price.minus(fees.times(level)).minus(costs),
                HOLDS);
        Formula atMargin = more.minus(feesMore).times(level).minus(costsMore);
        aboveMargin = k.line(
                "above_margin",
                "Returns of the year above those of as many further kg",
                YEARLY,
                ofYear(level, moved.money()).minus(picking.total.times(atMargin)),
                "what passing on adds, less what it would add if all fruit sold as a further kg does; 0 where no channel is full");
    }

    private static Formula ofYear(Formula level, Overflow.Money moved) {
        return moved.receipts()
                .minus(moved.commission())
                .times(level)
                .minus(moved.packs())
                .minus(moved.freight());
    }

    /** Of a further kilogram of a month, what each channel passes on, a line for each channel. */
    private List<Line> passedOn(BudgetBuilder b, List<Line> over, Line fruit) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Of a further kg, passed on to the next channel");
        List<Line> passed = new ArrayList<>();
        for (int i = 0; i < over.size(); i++) {
            Formula overBefore = i == 0 ? none(KG_MONTH) : over.get(i - 1);
            Formula before = i == 0 ? none(ONE) : passed.get(i - 1);
            Formula hasRoom = overflow.limit(i).exceeds(overflow.offered(i, fruit, overBefore));
            passed.add(s.line(
                    "further_passed_on_" + (i + 1),
                    "Passed on by channel " + (i + 1),
                    ONE,
                    overflow.passing(i, when(hasRoom, none(ONE), overflow.offered(i, one(), before)), before)));
        }
        return passed;
    }
}
