package org.benchmetre.farm.crop;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Bounds;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Numbers;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Row;
import org.benchmetre.scenario.Table;

/**
 * Where fruit is sold: one row for each channel with its share of marketable fruit, prices of first grade by month, pack, commission,
 * freight and what is left unsold. A price of its own for a month, such as {@code price_dec}, goes before {@code price}.
 */
public final class Channels {

    /** The file. */
    public static final String FILE = "channels.csv";

    private static final Unit PER_KG = Unit.parse("money/kg");
    private static final Bounds SHARE = new Bounds(0, true, 1, false);
    private static final Bounds PACK = new Bounds(0, true, 10_000, false);
    private static final org.benchmetre.scenario.Bounds READ_PRICE =
            org.benchmetre.scenario.Bounds.between(0, Columns.HIGHEST_PRICE);
    private static final double NEAR = 5e-7;

    /** One row for each channel. */
    public final Axis axis;
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
    /** Price of first grade by month, money/kg. */
    public final Line price;

    /**
     * Declares the entries.
     *
     * @param b where schedules are added
     * @param table the file; it may be absent
     * @param months the months
     * @param faults where faults are collected
     */
    public Channels(BudgetBuilder b, Table table, Months months, Faults faults) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Channels: where fruit is sold");
        s.note(
                "The shares of all channels add up to 1. Counted where receipts are by channels; a row filled in here counts too.");
        Columns c = Columns.of(table, "channel", "channel", "Channel", Columns.FEW_SPARE_ROWS, s, faults);
        axis = c.axis();
        Line label = c.words("label", "channel_label", "Channel", row -> Columns.readable(row.text("channel")));
        b.nameRows(axis, label);
        c.keys("channel_key", "Key");
        share = c.numbers("share", "channel_share", "Share of fruit", ONE, SHARE, Double.NaN);
        secondPrice =
                c.numbers("second_price_share", "channel_second_price", "Second grade, share of price", ONE, SHARE, 0);
        c.years("price_year", "channel_price_year", "Price year", row -> true);
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
        c.words("source", "channel_source", "Source", row -> "");
        price = b.schedule(Sheets.CROP, "Channels: price of first grade by month")
                .entry("channel_price", "Price of first grade", PER_KG, axis, months.axis)
                .within(Columns.PRICE)
                .given(prices(c, faults));
        check(table, c, faults);
        table.warnUnaskedColumns(faults);
    }

    private static List<Given> prices(Columns c, Faults faults) {
        List<Given> all = new ArrayList<>();
        for (Row row : c.rows()) {
            if (Months.KEYS.stream().map(Channels::ownPrice).allMatch(row::isBlank) && row.isBlank("price")) {
                faults.add(
                        row.place("price"),
                        "no price for channel \"" + row.text("channel") + "\"",
                        "a price in money/kg, here or by month in price_jan to price_dec");
            }
            Months.KEYS.forEach(month -> all.add(price(row, ownPrice(month), faults)));
        }
        return all;
    }

    private static String ownPrice(String month) {
        return "price_" + month;
    }

    private static Given price(Row row, String own, Faults faults) {
        String column = row.isBlank(own) ? "price" : own;
        double read = row.number(column, READ_PRICE, "money/kg", 0, faults);
        Given given = row.isBlank(column) || Double.isNaN(read) ? Given.blank(PER_KG) : Given.number(read, PER_KG);
        return given.from(row.text("source")).at(row.place(column).toString());
    }

    private static void check(Table table, Columns c, Faults faults) {
        double sum = 0;
        for (Row row : c.rows()) {
            sum += row.number("share", org.benchmetre.scenario.Bounds.between(0, 1), "", faults);
            if (row.isBlank("pack_kg") && !row.isBlank("pack_cost")) {
                faults.add(row.place("pack_kg"), "nothing", "the fruit in a pack in kg, since pack_cost is given");
            }
        }
        if (Math.abs(sum - 1) > NEAR && !c.rows().isEmpty() && table.isComplete()) {
            faults.add(
                    new Place(FILE, 0, "share"),
                    "shares that add up to " + Numbers.plain(Math.rint(sum * 1e6) / 1e6),
                    "shares of marketable fruit that add up to 1 over all channels");
        }
    }
}
