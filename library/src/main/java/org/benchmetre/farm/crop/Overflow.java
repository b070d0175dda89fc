package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.budget.Formulas.yearOf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * What is over the most that a channel takes in a month goes to the next row, which takes it beside its own share, and so on; what is
 * over the most of the last one is not sold.
 *
 * <pre>
 * o = max(0, s Y + o' - L)
 * o, o'  fruit passed on by a channel and by the one before it, kg/mo     s  share of the channel     Y  fruit of the month, kg/mo
 * L  the most the channel takes in a month, kg/mo; a channel without one passes nothing on
 * </pre>
 *
 * A row without share and price takes nothing and passes all on. Each channel has a line of its own along the months, so that cases of
 * a lever have room beside it. Plain arithmetic.
 */
public final class Overflow {

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit KG_MONTH = Unit.parse("kg/mo");
    private static final Unit KG_YEAR = Unit.parse("kg/a");

    /** The channels. */
    final Channels c;
    /** What they sell of a kilogram. */
    final ChannelSales sales;

    private final BudgetBuilder b;
    private final Axis months;
    private final Line limit;
    private final List<Line> prices;

    /**
     * What passing on adds to a year, at prices as entered, against each channel selling its share. All is 0 where no channel is full.
     *
     * @param over fruit that each channel passes on, by month, kg/mo
     * @param kg fruit that comes to each channel from others less what it passes on, kg/a
     * @param atPrice the same at the channel's price of first grade, money/a
     * @param money what it adds
     */
    public record Moved(List<Line> over, Line kg, Line atPrice, Money money) {

        /** What nobody takes, kg/mo by month. */
        Line unsold() {
            return over.get(over.size() - 1);
        }
    }

    /**
     * Money of a year.
     *
     * @param receipts below 0 as a rule, money/a
     * @param first first grade in that, money/a
     * @param commission money/a
     * @param packs money/a
     * @param freight money/a
     */
    public record Money(Line receipts, Line first, Line commission, Line packs, Line freight) {}

    /**
     * Declares what does not move with fruit.
     *
     * @param b where schedules are added
     * @param selling how fruit is sold
     * @param sales the channels, and what they sell of a kilogram
     * @param months the months
     */
    Overflow(BudgetBuilder b, Selling selling, ChannelSales sales, Axis months) {
        this.b = b;
        this.c = sales.c;
        this.sales = sales;
        this.months = months;
        limit = b.schedule(Sheets.CROP, "Channels: the most they take")
                .line("channel_limit", "Most in a month, 0 for no limit", KG_MONTH, selling.byChannels(c.most));
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Channels: price of first grade, a line for each channel");
        prices = IntStream.range(0, c.axis.size())
                .mapToObj(i -> s.line(
                        "channel_price_" + (i + 1),
                        "Price, channel " + (i + 1),
                        PER_KG,
                        new Element(c.price, c.axis, i)))
                .toList();
    }

    /**
     * What channels pass on of some fruit.
     *
     * @param name in front of the names of its lines
     * @param words behind their headings
     * @param fruit marketable fruit by month, kg/mo
     * @return what it comes to
     */
    public Moved at(String name, String words, Formula fruit) {
        ScheduleBuilder m = b.schedule(Sheets.CROP, "Fruit passed on to the next channel" + words);
        List<Line> over = new ArrayList<>();
        for (int i = 0; i < c.axis.size(); i++) {
            Formula before = i == 0 ? none(KG_MONTH) : over.get(i - 1);
            Formula left = offered(i, fruit, before).minus(limit(i));
            over.add(m.line(
                    name + "passed_on_" + (i + 1),
                    "Passed on by channel " + (i + 1),
                    KG_MONTH,
                    passing(i, greater(left, none(KG_MONTH)), before)));
        }
        ScheduleBuilder y = b.schedule(Sheets.CROP, "Fruit from other channels less fruit passed on" + words);
        Line kg = y.line(name + "moved_kg", "Fruit", KG_YEAR, gained(KG_YEAR, over, (i, line) -> yearOf(line, months)));
        Line atPrice = y.line(
                name + "moved_at_price",
                "At the price of first grade",
                YEARLY,
                gained(
                        YEARLY,
                        over,
                        (i, line) -> sumProduct(prices.get(i), line, months).counting(YEARLY)));
        ScheduleBuilder s = b.schedule(Sheets.CROP, "What passing on adds, at prices as entered" + words);
        return new Moved(
                List.copyOf(over),
                kg,
                atPrice,
                new Money(
                        sum(s, name + "moved_receipts", "Receipts", atPrice, sales.sentWeight),
                        sum(s, name + "moved_first", "Receipts, first grade", atPrice, sales.sentFirst),
                        sum(s, name + "moved_commission", "Commission", atPrice, sales.sentCommission),
                        sum(s, name + "moved_packs", "Packs", kg, sales.packsPerKg),
                        sum(s, name + "moved_freight", "Freight", kg, c.freight)));
    }

    private Line sum(ScheduleBuilder s, String id, String label, Line byChannel, Line each) {
        return s.line(id, label, YEARLY, sumProduct(byChannel, each, c.axis));
    }

    /** What each channel gets from the one before it less what it passes on. */
    Formula gained(Unit unit, List<Line> passed, BiFunction<Integer, Line, Formula> worth) {
        return new Rows(
                c.axis,
                IntStream.range(0, passed.size())
                        .mapToObj(i -> {
                            Formula from = i == 0 ? none(unit) : worth.apply(i, passed.get(i - 1));
                            return from.minus(worth.apply(i, passed.get(i)));
                        })
                        .toList());
    }

    /** What is offered to a channel: its share, and what the one before passes on. */
    Formula offered(int channel, Formula fruit, Formula before) {
        return new Element(c.share, c.axis, channel).times(fruit).plus(before);
    }

    /** The most a channel takes. */
    Formula limit(int channel) {
        return new Element(limit, c.axis, channel);
    }

    /** What a channel passes on: so much where it has a limit, nothing without one, all of it where nothing is sold there. */
    Formula passing(int channel, Formula whereLimited, Formula before) {
        Formula takes = or(
                new Element(c.share, c.axis, channel).isPositive(),
                prices.get(channel).isPositive());
        Formula limited = when(limit(channel).isPositive(), whereLimited, none(before.unit()));
        return when(takes, limited, before);
    }
}
