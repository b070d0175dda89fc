package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** How fruit is sold: by channels, each with its own prices and costs, or all of it at one price with one commission. */
public final class Selling {

    private static final String CHANNELS = "channels";
    private static final String ONE_PRICE = "one_price";
    private static final Unit PER_KG = Unit.parse("money/kg");

    /** All prices of fruit against those entered. */
    public final Line priceLevel;
    /** The one price, money/kg. */
    public final Line single;
    /** Other costs that move with yield, per kilogram, money/kg. */
    public final Line otherCosts;
    /** The one commission, share of price. */
    public final Line commission;

    private final Formula onePrice;

    /**
     * Declares the entries.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param byChannels whether the scenario has channels
     */
    public Selling(BudgetBuilder b, FarmEntries entries, boolean byChannels) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Prices and what moves with yield");
        Line method = entries.add(s.textEntry("receipts_by", "Receipts by")
                .oneOf(List.of(CHANNELS, ONE_PRICE))
                .usually(byChannels ? CHANNELS : ONE_PRICE, "channels where channels.csv has rows"));
        onePrice = method.is(ONE_PRICE);
        priceLevel = entries.add(s.entry("price_level", "All prices of fruit against those entered", ONE)
                .from(0, 10));
        single = entries.add(s.entry("fruit_price", "Price of marketable fruit, where all has one price", PER_KG)
                .from(0, 1_000_000));
        otherCosts = entries.add(
                s.entry("cost_per_kg", "Other costs that move with yield, per kg", PER_KG)
                        .from(0, 1_000_000)
                        .note(
                                "Beside picking and packing, which the sheet of operations counts; with packs where all fruit has one price."));
        commission = entries.add(s.entry("commission_share", "Commission, share of price, where all fruit has one", ONE)
                .from(0, 0.95));
    }

    /**
     * One figure or the other, by how fruit is sold.
     *
     * @param atOnePrice the figure when all fruit has one price
     * @param byChannels the figure when it is sold by channels
     * @return the one that counts
     */
    Formula either(Formula atOnePrice, Formula byChannels) {
        return when(onePrice, atOnePrice, byChannels);
    }

    /** A figure that only channels have. */
    Formula byChannels(Formula value) {
        return either(none(value.unit()), value);
    }

    /** Warns of shares of channels that do not add up. */
    void watch(BudgetBuilder b, Channels c) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Channels: do the shares add up?");
        Line all = s.line("channel_share_sum", "Shares together", ONE, sum(c.share, c.axis));
        s.warning(
                "channel_share_warning",
                "Shares",
                and(not(onePrice), or(all.exceeds(one()), one().exceeds(all))),
                "The shares of the channels do not add up to 1: change them until they do.");
    }
}
