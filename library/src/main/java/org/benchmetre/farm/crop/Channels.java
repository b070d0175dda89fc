package org.benchmetre.farm.crop;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.budget.rule.AddToOne;
import org.benchmetre.budget.rule.FilledWith;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * Where fruit is sold: one row for each channel with its share of marketable fruit, prices of first grade by month, pack, commission,
 * freight, what is left unsold and the most it takes in a month. A price of its own for a month, such as {@code price_dec}, goes
 * before {@code price}.
 */
public final class Channels {

    /** The file. */
    public static final String FILE = FarmTable.CHANNELS.file();

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Unit KG_MONTH = Unit.parse("kg/mo");
    private static final Bounds SHARE = new Bounds(0, true, 1, false);
    private static final Bounds PACK = new Bounds(0, true, 10_000, false);

    private static final Bounds MOST = new Bounds(0, true, 10_000_000, false);

    /** One row for each channel. */
    public final Axis axis;
    /** What a reader calls it. */
    final Line label;
    /** Share of marketable fruit. */
    public final Line share;
    /** Price of second grade against first; 0 where not entered. */
    public final Line secondPrice;
    /** Fruit in a pack, kg/pack; 0 without packs. */
    public final Line packSize;
    /** Cost of a pack, money/pack. */
    public final Line packCost;
    /** Commission, share of receipts. */
    public final Line commission;
    /** Freight, money/kg. */
    public final Line freight;
    /** Share of fruit sent that is not sold. */
    public final Line shrink;
    /** Most fruit that a channel takes in a month, kg/mo; 0 without a limit. */
    public final Line most;
    /** Price of first grade by month, money/kg. */
    public final Line price;

    /**
     * Declares the entries.
     *
     * @param b where schedules are added
     * @param months the months
     */
    public Channels(BudgetBuilder b, Months months) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Channels: where fruit is sold");
        s.note(
                "The shares of all channels add up to 1. Counted where receipts are by channels; a row filled in here counts too. What is "
                        + "over the most of a channel in a month goes to the next row, and past the last it is not sold.");
        Columns c = Columns.of(b, FarmTable.CHANNELS, s);
        axis = c.axis();
        label = c.names("channel_label", "Channel");
        c.keys("channel_key", "Key");
        share = c.numbers("share", "channel_share", "Share of fruit", ONE, SHARE, Double.NaN);
        secondPrice =
                c.numbers("second_price_share", "channel_second_price", "Second grade, share of price", ONE, SHARE, 0);
        Line year = c.years("price_year", "channel_price_year", "Price year", share);
        packSize = c.numbers("pack_kg", "channel_pack_size", "Fruit in a pack", Unit.parse("kg/pack"), PACK, 0);
        packCost = c.numbers(
                "pack_cost", "channel_pack_price", "Cost of a pack", Unit.parse("money/pack"), Columns.PRICE, 0);
        commission = c.numbers(
                "commission",
                "channel_commission",
                "Commission, share of receipts",
                ONE,
                new Bounds(0, true, 0.95, false),
                0);
        freight = c.numbers("freight", "channel_freight", "Freight", PER_KG, Columns.PRICE, 0);
        shrink = c.numbers("shrink", "channel_shrink", "Not sold, share", ONE, new Bounds(0, true, 0.95, false), 0);
        most = c.numbers(
                "most_per_month", "channel_most", "Most it takes in a month, 0 for no limit", KG_MONTH, MOST, 0);
        c.words("source", "channel_source", "Source");
        Usual usual = c.profile().range("channel_price", PER_KG);
        price = b.schedule(Sheets.CROP, "Channels: price of first grade by month")
                .entry("channel_price", "Price of first grade", PER_KG, axis, months.axis)
                .within(Columns.PRICE)
                .usually(usual.range(), usual.source())
                .keptAt(Home.of(FILE, axis.name(), "price_*", "price"))
                .meaning(Meaning.price(year.id(), "channel_source"))
                .given(List.of());
        b.rule(new FilledWith(packSize, packCost, "the fruit in a pack in kg"));
        b.rule(new AddToOne(share, axis, "shares of marketable fruit over all channels"));
        b.rule(new PriceGiven(price, share));
    }
}
