package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Outlets that fail, and the chance that a plant has none left.
 *
 * <pre>
 * f = 1 - (1 - p)^t
 * f  share of outlets that have failed after the time t      p  share that fails in a year, 1/a
 * t  a: the time between checks where failed outlets are replaced at the next check, the life of the line where they stay
 * </pre>
 *
 * Exact arithmetic of chances. What is left to a plant then: {@link NoOutletLeft}.
 */
public final class FailedOutlets {

    /** Failed outlets are replaced at the next check. */
    static final String AT_CHECK = "check";
    /** Failed outlets stay as long as the line. */
    static final String FOR_LIFE = "life";

    private static final Unit YEAR = Unit.parse("a");
    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Bounds YEARLY_SHARE = new Bounds(0, true, 0.95, false);

    /**
     * The parts, one of which carries the outlets of a way.
     *
     * @param key their keys, a text
     * @param lifeYears their lives, in years
     * @param unitCost their delivered price, a unit of the part
     */
    public record Parts(Line key, Line lifeYears, Line unitCost) {}

    /** Time between checks, in months. */
    public final Line checkInterval;
    /** Key of the part that carries the outlets, by way. */
    public final Line outletItem;
    /** How many parts have that key, by way. */
    public final Line itemsFound;
    /** Share of outlets failing in a year, 1/a, by way. */
    public final Line failedPerYear;
    /** Low end of that share, 0 where it is not given, 1/a. */
    public final Line failedLow;
    /** High end of that share, 0 where it is not given, 1/a. */
    public final Line failedHigh;
    /** {@code check} or {@code life}, by way. */
    public final Line repair;
    /** Years over which failures add up, by way. */
    public final Line years;
    /** Share of outlets that have failed after that time, by way. */
    public final Line failedAtEnd;
    /** Chance that a plant has no working outlet left after that time, by way. */
    public final Line noOutletLeft;
    /** Whole outlets that a plant lives on, by way. */
    final Line livesOn;

    /** The parts that may carry outlets. */
    final Parts parts;

    private final Ways ways;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param ways irrigation systems
     * @param parts what carries the outlets
     * @param inReach fewest outlets in reach of a plant, by way, in outlets a plant
     */
    public FailedOutlets(BudgetBuilder b, FarmEntries entries, Ways ways, Parts parts, Line inReach) {
        this.ways = ways;
        this.parts = parts;
        checkInterval = entries.add(b.schedule(Sheets.IRRIGATION, "Checks of the outlets")
                .entry("check_interval", "Time from one check of all outlets to the next", Unit.parse("mo"))
                .above(0, 240));

        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.FAILING);
        s.note(
                "Failed outlets are replaced at the next check, or stay for the life of the line. Common causes, such as a "
                        + "filter that lets go, take every outlet of a plant at once.");
        Columns c = ways.columns.in(s);
        outletItem = c.keyList(
                "outlet_item",
                "way_outlet_item",
                "Part that carries the outlets",
                parts.key().id());
        failedPerYear = c.numbers(
                "failed_per_year",
                "way_failed_per_year",
                "Outlets failing in a year, share",
                PER_YEAR,
                YEARLY_SHARE,
                0);
        failedLow = c.numbers("failed_low", "way_failed_low", "Failing in a year, low", PER_YEAR, YEARLY_SHARE, 0);
        failedHigh = c.numbers("failed_high", "way_failed_high", "Failing in a year, high", PER_YEAR, YEARLY_SHARE, 0);
        Line common = c.numbers(
                "common_cause",
                "way_common_cause",
                "Failures of common cause, share",
                ONE,
                new Bounds(0, true, 1, false),
                0);
        repair = c.choice("repair", "way_repair", "Failed outlets are replaced", List.of(AT_CHECK, FOR_LIFE), AT_CHECK);
        b.range(failedPerYear, failedLow, failedHigh);

        itemsFound = s.line(
                "way_outlet_items_found",
                "Parts with that key",
                ONE,
                when(outletItem.isFilled(), countWhere(parts.key(), outletItem, axisOf(parts.key())), none(ONE)));
        years = s.line(
                "way_failing_years",
                "Time over which failures add up",
                YEAR,
                ways.whereFilled(when(repair.is(FOR_LIFE), life(parts), checkInterval.in(YEAR))),
                "one year where the part is not known");
        Formula working = one().minus(failedPerYear.counting(ONE));
        failedAtEnd = s.line(
                "way_failed_at_end",
                "Failed by then, share",
                ONE,
                ways.whereFilled(one().minus(working.power(years.counting(ONE)))),
                "1 - (1 - share failing in a year)^years, chances multiplied");
        NoOutletLeft left = new NoOutletLeft(s, ways, failedAtEnd, common, inReach);
        livesOn = left.livesOn;
        noOutletLeft = left.chance;
        warn(s);
    }

    private static Axis axisOf(Line keys) {
        return keys.axes().get(0);
    }

    private Formula life(Parts parts) {
        return when(itemsFound.isPositive(), lookup(parts.lifeYears(), parts.key(), outletItem), number(1, YEAR));
    }

    private void warn(ScheduleBuilder s) {
        s.warning(
                "way_outlet_item_warning",
                "Part of the outlets",
                and(ways.key.isFilled(), not(itemsFound.isPositive())),
                "No single part carries the outlets of this system, so a life of one year and no price of a new outlet are "
                        + "counted: write the key of that part in outlet_item.");
        s.warning(
                "way_failed_warning",
                "Failing outlets",
                and(ways.key.isFilled(), not(failedPerYear.isPositive())),
                "No outlet of this system is counted as failing: write the share that fails in a year in failed_per_year.");
    }
}
