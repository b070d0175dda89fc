package org.benchmetre.farm.layout;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.farm.input.TradeUnits.BENCH;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.SQUARE_METRE;
import static org.benchmetre.farm.input.TradeUnits.ZONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * House and benches: how many, how long, how much floor. Bench metres are count times length; the floor is length times width.
 * A bench is a row of whatever carries plants; a row of hanging pots has no width. Plain geometry.
 */
public final class House {

    private static final double MOST_UNDER_BENCHES = 0.7;

    /** Number of benches. */
    public final Line benchCount;
    /** Length of one bench, m. */
    public final Line benchLength;
    /** Length of one bench between its margins, m; 0 where it is shorter than they are. */
    public final Line benchRoom;
    /** Length of one bench that its two margins take, m. */
    public final Line benchMargins;
    /** All benches end to end, m. */
    public final Line benchMetres;
    /** Length of the house, m. */
    public final Line length;
    /** Width of the house, m. */
    public final Line width;
    /** Floor of the house, m2. */
    public final Line houseArea;
    /** All round the house, m. */
    public final Line perimeter;
    /** Zones watered one after the other. */
    public final Line zoneCount;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     */
    public House(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "House and benches");
        benchCount = entries.add(
                s.entry("bench_count", "Benches", BENCH).from(1, 10_000).whole());
        benchLength = entries.add(
                s.entry("bench_length", "Length of one bench", METRE).above(0, 500));
        Line margin = entries.add(s.entry("end_margin", "Free length at each end of a bench", METRE)
                .from(0, 5));
        Line benchWidth =
                entries.add(s.entry("bench_width", "Width of one bench", METRE).from(0, 10));
        length = entries.add(
                s.entry("house_length", "Length of the house", METRE).above(0, 2000));
        width = entries.add(s.entry("house_width", "Width of the house", METRE).above(0, 1000));
        zoneCount = entries.add(s.entry("zone_count", "Zones watered one after the other", ZONE)
                .from(1, 1000)
                .whole());
        benchMargins = s.line(
                "bench_margins",
                "Length of a bench that its margins take",
                METRE,
                number(2, ONE).times(margin),
                "a margin at each end");
        benchRoom = s.line(
                "bench_room",
                "Length of a bench between its margins",
                METRE,
                greater(benchLength.minus(benchMargins), none(METRE)),
                "a margin at each end");
        benchMetres = s.line(
                "bench_metres", "Bench metres", METRE, benchCount.counting(ONE).times(benchLength));
        houseArea = s.line("house_area", "Floor of the house", SQUARE_METRE, length.times(width));
        perimeter = s.line(
                "house_perimeter",
                "Round the house",
                METRE,
                number(2, ONE).times(length.plus(width)),
                "plain geometry: both sides and both ends");
        Line share = s.line(
                "bench_floor_share",
                "Share of the floor under benches",
                ONE,
                benchMetres.times(benchWidth).over(houseArea),
                "bench metres times bench width over floor area");
        Line most = s.line(
                "bench_floor_share_most",
                "Most of the floor under benches that leaves aisles",
                ONE,
                number(MOST_UNDER_BENCHES, ONE),
                COMMON);
        s.warning(
                "bench_fit_warning",
                "Benches in the house",
                or(benchLength.exceeds(greater(length, width)), share.exceeds(most)),
                "The benches do not fit: one is longer than the house, or they leave too little floor for aisles. Check "
                        + "bench_length, bench_count, house_length and house_width.");
    }
}
