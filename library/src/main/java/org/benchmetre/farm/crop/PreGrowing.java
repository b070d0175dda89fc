package org.benchmetre.farm.crop;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.House;

/**
 * Growing plants on before they are set out: pot, media, labour and the bench they stand on. A plant takes 1 / density of a metre of
 * bench for so many weeks. The space rate, house cost over (floor times share in use times weeks), is what a square metre in use has
 * to earn a week: Fisher, Greenhouse Grower, space-week costing. It is shown as a guide and charged nowhere, since the house itself
 * stands with ownership.
 */
public final class PreGrowing {

    /** Cost of growing on, for each plant set out of each kind, money/plant. */
    public final Line perPlant;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param columns of {@code plant_stock.csv}
     * @param house floor and benches
     * @param wageLevel all wages against those entered
     */
    public PreGrowing(BudgetBuilder b, FarmEntries entries, Columns columns, House house, Line wageLevel) {
        ScheduleBuilder single = b.schedule(Sheets.CROP, "Growing plants on: wage and bench");
        single.note(
                "Charge a bench-week for benches beyond those of this house, such as hired ones. The house itself is paid for "
                        + "with yearly cost and is not charged here again.");
        Line wage = entries.add(
                single.entry("pre_grow_wage", "Labour of growing on, wage with on-costs", Unit.parse("money/h"))
                        .from(0, 1_000_000));
        Line benchWeek = entries.add(single.entry(
                        "bench_week_cost", "Cost of a metre of raising bench for a week", Unit.parse("money/(m wk)"))
                .from(0, 1_000_000));
        Line density =
                entries.add(single.entry("raising_density", "Plants on a metre of raising bench", Unit.parse("plant/m"))
                        .above(0, 1000));
        spaceRate(single, entries, house);
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.STOCK_PRICES);
        Unit money = Unit.parse("money/plant");
        Line pot = columns.in(s).numbers("pot_price", "stock_pot_price", "Pot", money, Columns.PRICE, 0);
        Line litres = columns.in(s)
                .numbers(
                        "media_litres",
                        "stock_media_litres",
                        "Media",
                        Unit.parse("L/plant"),
                        new Bounds(0, true, 50, false),
                        0);
        Line media = columns.in(s)
                .numbers("media_price", "stock_media_price", "Price of media", Unit.parse("money/L"), Columns.PRICE, 0);
        Line hours = columns.in(s)
                .numbers(
                        "pre_grow_hours",
                        "stock_pre_grow_hours",
                        "Labour",
                        Unit.parse("h/plant"),
                        new Bounds(0, true, 10, false),
                        0);
        Line weeks = columns.in(s)
                .numbers(
                        "bench_weeks",
                        "stock_raising_weeks",
                        "Weeks on the raising bench",
                        Unit.parse("wk"),
                        new Bounds(0, true, 104, false),
                        0);
        Line bench = s.line(
                "stock_raising_cost",
                "Raising bench",
                money,
                weeks.times(benchWeek).over(density),
                "a plant takes 1 / density of a metre of bench: common practice, no source");
        perPlant = s.line(
                "stock_pre_grow_cost",
                "Growing on",
                money,
                pot.plus(litres.times(media))
                        .plus(hours.times(wage).times(wageLevel))
                        .plus(bench));
    }

    private static void spaceRate(ScheduleBuilder s, FarmEntries entries, House house) {
        Line cost = entries.add(
                s.entry("space_yearly_cost", "Guide: what the house has to earn in a year", Unit.parse("money/a"))
                        .from(0, 1e12));
        Line use = entries.add(s.entry("space_use_share", "Guide: share of floor and time in use", ONE)
                .above(0, 1));
        Line weeks = entries.add(s.entry("space_weeks", "Guide: weeks of a year that have to pay", Unit.parse("wk/a"))
                .above(0, 53));
        s.line(
                "space_rate",
                "Guide: what a square metre in use has to earn in a week",
                Unit.parse("money/(m2 wk)"),
                cost.over(house.houseArea.times(use).times(weeks)),
                "Fisher, Greenhouse Grower, space-week costing; a guide, charged nowhere");
        s.line(
                "space_rate_per_metre",
                "Guide: what a metre of bench has to earn in a week",
                Unit.parse("money/(m wk)"),
                cost.over(house.benchMetres.times(weeks)),
                "all benches in use; a guide, charged nowhere");
    }
}
