package org.benchmetre.decision;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Search;
import org.benchmetre.budget.Solved;

/** What figures at both ends of the usual ranges of entries say. All searches over the same ends run them once. */
public final class EndSearch {

    /**
     * A figure that may stand for nothing, such as a coverage where no debt is due.
     *
     * @param line a single figure among those of the ends
     * @param least from this value on it stands for nothing, in the unit of the line
     * @param reason a few words in its place
     */
    public record Figure(Line line, double least, String reason) implements java.io.Serializable {

        /**
         * A figure that always counts.
         *
         * @param line a single figure
         * @return the figure
         */
        public static Figure of(Line line) {
            return new Figure(line, Double.POSITIVE_INFINITY, "none");
        }

        boolean counts(double value) {
            return value < least && Double.isFinite(value);
        }
    }

    private EndSearch() {}

    /** Changes of one figure, by entry. */
    private record Changes(RangeEnds ends, RangeEnds.Found found, Figure figure) {

        static Changes of(RangeEnds ends, Budget budget, Figure figure) {
            return new Changes(ends, ends.in(budget), figure);
        }

        private int row() {
            return ends.figures().indexOf(figure.line());
        }

        Solved change(int entry, boolean isHigh) {
            double now = found.now(row());
            double then = found.atEnd(row(), entry, isHigh);
            return figure.counts(now) && figure.counts(then) ? Solved.number(then - now) : Solved.none(figure.reason());
        }

        /** The larger of both changes, without its sign. */
        double size(int entry) {
            return Stream.of(change(entry, false), change(entry, true))
                    .filter(Solved::hasNumber)
                    .mapToDouble(each -> Math.abs(each.number()))
                    .max()
                    .orElse(0);
        }

        double largest() {
            return IntStream.range(0, ends.entries().size())
                    .mapToDouble(this::size)
                    .max()
                    .orElse(0);
        }
    }

    /**
     * By how much a figure changes when each entry alone stands at an end of its range.
     *
     * @param ends entries and their ends
     * @param figure the figure
     * @param isHigh the high end, else the low one
     */
    public record Change(RangeEnds ends, Figure figure, boolean isHigh) implements Search {

        @Override
        public List<Line> reads() {
            return ends.reads();
        }

        @Override
        public List<Solved> find(Budget budget) {
            Changes changes = Changes.of(ends, budget, figure);
            return IntStream.range(0, ends.entries().size())
                    .mapToObj(entry -> changes.change(entry, isHigh))
                    .toList();
        }
    }

    /**
     * How much hangs on each entry: the larger of its changes of some figures, each as a share of the largest change of that figure; 0 to
     * 1.
     *
     * @param ends entries and their ends
     * @param figures what counts
     */
    public record Weight(RangeEnds ends, List<Figure> figures) implements Search {

        /** Keeps its own copy. */
        public Weight {
            figures = List.copyOf(figures);
        }

        @Override
        public List<Line> reads() {
            return ends.reads();
        }

        @Override
        public List<Solved> find(Budget budget) {
            List<Changes> all = figures.stream()
                    .map(figure -> Changes.of(ends, budget, figure))
                    .toList();
            return IntStream.range(0, ends.entries().size())
                    .mapToObj(entry -> Solved.number(all.stream()
                            .mapToDouble(changes -> changes.largest() > 0 ? changes.size(entry) / changes.largest() : 0)
                            .max()
                            .orElse(0)))
                    .toList();
        }
    }

    /**
     * The largest change of a figure.
     *
     * @param ends entries and their ends
     * @param figure the figure
     */
    public record Largest(RangeEnds ends, Figure figure) implements Search {

        @Override
        public List<Line> reads() {
            return ends.reads();
        }

        @Override
        public List<Solved> find(Budget budget) {
            return List.of(Solved.number(Changes.of(ends, budget, figure).largest()));
        }
    }

    /**
     * The name of the entry that changes a figure most.
     *
     * @param ends entries and their ends
     * @param figure the figure
     * @param names what each entry is called, in their order
     */
    public record Foremost(RangeEnds ends, Figure figure, List<String> names) implements Search {

        /** Keeps its own copy. */
        public Foremost {
            names = List.copyOf(names);
        }

        @Override
        public List<Line> reads() {
            return ends.reads();
        }

        @Override
        public List<Solved> find(Budget budget) {
            Changes changes = Changes.of(ends, budget, figure);
            ToDoubleFunction<Integer> size = changes::size;
            int first = IntStream.range(0, names.size())
                    .boxed()
                    .max(Comparator.comparingDouble(size).thenComparing(Comparator.reverseOrder()))
                    .orElseThrow();
            return List.of(Solved.none(names.get(first)));
        }
    }
}
