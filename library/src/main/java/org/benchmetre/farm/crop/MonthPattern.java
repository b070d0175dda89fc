package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.rule.AddToOne;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * How fruit spreads over the months: shares that add up to one. A crop takes its own shares in {@code crops.csv}, else those of its plant
 * stock in {@code months.csv} (its own column {@code share_<stock>}, else the common column {@code share}), else what is usual for its
 * type of plant.
 */
public final class MonthPattern {

    private static final String COMMON_COLUMN = "share";
    private static final Bounds SHARE = new Bounds(0, true, 1, false);

    /** Shares of each crop, by month. */
    public final Line byCrop;
    /** Shares of all crops together. */
    public final Line chosen;
    /** The months. */
    public final Axis months;
    /** Those shares together: one, but for rounding. */
    final Line together;

    private final Line byStock;
    private final Line ofStock;
    private final CropPlants grown;
    private final Optional<Line> own;
    private final Optional<Line> weight;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param months months and their file
     * @param grown the plants of the crops
     * @param yield fruit of each crop
     * @param stands months in which each crop stands
     */
    public MonthPattern(BudgetBuilder b, Months months, CropPlants grown, Yield yield, CropStands stands) {
        this.months = months.axis;
        this.grown = grown;
        own = grown.crops().rows.monthShare;
        PlantStock stock = grown.stock();
        Crops crops = grown.crops();
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Fruit by month: share of the crop, by plant stock");
        blocks.note("Each row adds up to 1, or is left blank: then what is usual for the type of plant counts.");
        byStock = blocks.entry("fruit_share", "Share of the crop's fruit", ONE, stock.axis, months.axis)
                .within(SHARE)
                .keptAt(Home.of(Months.FILE, Months.AXIS, COMMON_COLUMN + "_*", COMMON_COLUMN)
                        .wholeColumns())
                .given(List.of());
        b.rule(new AddToOne(byStock, months.axis, "shares of the crop's fruit by month"));
        ScheduleBuilder sums = b.shared(Sheets.CROP, Tables.STOCK_GROWTH);
        ofStock = sums.line("fruit_share_sum", "Shares together", ONE, sum(byStock, months.axis));
        sums.warning(
                "fruit_share_warning",
                "Shares",
                and(ofStock.isPositive(), or(ofStock.exceeds(one()), one().exceeds(ofStock))),
                "The shares of the months do not add up to 1: change them until they do.");
        byCrop = b.schedule(Sheets.CROP, "Crops: share of the fruit by month")
                .line("crop_month_share", "Share of the crop's fruit", ONE, crops.rows.whereFilled(ofCrop(b, crops)));
        watch(b, crops, stands);
        weight = FarmTable.CROPS.hasRows(b.structure()) ? Optional.of(weight(b, crops, yield)) : Optional.empty();
        Formula all = new Element(byCrop, crops.axis, 0);
        chosen = b.shared(Sheets.CROP, Tables.FRUIT_BY_MONTH)
                .line(
                        "month_share",
                        "Share of the year's fruit",
                        ONE,
                        weight.<Formula>map(share -> sumProduct(byCrop, share, crops.axis))
                                .orElse(all));
        together = b.shared(Sheets.CROP, Tables.FRUIT_OF_A_YEAR)
                .line("month_share_sum", "Shares of the months together", ONE, sum(chosen, this.months));
    }

    private static Line weight(BudgetBuilder b, Crops crops, Yield yield) {
        return b.shared(Sheets.CROP, Tables.CROPS)
                .line(
                        "crop_fruit_share",
                        "Share of the year's fruit",
                        ONE,
                        when(
                                yield.ofPlant.isPositive(),
                                yield.weight.over(yield.ofPlant),
                                crops.perYear.over(crops.total)));
    }

    /** Its own shares, else those of its plant stock, else what is usual for its type. */
    private Formula ofCrop(BudgetBuilder b, Crops crops) {
        Formula ofType = lookup(grown.types().spread, grown.types().key, crops.plantType);
        Formula ofKind = when(crops.ofKind(ofStock).isPositive(), crops.ofKind(byStock), ofType);
        return own.<Formula>map(shares -> when(ownSum(b, crops, shares).isPositive(), shares, ofKind))
                .orElse(ofKind);
    }

    private Line ownSum(BudgetBuilder b, Crops crops, Line shares) {
        Line sum = b.shared(Sheets.CROP, Tables.CROPS)
                .line("crop_share_sum", "Shares of the months entered", ONE, sum(shares, months));
        b.shared(Sheets.CROP, Tables.CROPS)
                .warning(
                        "crop_share_warning",
                        "Shares",
                        and(sum.isPositive(), or(sum.exceeds(one()), one().exceeds(sum))),
                        "The shares of the months do not add up to 1: change them until they do.");
        return sum;
    }

    private void watch(BudgetBuilder b, Crops crops, CropStands stands) {
        Line without = b.schedule(Sheets.CROP, "Crops by month: fruit without plants")
                .line(
                        "crop_month_without_plants",
                        "Share of fruit in a month without the crop",
                        ONE,
                        when(stands.standing.isPositive(), none(ONE), byCrop));
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        Line all = s.line("crop_without_plants", "Fruit in months without it, share", ONE, sum(without, months));
        s.warning(
                "crop_without_plants_warning",
                "Fruit and months in crop",
                all.isPositive(),
                "Fruit is counted in a month in which the crop does not stand: change its shares of fruit, planting_month, or "
                        + "clear_out_month or crop_weeks.");
    }

    /**
     * The average of a figure over the months by their share of fruit.
     *
     * @param byMonth along the months, and another axis perhaps
     * @return in its unit; nothing where no month has fruit
     */
    Formula average(Line byMonth) {
        Formula weighed = sumProduct(byMonth, chosen, months);
        return when(together.isPositive(), weighed.over(together), none(byMonth.unit()));
    }

    /**
     * The average of a figure as if all crops were of one kind of plant stock; crops with shares of their own keep them.
     *
     * @param b where its lines are added
     * @param byMonth along the months
     * @return along the kinds of plant stock, in its unit
     */
    Formula averageByStock(BudgetBuilder b, Line byMonth) {
        PlantTypes types = grown.types();
        Line usual = b.schedule(Sheets.CROP, "Plant types: a further kg at their usual months")
                .line(
                        "plant_type_net",
                        "Returns of a further kg",
                        byMonth.unit(),
                        sumProduct(types.spread, byMonth, months));
        Formula ofKind = when(
                ofStock.isPositive(), sumProduct(byStock, byMonth, months), lookup(usual, types.key, types.chosen));
        return own.<Formula>map(shares -> withOwn(b, byMonth, shares, ofKind)).orElse(ofKind);
    }

    private Formula withOwn(BudgetBuilder b, Line byMonth, Line shares, Formula ofKind) {
        Axis crops = grown.crops().axis;
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        Line net = s.line(
                "crop_own_net",
                "Returns of a further kg in its own months",
                byMonth.unit(),
                sumProduct(shares, byMonth, months));
        Line open = s.line(
                "crop_open_share",
                "Share of the year's fruit that goes by plant stock",
                ONE,
                when(sum(shares, months).isPositive(), none(ONE), weight.orElseThrow()));
        ScheduleBuilder all = b.schedule(Sheets.CROP, "Crops with months of their own");
        Line kept = all.line(
                "crops_own_net",
                "Returns of a further kg, their part",
                byMonth.unit(),
                sumProduct(net, weight.orElseThrow(), crops));
        Line left = all.line("crops_open_share", "Fruit that goes by plant stock, share", ONE, sum(open, crops));
        return kept.plus(left.times(ofKind));
    }
}
