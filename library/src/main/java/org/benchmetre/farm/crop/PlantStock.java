package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Bounds;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Table;

/**
 * Plant stock: what the first plants cost. Plants lost before they are established are bought as well: plants over (1 - losses).
 * Common practice, no source.
 */
public final class PlantStock {

    /** The file. */
    public static final String FILE = "plant_stock.csv";

    /** The columns of the file, for sections that ask for more of them. */
    public final Columns columns;
    /** One row for each kind. */
    public final Axis axis;
    /** Keys. */
    public final Line key;
    /** Labels. */
    public final Line label;
    /** Cost of the first plants of each kind. */
    public final Line firstCost;
    /** Life, in years or crops. */
    public final Line life;
    /** Unit of the life: {@code a} or {@code crop}. */
    public final Line lifeUnit;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param table the file
     * @param faults where faults are collected
     * @param planting plants
     */
    public PlantStock(BudgetBuilder b, Table table, Faults faults, Planting planting) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Plant stock");
        columns = Columns.of(table, "stock", "stock", "Plant stock", s, faults);
        axis = columns.axis();
        label = columns.words("label", "stock_label", "Plant stock", row -> Columns.readable(row.text("stock")));
        key = columns.keys("stock_key", "Key");
        b.nameRows(axis, label);
        Bounds share = new Bounds(0, true, 10, false);
        Unit perPlant = Unit.parse("money/plant");
        Line price =
                columns.numbers("price", "stock_price", "Price of a plant", perPlant, Columns.NOT_NEGATIVE, Double.NaN);
        columns.years("price_year", "stock_price_year", "Year of the price", row -> !row.isBlank("price"));
        Line freight = columns.numbers("freight", "stock_freight", "Freight, share of price", ONE, share, 0);
        Line losses = columns.numbers(
                "losses", "stock_losses", "Lost before established", ONE, new Bounds(0, true, 0.95, false), 0);
        life = columns.numbers("life", "stock_life", "Life", ONE, Columns.POSITIVE, 1);
        lifeUnit = columns.choice("life_unit", "stock_life_unit", "Life in", List.of("a", "crop"), "crop");
        columns.words("source", "stock_source", "Source", row -> "");
        Line bought = s.line(
                "stock_plants_bought",
                "Plants to buy",
                PLANT,
                when(key.isFilled(), planting.plantCount.over(one().minus(losses)), none(PLANT)));
        firstCost = s.line(
                "stock_first_cost",
                "Cost of the first plants",
                MONEY,
                bought.times(price).times(one().plus(freight)),
                "Exact plants; planting labour stands with the tasks.");
        s.line(
                "stock_cost_per_established_plant",
                "Cost of an established plant",
                perPlant,
                when(planting.plantCount.isPositive(), firstCost.over(planting.plantCount), none(perPlant)));
    }
}
