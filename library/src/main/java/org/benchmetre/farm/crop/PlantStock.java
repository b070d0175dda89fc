package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Levels;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * Plant stock: what an established plant costs. Three losses, each by its own cause: culls are delivered and not set out; losses die
 * before they are established; replacements take the place of established plants that fail during the crop (crown rot, bent roots).
 *
 * <pre>
 * S = P (1 + r) / (1 - l)     B = S / (1 - c)
 * P  plants that stand     S  plants to set out     B  plants to buy
 * r  replaced, l  lost before they are established, c  culled, shares
 * </pre>
 *
 * Common practice, no source.
 */
public final class PlantStock {

    /** The file. */
    public static final String FILE = FarmTable.PLANT_STOCK.file();

    private static final Unit PER_PLANT = Unit.parse("money/plant");
    private static final String LOSSES =
            "plants (1 + replaced) / (1 - lost) are set out, over (1 - culled) bought: common practice, no source";
    private static final Bounds LIFE = new Bounds(0, false, 100, false);
    private static final Bounds LOST = new Bounds(0, true, 0.95, false);

    /** The columns of the file, for sections that ask for more of them. */
    public final Columns columns;
    /** One row for each kind. */
    public final Axis axis;
    /** Keys. */
    public final Line key;
    /** Labels. */
    public final Line label;
    /** Plants to set out of each kind, again where they failed. */
    public final Line setOut;
    /** Plants to buy of each kind. */
    public final Line bought;
    /** Price of a plant at the quantity bought, money/plant. */
    public final Line price;
    /** Freight, share of price. */
    public final Line freight;
    /** Growing on of what is set out of each kind, money. */
    public final Line growing;
    /** Cost of the first plants of each kind, money. */
    public final Line firstCost;
    /** Cost of an established plant of each kind, money/plant. */
    public final Line perEstablished;
    /** Life, in years or crops. */
    public final Line life;
    /** Unit of the life: {@code a} or {@code crop}. */
    public final Line lifeUnit;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param house floor and benches
     * @param planting plants
     * @param levels of wages and of the prices of plants
     */
    public PlantStock(BudgetBuilder b, FarmEntries entries, House house, Planting planting, Levels levels) {
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.STOCK_PRICES);
        columns = Columns.of(b, FarmTable.PLANT_STOCK, s);
        axis = columns.axis();
        label = columns.names("stock_label", "Plant stock");
        key = columns.keys("stock_key", "Key");
        Line listPrice = columns.prices(
                "price", "stock_price", "List price", PER_PLANT, Meaning.price("stock_price_year", "stock_source"));
        columns.years("price_year", "stock_price_year", "Price year", listPrice);
        freight = share("freight", "stock_freight", "Freight, share of price", new Bounds(0, true, 10, false));
        Line losses = share("losses", "stock_losses", "Lost before established", LOST);
        Line culls = share("culls", "stock_culls", "Culled on delivery", LOST);
        Line replaced = share("replacement", "stock_replacement", "Replaced during the crop", LOST);
        life = columns.numbers("life", "stock_life", "Life", ONE, LIFE, 1);
        lifeUnit = columns.choice("life_unit", "stock_life_unit", "Life in", List.of("a", "crop"), "crop");
        columns.words("source", "stock_source", "Source");
        Formula toSet = planting.plantCount.times(one().plus(replaced)).over(one().minus(losses));
        setOut = s.line("stock_plants_set", "Plants to set out", PLANT, whereFilled(toSet), LOSSES);
        bought = s.line("stock_plants_bought", "Plants to buy", PLANT, setOut.over(one().minus(culls)), LOSSES);

        Line growingOn = new PreGrowing(b, entries, columns, house, levels.wages).perPlant;
        price = new StockPrices(b, key, listPrice, bought, levels.plants).paid;
        ScheduleBuilder cost = b.shared(Sheets.CROP, Tables.STOCK_PRICES);
        Line delivered = cost.line(
                "stock_delivered_cost",
                "Plants with freight",
                MONEY,
                bought.times(price).times(one().plus(freight)));
        growing = cost.line("stock_growing_cost", "Growing on", MONEY, setOut.times(growingOn));
        firstCost = cost.line(
                "stock_first_cost",
                "Cost of the first plants",
                MONEY,
                delivered.plus(growing),
                "Exact plants; planting labour stands with the tasks.");
        perEstablished = cost.line(
                "stock_cost_per_established_plant",
                "Cost of an established plant",
                PER_PLANT,
                when(planting.plantCount.isPositive(), firstCost.over(planting.plantCount), none(PER_PLANT)));
    }

    private Line share(String column, String id, String heading, Bounds bounds) {
        return columns.numbers(column, id, heading, ONE, bounds, 0);
    }

    /**
     * Guards a formula against spare rows.
     *
     * @param formula along this axis or single
     * @return the formula where the kind has a key, else nothing
     */
    public Formula whereFilled(Formula formula) {
        return when(key.isFilled(), formula, none(formula.unit()));
    }
}
