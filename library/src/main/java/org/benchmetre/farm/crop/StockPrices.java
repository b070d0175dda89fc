package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.Bounds;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Row;
import org.benchmetre.scenario.Table;

/**
 * Price breaks by quantity: of the breaks of a kind whose quantity is reached, the one with the largest quantity sets the price of
 * every plant bought; without one the list price holds. Common practice, no source.
 */
public final class StockPrices {

    /** The file. */
    public static final String FILE = "stock_prices.csv";

    private static final Unit PER_PLANT = Unit.parse("money/plant");
    private static final String KIND = "stock";
    private static final String FROM = "from_quantity";
    private static final String PRICE = "price";
    private static final double MOST_PLANTS = 1e9;

    /** Price of a plant at the quantity bought, money/plant, by kind. */
    public final Line paid;

    private final List<String> keys = new ArrayList<>();
    private final List<Given> kinds = new ArrayList<>();
    private final List<Given> quantities = new ArrayList<>();
    private final List<Given> prices = new ArrayList<>();

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param table the file; it may be absent
     * @param faults where faults are collected
     * @param kind keys of the kinds of plant stock
     * @param listPrice price of a plant without a break
     * @param bought plants bought of each kind
     */
    public StockPrices(BudgetBuilder b, Table table, Faults faults, Line kind, Line listPrice, Line bought) {
        table.requireColumns(KIND, FROM, PRICE);
        table.allowColumns("source");
        Axis known = kind.axes().get(0);
        table.rows().forEach(row -> read(row, known.keys().subList(0, known.filled()), faults));
        table.warnUnaskedColumns(faults);
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Plant stock: price breaks by quantity");
        s.note(
                "The largest quantity reached sets the price of all plants of its kind. Without a break the list price holds.");
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Plant stock: breaks reached");
        Axis axis = Axis.rows("break", "Price break", keys, Columns.SPARE_ROWS);
        Line of = s.textEntry("break_stock", "Plant stock, by its key", axis).given(kinds);
        Line from = s.entry("break_from", "From this many plants", PLANT, axis)
                .from(0, MOST_PLANTS)
                .given(quantities);
        Line price = s.entry("break_price", "Price of a plant", PER_PLANT, axis)
                .within(Columns.PRICE)
                .given(prices);
        ScheduleBuilder result = b.schedule(Sheets.CROP, "Plant stock: price at the quantity bought");
        Formula counts = and(kind.isFilled(), kind.is(of), not(from.exceeds(bought)));
        Line reached = blocks.line(
                "stock_break_reached",
                "Quantity of the break and one more, where it is reached",
                PLANT,
                when(counts, from.plus(number(1, PLANT)), none(PLANT)));
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
                when(largest.isPositive(), greatest(set, axis), listPrice),
                "the largest quantity reached sets the price of every plant: common practice, no source");
    }

    private void read(Row row, List<String> known, Faults faults) {
        String kind = row.key(KIND, faults);
        double from = row.number(FROM, Bounds.between(0, MOST_PLANTS), "plants", faults);
        double price = row.number(PRICE, Bounds.between(0, Columns.HIGHEST_PRICE), "money/plant", faults);
        if (kind.isEmpty() || Double.isNaN(from) || Double.isNaN(price)) {
            return;
        }
        if (!known.isEmpty() && !known.contains(kind)) {
            faults.add(row.place(KIND), "\"" + kind + "\"", "a kind of plant_stock.csv: " + String.join(", ", known));
            return;
        }
        String key = kind + "_from_" + row.text(FROM).replaceAll("[^0-9]+", "_");
        if (keys.contains(key)) {
            faults.add(row.place(FROM), "\"" + row.text(FROM) + "\" again for " + kind, "each quantity of a kind once");
            return;
        }
        keys.add(key);
        kinds.add(Given.text(kind).at(row.place(KIND).toString()));
        quantities.add(Given.number(from, PLANT)
                .from(row.text("source"))
                .at(row.place(FROM).toString()));
        prices.add(Given.number(price, PER_PLANT)
                .from(row.text("source"))
                .at(row.place(PRICE).toString()));
    }
}
