package org.benchmetre.decision;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Ends;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.run.Cases;

/**
 * What figures become when each of some entries alone stands at the low or the high end of its usual range: that which entries beside it
 * hold, else the documented one. An end that nobody knows is a share of the entry as it stands. Ends are kept within what the entry may be.
 *
 * @param entries single entries of numbers
 * @param figures single figures
 * @param low an end that is not known, as a share of the entry
 * @param high the other one
 */
public record RangeEnds(List<Line> entries, List<Line> figures, double low, double high) implements Serializable {

    /** Keeps its own copies. */
    public RangeEnds {
        entries = List.copyOf(entries);
        figures = List.copyOf(figures);
    }

    /** Everything that is looked at. */
    List<Line> reads() {
        return Stream.concat(entries.stream(), figures.stream()).toList();
    }

    /**
     * Both ends of an entry.
     *
     * @param budget as it stands
     * @param entry one of the entries
     * @return low and high in the unit of the entry
     */
    Plausible ends(Budget budget, Line entry) {
        double now = budget.given(entry).get(0).number();
        Plausible known = known(budget, entry);
        double from = Double.isNaN(known.low()) ? now * low : known.low();
        double to = Double.isNaN(known.high()) ? now * high : known.high();
        Bounds bounds = budget.entry(entry).orElseThrow().bounds();
        boolean isRange = Math.max(from, bounds.least()) < Math.min(to, bounds.most());
        Range range = isRange ? Range.within(bounds, from, to) : new Range(now, now, false);
        return new Plausible(range.low(), now, range.high());
    }

    /**
     * The usual range of an entry as it is known; a NaN for an end that nobody knows.
     *
     * @param budget as it stands
     * @param entry one of the entries
     * @return in the unit of the entry
     */
    static Plausible known(Budget budget, Line entry) {
        Optional<Ends> beside = budget.ends(entry);
        return beside.map(ends -> new Plausible(end(budget, ends.low()), Double.NaN, end(budget, ends.high())))
                .orElseGet(() -> budget.range(entry, 0).range());
    }

    private static double end(Budget budget, Line line) {
        Given given = budget.given(line).get(0);
        return given.filled() ? given.number() : Double.NaN;
    }

    /** The figures at all ends, run once for a budget. */
    Found in(Budget budget) {
        return budget.here(Kept.class, Kept::new).all.computeIfAbsent(this, any -> run(budget));
    }

    private Found run(Budget budget) {
        List<CellRef> cut = entries.stream().map(entry -> new CellRef(entry, 0)).toList();
        double[][] inputs = new double[entries.size()][];
        for (int i = 0; i < inputs.length; i++) {
            Plausible ends = ends(budget, entries.get(i));
            inputs[i] = new double[1 + 2 * inputs.length];
            Arrays.fill(inputs[i], ends.typical());
            inputs[i][1 + 2 * i] = ends.low();
            inputs[i][2 + 2 * i] = ends.high();
        }
        List<CellRef> wanted =
                figures.stream().map(figure -> new CellRef(figure, 0)).toList();
        return new Found(Cases.of(budget, cut, figures).start().blocks(inputs, wanted));
    }

    /** What was found in a budget, by what was asked. */
    private static final class Kept {
        private final Map<RangeEnds, Found> all = new ConcurrentHashMap<>();
    }

    /**
     * Figures as they stand and at the ends.
     *
     * @param values by figure: as it stands, then at both ends of each entry
     */
    record Found(double[][] values) {

        double now(int figure) {
            return values[figure][0];
        }

        double atEnd(int figure, int entry, boolean isHigh) {
            return values[figure][1 + 2 * entry + (isHigh ? 1 : 0)];
        }

        /** The larger change of a figure, of either sign; a NaN where either end has no number. */
        double size(int figure, int entry) {
            return Math.max(
                    Math.abs(atEnd(figure, entry, false) - now(figure)),
                    Math.abs(atEnd(figure, entry, true) - now(figure)));
        }
    }
}
