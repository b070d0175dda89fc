package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
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

/**
 * Money of water, feed, drain and pumping, a year, by irrigation system. Fresh water = water given less drain reused. Every cubic metre
 * of drain pays the cost of its handling, whether it is disposed of, treated, or cleaned for reuse; where it is reused, the share
 * reused takes the place of as much fresh water and of the feed in it. That counts drain as strong as the feed: where drain has to
 * be topped up with feed, lower the share. Common practice, no source.
 */
public final class WaterCost {

    private static final String DISPOSE = "dispose";
    private static final String TREAT = "treat";
    private static final String REUSE = "reuse";

    /** Fresh water, m3/a, by way. */
    public final Line fresh;
    /** Fresh water, money/a, by way. */
    public final Line water;
    /** Feed, money/a, by way. */
    public final Line feed;
    /** Handling of drain, money/a, by way. */
    public final Line drain;
    /** Water, nutrient solution and drain together, money/a, by way. */
    public final Line solution;
    /** Water, nutrient solution, drain and pumping together, money/a, by way. */
    public final Line running;
    /** What a cubic metre more costs to give, money/m3, by way. */
    public final Line ofMore;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param gross water given and drain
     * @param feedPerVolume feed of a cubic metre of fresh water, money/m3
     * @param pumping electricity of the pump in money/a, by way
     */
    public WaterCost(BudgetBuilder b, FarmEntries entries, GrossWater gross, Line feedPerVolume, Line pumping) {
        Unit perVolume = Unit.parse("money/m3");
        Unit volume = Unit.parse("m3/a");
        Unit money = Unit.parse("money/a");
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Water and drain: prices");
        Line price = entries.add(
                s.entry("water_price", "Price of fresh water", perVolume).from(0, 1_000_000));
        Line handling = entries.add(s.textEntry("drain_handling", "Drain water").oneOf(List.of(DISPOSE, TREAT, REUSE)));
        Line handlingCost = entries.add(
                s.entry("drain_cost", "Cost of handling drain water", perVolume).from(0, 1_000_000));
        Line share = entries.add(s.entry("reuse_share", "Share of drain reused, where drain is reused", ONE)
                .from(0, 1));

        ScheduleBuilder list =
                b.schedule(Sheets.IRRIGATION, "Water, nutrient solution, drain and pumping, by irrigation system");
        list.note(
                "Drain that is reused saves as much fresh water and the nutrient solution in it; all drain pays for its handling.");
        Line again =
                s.line("drain_reused_share", "Share of drain reused", ONE, when(handling.is(REUSE), share, none(ONE)));
        Line reused = list.line("way_reused_water", "Drain reused", volume, gross.drain.times(again));
        fresh = list.line("way_fresh_water", "Fresh water", volume, gross.year.minus(reused));
        water = list.line("way_water_cost", "Fresh water, a year", money, fresh.times(price));
        feed = list.line("way_feed_cost", "Nutrient solution, a year", money, fresh.times(feedPerVolume));
        drain = list.line("way_drain_cost", "Handling of drain, a year", money, gross.drain.times(handlingCost));
        solution = list.line(
                "way_solution_cost",
                "Water, nutrient solution and drain, a year",
                money,
                water.plus(feed).plus(drain));
        running = list.line(
                "way_water_running",
                "Water, nutrient solution, drain and pumping, a year",
                money,
                solution.plus(pumping));
        Formula pumped = when(gross.year.isPositive(), pumping.over(gross.year), none(perVolume));
        ofMore = list.line(
                "way_cost_of_more_water",
                "A cubic metre more given: water, nutrient solution, drain and pumping",
                perVolume,
                price.plus(feedPerVolume)
                        .times(one().minus(again))
                        .plus(handlingCost)
                        .plus(pumped),
                "all of it drains, and the share reused takes the place of fresh water");
    }
}
