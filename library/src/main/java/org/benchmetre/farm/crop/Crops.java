package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * The crops of a year: how often each is grown, counted on all benches, how long its plants last, and how often they are set and
 * cleared out. Plants that stay for a later crop, or come back for several years, are bought, set and cleared once in that many crops.
 *
 * <pre>
 * n = s c     r = N / N0     y = l / (c r)     p = s / y
 * n  crops in a year on all benches     s  share of benches     c  times a year that the crops listed are grown
 * r  crops that one setting of plants bears within a turn: all crops of a kind of stock, N, over those with new plants, N0
 * y  life of the plants, a     l  life in crops     p  times that plants are set in a year, on all benches
 * </pre>
 *
 * Plain counting. A kind that no crop has is counted as if all had it.
 */
public final class Crops {

    private static final Unit A_YEAR = Unit.parse("crop/a");
    private static final Unit YEAR = Unit.parse("a");
    private static final Unit TIMES = Unit.parse("1/a");

    /** One row for each crop. */
    public final Axis axis;
    /** Keys. */
    public final Line key;
    /** Labels. */
    public final Line label;
    /** Key of the plant stock of each. */
    public final Line stock;
    /** Key of the plant type of each. */
    public final Line plantType;
    /** Month of planting by name, Jan to Dec; empty in a spare row. */
    public final Line planting;
    /** Month of planting by name, or that plants stay. */
    public final Line plantedTold;
    /** Month of clearing out by name, Jan to Dec; empty in a spare row. */
    public final Line clearOut;
    /** Number of the month of planting, 1 to 12. */
    public final Line plantingNumber;
    /** Number of the month of clearing out, 1 to 12. */
    public final Line clearOutNumber;
    /** Crops in a year of each, counted on all benches, crop/a. */
    public final Line perYear;
    /** All of them, crop/a. */
    public final Line total;
    /** Share of the benches that new plants are set on; nothing where the plants of another crop stay. */
    public final Line newShare;
    /** All of them: share of the benches that new plants are set on in a turn of the crops. */
    public final Line allNew;
    /** Times a year that plants are set, on all benches, 1/a. */
    public final Line plantings;
    /** Times a year that benches are cleared out, on all benches, 1/a. */
    public final Line clearings;
    /** Life of the plants of each kind of stock, in years. */
    public final Line stockYears;
    /** Turns of the crops listed that the plants of each kind last. */
    final Line turns;

    final CropRows rows;
    private final PlantStock kinds;
    private final Line times;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param months the months
     * @param plan what counts where a crop says nothing
     */
    Crops(BudgetBuilder b, Months months, CropRows.Plan plan) {
        rows = CropRows.of(b, months, plan);
        kinds = plan.stock();
        times = plan.growth().cropsPerYear;
        axis = rows.axis;
        key = rows.key;
        label = rows.label;
        stock = rows.stock;
        plantType = rows.plantType;
        plantingNumber = rows.plantingNumber;
        clearOutNumber = rows.clearOutNumber;
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        planting = s.textLine("crop_planting", "Planted", nameOf(plan.year(), plantingNumber));
        clearOut = s.textLine("crop_cleared", "Cleared", nameOf(plan.year(), clearOutNumber));
        perYear = s.line(
                "crop_times", "Crops a year, on all benches", A_YEAR, rows.whereFilled(rows.benchShare.times(times)));
        Formula isNew = not(rows.plantsOf.isFilled());
        newShare = s.line(
                "crop_new_share",
                "Benches set with new plants, share",
                ONE,
                rows.whereFilled(when(isNew, rows.benchShare, none(ONE))));
        ScheduleBuilder single = b.schedule(Sheets.CROP, "Crops of a year together");
        total = single.line("crops_in_year", "Crops in a year, on all benches", A_YEAR, sum(perYear, axis));
        allNew = single.line("crops_new_share", "Benches set with new plants, share", ONE, sum(newShare, axis));

        ScheduleBuilder k = b.shared(Sheets.CROP, Tables.STOCK_GROWTH);
        Line here = k.line(
                "stock_new_share",
                "Benches it is set on, share",
                ONE,
                kinds.whereFilled(sumWhere(newShare, stock, kinds.key, axis)));
        Formula own = sumWhere(perYear, stock, kinds.key, axis).over(here);
        Formula ofAll = when(allNew.isPositive(), total.over(allNew), times);
        Line crops = k.line(
                "stock_crops_a_year",
                "Crops its plants bear in a year",
                A_YEAR,
                kinds.whereFilled(when(here.isPositive(), own, ofAll)),
                "those of a kind that no crop has as if all had it: plain counting");
        stockYears = k.line(
                "stock_life_years",
                "Life",
                YEAR,
                when(
                        and(kinds.life.isPositive(), kinds.key.isFilled()),
                        when(
                                kinds.lifeUnit.is("crop"),
                                kinds.life.counting(Unit.parse("crop")).over(crops),
                                kinds.life.counting(YEAR)),
                        number(1, YEAR)),
                "crops over crops in a year: plain counting");
        turns = k.line(
                "stock_turns",
                "Turns of the crops that its plants last",
                ONE,
                stockYears.times(times).counting(ONE));
        plantedTold = s.textLine(
                "crop_planted_told",
                "Planted, in words",
                when(newShare.isPositive(), planting, when(key.isFilled(), text("they stay"), text(""))));
        plantings = s.line("crop_plantings", "Plants are set, a year", TIMES, eachLife(newShare));
        Line before = s.textLine("crop_before", "On the plants of, counted", rows.plantsOf);
        Formula isLast = not(countWhere(before, key, axis).isPositive());
        Line cleared = s.line(
                "crop_cleared_share",
                "Benches cleared of old plants, share",
                ONE,
                rows.whereFilled(when(isLast, rows.benchShare, none(ONE))));
        clearings = s.line("crop_clearings", "Cleared out, a year", TIMES, eachLife(cleared));
        if (FarmTable.CROPS.hasRows(b.structure())) {
            watch(b, before, crops, here);
            watchCalendar(b, plan.year());
        }
    }

    /** Plants that stay, but for a crop that cannot have them. */
    private void watch(BudgetBuilder b, Line before, Line crops, Line inUse) {
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        Line share = s.line("crop_benches", "Benches it stands on, share", ONE, rows.whereFilled(rows.benchShare));
        Formula taken = lookup(share, key, before);
        Formula cannot = or(
                before.is(key),
                not(lookup(stock, key, before).is(stock)),
                or(taken.exceeds(share), share.exceeds(taken)));
        s.warning(
                "crop_plants_of_warning",
                "On the plants of",
                when(before.isFilled(), when(cannot, one(), none(ONE)), none(ONE))
                        .isPositive(),
                "The plants of the crop before can stay only for another crop of the same plant stock on as many benches: change "
                        + "plants_of, stock or bench_share.");
        b.schedule(Sheets.CROP, "Crops of a year together")
                .warning(
                        "crops_new_warning",
                        "Plants of the crops",
                        not(allNew.isPositive()),
                        "No crop has plants of its own: leave plants_of blank in the one that is planted.");
        Line staying = b.shared(Sheets.CROP, Tables.STOCK_GROWTH)
                .line(
                        "stock_crops_in_turn",
                        "Crops that one setting of plants bears in a turn",
                        ONE,
                        when(kinds.key.isFilled(), crops.over(times), none(ONE)),
                        "plain counting");
        b.shared(Sheets.CROP, Tables.STOCK_GROWTH)
                .warning(
                        "stock_stays_warning",
                        "Plants that stay",
                        and(inUse.isPositive(), kinds.lifeUnit.is("crop"), staying.exceeds(kinds.life)),
                        "These plants stay for more crops than they live: raise life in plant_stock.csv, or leave plants_of blank.");
        b.shared(Sheets.CROP, Tables.STOCK_GROWTH)
                .warning(
                        "stock_outlives_warning",
                        "Plants that live on",
                        and(inUse.isPositive(), turns.exceeds(one()), allNew.exceeds(one())),
                        "These plants live on when the next crop is planted on their benches: lower life in plant_stock.csv, or "
                                + "name the crop before in plants_of.");
    }

    /** The calendar turns with the plan's month of planting, and is of the crops when that is the first of theirs. */
    private void watchCalendar(BudgetBuilder b, CropYear year) {
        Formula first = new Element(plantingNumber, axis, 0);
        b.schedule(Sheets.CROP, "Crops of a year together")
                .warning(
                        "crops_calendar_warning",
                        "Calendar and first crop",
                        or(first.exceeds(year.plantingNumber), year.plantingNumber.exceeds(first)),
                        "The calendar begins in planting_month, but the first crop of crops.csv is planted in another month: enter that "
                                + "one as planting_month.");
    }

    /** Benches over the life of what stands on them. */
    private Formula eachLife(Line share) {
        return when(share.isPositive(), share.over(ofKind(stockYears)), none(TIMES));
    }

    /**
     * A figure of the plant stock of each crop.
     *
     * @param byKind along the kinds of plant stock
     * @return the same along the crops; nothing in a spare row
     */
    public Formula ofKind(Line byKind) {
        return when(key.isFilled(), lookup(byKind, kinds.key, stock), none(byKind.unit()));
    }

    /**
     * Life of the plants of each crop.
     *
     * @return in years; a year in a spare row
     */
    public Formula yearsOfPlants() {
        return when(key.isFilled(), lookup(stockYears, kinds.key, stock), number(1, YEAR));
    }

    private Formula nameOf(CropYear year, Line number) {
        return when(key.isFilled(), year.named(number), text(""));
    }
}
