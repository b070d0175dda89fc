package org.benchmetre.farm.layout;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.LITRE;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.MILLIMETRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.profile.Fact;

/**
 * Trough section. The sides slope evenly from bottom to top width; the root zone lies between the air-gap grid below and the
 * freeboard above, so it is a trapezoid: half the sum of its two widths times its height. Plain geometry. The mulch film covers
 * the top width and both laps and is cut from a stock width in whole strips. A trough without depth is a bare gutter, which holds no
 * substrate.
 */
public final class Trough {

    private static final double ROOM = 2000;

    /** Root zone, as it stands in the trough. */
    public final Line substrateVolume;
    /** Root zone of one metre. */
    public final Line litresPerMetre;
    /** Metres of stock-width film that the mulch is cut from. */
    public final Line mulchMetres;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param house benches
     * @param containers what stands in place of a trough
     * @param planting plants
     */
    public Trough(BudgetBuilder b, FarmEntries entries, House house, Containers containers, Planting planting) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Trough section and mulch");
        Line top = size(entries, s, "trough_top_width", "Top width inside");
        Line bottom = size(entries, s, "trough_bottom_width", "Bottom width inside");
        Line depth = size(entries, s, "trough_depth", "Depth inside");
        Line freeboard = size(entries, s, "trough_freeboard", "Freeboard above the substrate");
        Line gap = size(entries, s, "air_gap", "Air gap under the grid");
        Line height = s.line(
                "root_zone_height",
                "Height of the root zone",
                MILLIMETRE,
                greater(depth.minus(freeboard).minus(gap), none(MILLIMETRE)));
        Formula slope = when(depth.isPositive(), top.minus(bottom).over(depth), none(ONE));
        Line section = s.line(
                "root_zone_section",
                "Section of the root zone",
                Unit.parse("cm2"),
                height.times(bottom.plus(slope.times(gap.plus(number(0.5, ONE).times(height)))))
                        .in(Unit.parse("cm2")),
                "trapezoid: width at half the height of the root zone, times that height");
        Unit perMetre = Unit.parse("L/m");
        litresPerMetre = s.line(
                "litres_per_metre",
                "Substrate per metre of bench",
                perMetre,
                containers.litresOr(section.in(perMetre), house));
        Unit litres = Unit.parse("L/plant");
        Fact known = entries.profile().fact("litres_per_plant_least");
        Formula planted = planting.plantsPerBench.isPositive();
        Line each = s.line(
                "litres_per_plant",
                "Substrate per plant",
                litres,
                when(planted, litresPerMetre.over(planting.plantsPerMetre), none(litres)),
                known.source());
        Line least = s.line(
                "litres_per_plant_least",
                "Least substrate per plant that is usual, 0 where none is held",
                litres,
                when(
                        and(planted, containers.holdsOr(depth.isPositive())),
                        number(known.in(litres), litres),
                        none(litres)),
                known.source());
        s.warning(
                "litres_per_plant_warning",
                "Substrate for each plant",
                least.exceeds(each),
                "A plant has less than " + Numbers.shown(known.in(litres)) + " L, the least that is usual ("
                        + known.source() + "): plant wider, or take a larger section.");
        substrateVolume =
                s.line("substrate_volume", "Substrate as filled", LITRE, litresPerMetre.times(house.benchMetres));
        wetLoad(entries, s);
        mulchMetres = mulch(entries, s, house, top);
    }

    private static Line size(FarmEntries entries, ScheduleBuilder s, String id, String label) {
        return entries.add(s.entry(id, label, MILLIMETRE).from(0, ROOM));
    }

    private void wetLoad(FarmEntries entries, ScheduleBuilder s) {
        Line density = entries.add(s.entry("substrate_wet_density", "Substrate, wet density", Unit.parse("kg/m3"))
                .above(0, 2000));
        s.line(
                "wet_load_per_metre",
                "Wet substrate per metre of bench",
                Unit.parse("kg/m"),
                litresPerMetre.times(density).in(Unit.parse("kg/m")),
                "Substrate alone, without trough, crop and water in the gap. Supports are for a licensed engineer.");
    }

    private static Line mulch(FarmEntries entries, ScheduleBuilder s, House house, Line top) {
        Line lap = entries.add(s.entry("mulch_lap", "Mulch film, lap over each side", MILLIMETRE)
                .from(0, 1000));
        Line stock = entries.add(s.entry("mulch_stock_width", "Mulch film, width as sold", MILLIMETRE)
                .above(0, 20_000));
        Line cut = s.line(
                "mulch_width",
                "Mulch film, width of a strip",
                MILLIMETRE,
                top.plus(number(2, ONE).times(lap)),
                "top width and a lap on each side");
        Line strips = s.line(
                "mulch_strips",
                "Mulch film, strips from one width",
                ONE,
                when(cut.isPositive(), greater(stock.over(cut).wholeDown(), one()), one()),
                "whole strips; a strip wider than the stock takes one whole width and is to be pieced");
        s.warning(
                "mulch_width_warning",
                "Mulch film against its width as sold",
                cut.exceeds(stock),
                "A strip of mulch (mulch_width) is wider than the film as sold (mulch_stock_width), so one width does not cover "
                        + "the trough and its laps, and less film is counted than is needed. Enter a wider film or lower mulch_lap.");
        return s.line("mulch_metres", "Mulch film, metres as sold", METRE, house.benchMetres.over(strips));
    }
}
