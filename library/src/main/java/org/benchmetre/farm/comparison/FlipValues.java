package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.decision.NearestMeetings;
import org.benchmetre.decision.Sought;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * The value of each doubtful entry at which the system recommended and another ranked way cost the same; of all of them the one nearest
 * to the entry. Where cost is a straight line in the entry, two lines meet at
 *
 * <pre>value = entry + (cost of the other - cost of the first) / (slope of the first - slope of the other)</pre>
 *
 * <p>which is plain algebra and live. For other entries a search finds the value.
 */
final class FlipValues {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final String NEAREST = "nearest";

    /** How far from the entry, as a factor, a value is still looked for. */
    private static final double FAR = 100;

    private static final String LOOKED_AT =
            "from a hundredth of the entry or its usual range to a hundred times, inside its bounds; our choice";

    /** Key of the way it flips to, by entry; empty where no value flips the answer. */
    final Line to;
    /** The value, by entry; 0 where no value flips the answer. */
    final Line at;
    /** The value at which each way costs as much as the first, or one outside what is looked at, by entry and way. */
    final Line wayAt;

    private final List<Doubtful> entries;
    private final Axis axis;
    private final Line current;
    private final Line least;
    private final Line most;
    private final Ranking rank;

    FlipValues(BudgetBuilder b, Ranking rank, List<Doubtful> entries, Line current, Line high, Line low) {
        this.entries = entries;
        this.axis = current.axes().get(0);
        this.current = current;
        this.rank = rank;
        ScheduleBuilder range = b.shared(Sheets.IRRIGATION, Tables.FLIP_WORKINGS);
        Line far = range.line(
                "flip_far",
                "A hundred times entry or high end",
                ONE,
                number(FAR, ONE).times(greater(current, high)),
                "a hundredfold either way of the entry and its plausible range: common practice, no source");
        most = range.line(
                "flip_most",
                "Greatest value looked at",
                ONE,
                rows(d -> lesserOf(far, d.values().bounds().most())),
                LOOKED_AT);
        Formula lowest = lesser(positive(current, far), positive(low, far)).over(number(FAR, ONE));
        least = range.line(
                "flip_least",
                "Least value looked at",
                ONE,
                rows(d -> greaterOf(lowest, d.values().bounds().least())),
                LOOKED_AT);
        Line outside = range.line(
                "flip_outside",
                "Stands for no value",
                ONE,
                most.times(number(2, ONE)).plus(one()),
                "above whatever is looked at; our choice");

        ScheduleBuilder blocks = b.schedule(Sheets.IRRIGATION, "Flip values by entry and irrigation system");
        wayAt = meets(b, blocks, outside);
        Formula apart = Sizes.of(wayAt.minus(current));
        Formula inside =
                and(not(least.minus(wayAt).isPositive()), not(wayAt.minus(most).isPositive()), rank.rival.isPositive());
        Line distance =
                blocks.line("flip_way_distance", "How far that is from the entry", ONE, when(inside, apart, outside));
        Line nearest = b.shared(Sheets.IRRIGATION, Tables.FLIP_WORKINGS)
                .line("flip_nearest", "Distance of the nearest", ONE, least(distance, rank.ways.axis));
        Formula found = outside.minus(nearest).isPositive();
        Line mark = blocks.textLine(
                "flip_way_nearest",
                "Nearest",
                when(
                        distance.minus(nearest).isPositive(),
                        text(""),
                        when(rank.rival.isPositive(), text(NEAREST), text(""))));
        ScheduleBuilder result = b.shared(Sheets.IRRIGATION, Tables.FLIP_WORKINGS);
        to = result.textLine(
                "flip_to_way",
                "Flips to, by its key",
                when(found, lookup(rank.ways.key, mark, text(NEAREST)), text("")));
        at = result.line(
                "flip_at", "Value, 0 for none", ONE, when(to.isFilled(), lookup(wayAt, rank.ways.key, to), none(ONE)));
    }

    /** The value at which each way costs as much as the first, or one outside what is looked at: a block of entries and ways. */
    private Line meets(BudgetBuilder b, ScheduleBuilder blocks, Line outside) {
        Line dearer = b.shared(Sheets.IRRIGATION, Tables.RANKING)
                .line(
                        "way_dearer_by",
                        "More than the first",
                        PER_METRE,
                        when(rank.rival.isPositive(), rank.yearly.minus(rank.bestCost), none(PER_METRE)));
        Line slope = blocks.line(
                "flip_way_slope", "Yearly cost per metre for one unit of the entry", PER_METRE, rows(this::slope));
        Line ofFirst = b.shared(Sheets.IRRIGATION, Tables.FLIP_WORKINGS)
                .line("flip_first_slope", "Slope of the first", PER_METRE, lookup(slope, rank.ways.key, rank.best));
        Formula moves = Sizes.isMore(Sizes.of(ofFirst.minus(slope)).times(most).plus(rank.bestCost), rank.bestCost);
        Line closing = blocks.line(
                "flip_way_closing",
                "What one unit of the entry closes of the difference",
                PER_METRE,
                when(
                        and(Sizes.matters(ofFirst.minus(slope).times(most), rank.bestCost), rank.rival.isPositive()),
                        ofFirst.minus(slope),
                        none(PER_METRE)),
                Sizes.SOURCE);
        Line found = blocks.solved(
                "flip_way_found",
                "Found by a search",
                ONE,
                "the value nearest to the entry at which both systems cost the same; only where cost is no straight line",
                search(),
                axis,
                rank.ways.axis);
        Formula straight = when(Sizes.of(closing).isPositive(), current.plus(dearer.over(closing)), outside);
        Formula searched = found.numberOr(outside);
        return blocks.line(
                "flip_way_at",
                "Value at which the system costs as much as the first, or one outside",
                ONE,
                rows(d -> d.meeting() instanceof Doubtful.Straight ? straight : searched),
                "two straight lines meet at entry + difference / difference of slopes: plain algebra; else by a search");
    }

    private Formula slope(Doubtful entry) {
        return entry.meeting() instanceof Doubtful.Straight straight ? straight.slope() : none(PER_METRE);
    }

    private NearestMeetings search() {
        Map<Integer, Sought> sought = new HashMap<>();
        for (int row = 0; row < entries.size(); row++) {
            if (entries.get(row).meeting() instanceof Doubtful.Searched searched) {
                sought.put(row, searched.entry());
            }
        }
        return new NearestMeetings(
                sought,
                new NearestMeetings.Span(least, most),
                new NearestMeetings.Options(rank.ways.key, rank.yearly, rank.rival, rank.best));
    }

    private static Formula positive(Line value, Line otherwise) {
        return when(value.isPositive(), value, otherwise);
    }

    private static Formula lesserOf(Formula value, double bound) {
        return Double.isFinite(bound) ? lesser(value, number(bound, ONE)) : value;
    }

    private static Formula greaterOf(Formula value, double bound) {
        return Double.isFinite(bound) ? greater(value, number(bound, ONE)) : value;
    }

    private Formula rows(Function<Doubtful, Formula> formula) {
        return new Rows(axis, entries.stream().map(formula).toList());
    }
}
