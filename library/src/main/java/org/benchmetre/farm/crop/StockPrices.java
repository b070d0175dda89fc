package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Price breaks by quantity: of the breaks of a kind whose quantity is reached, the one with the largest quantity sets the price of
 * every plant bought; without one the list price holds. Common practice, no source.
 */
public final class StockPrices {

    /** The file. */
    public static final String FILE = FarmTable.STOCK_PRICES.file();

    private static final Unit PER_PLANT = Unit.parse("money/plant");
    private static final String KIND = "stock";
    private static final String FROM = "from_quantity";
    private static final String PRICE = "price";
    private static final double MOST_PLANTS = 1e9;

    /** Price of a plant at the quantity bought, money/plant, by kind. */
    public final Line paid;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param kind keys of the kinds of plant stock
     * @param listPrice price of a plant without a break
     * @param bought plants bought of each kind
     * @param level all prices of plants against those entered
     */
    public StockPrices(BudgetBuilder b, Line kind, Line listPrice, Line bought, Line level) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Plant stock: price breaks by quantity");
        s.note(
                "The largest quantity that the whole plants reach sets the price of all plants of its kind. Without a break the list price holds.");
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Plant stock: breaks reached");
        Columns c = Columns.of(b, FarmTable.STOCK_PRICES, s);
        Axis axis = c.axis();
        Line of = c.keyList(KIND, "break_stock", "Plant stock", kind.id());
        Line from = c.numbers(
                FROM,
                "break_from",
                "From this many plants",
                PLANT,
                new Bounds(0, true, MOST_PLANTS, false),
                Double.NaN);
        Line price = c.prices(PRICE, "break_price", "Price of a plant", PER_PLANT, Meaning.PLAIN);
        ScheduleBuilder result = b.shared(Sheets.CROP, Tables.STOCK_PRICES);
        Formula counts = and(kind.isFilled(), kind.is(of), not(from.exceeds(bought.wholeUp())));
        Line reached = blocks.line(
                "stock_break_reached",
                "Quantity of the break and one more, where it is reached",
                PLANT,
                when(counts, from.plus(number(1, PLANT)), none(PLANT)));
        warnOfDearBreaks(b, blocks, price, and(kind.isFilled(), kind.is(of), price.exceeds(listPrice)), kind);
        Line largest = result.line(
                "stock_break_largest", "Largest break reached and one more", PLANT, greatest(reached, axis));
        Line set = blocks.line(
                "stock_break_price",
                "Price, where the break sets it",
                PER_PLANT,
                when(and(reached.isPositive(), not(largest.exceeds(reached))), price, none(PER_PLANT)));
        paid = result.line(
                "stock_price_paid",
                "Price of a plant at the quantity bought",
                PER_PLANT,
                level.times(when(largest.isPositive(), greatest(set, axis), listPrice)),
                "the largest quantity reached sets the price of every plant: common practice, no source");
    }

    /** A break above the list price is no rebate. */
    private static void warnOfDearBreaks(
            BudgetBuilder b, ScheduleBuilder blocks, Line price, Formula dearer, Line kind) {
        Line above = blocks.line(
                "stock_break_above_list",
                "Price of the break, where it is above the list price",
                PER_PLANT,
                when(dearer, price, none(PER_PLANT)));
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Plant stock: breaks against the list price");
        Line most = s.line(
                "break_above_list",
                "Price of the break, where it is above the list price",
                PER_PLANT,
                greatest(above, kind.axes().get(0)));
        s.warning(
                "break_price_warning",
                "Price break",
                most.isPositive(),
                "This break is dearer than the list price of its plants: check its price against stock_price.");
    }
}
