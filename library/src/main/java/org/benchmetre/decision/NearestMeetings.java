package org.benchmetre.decision;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Search;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.run.Figures;

/**
 * For some entries, the value nearest to the one entered at which the first of several options and each of its rivals cost the same.
 * It fills a line along the entries and the options, in the unit of each entry.
 *
 * @param sought the entries, by their row; rows without one stay empty
 * @param range which values are looked at, by row
 * @param options what is held against each other
 */
public record NearestMeetings(Map<Integer, Sought> sought, Span range, Options options) implements Search {

    private static final Solved EMPTY = Solved.none("");

    /**
     * The values that are looked at.
     *
     * @param low least value, by row
     * @param high greatest value, by row
     */
    public record Span(Line low, Line high) implements Serializable {}

    /**
     * What is held against each other.
     *
     * @param key key of each option
     * @param cost cost of each option
     * @param rival above zero for each option that is held against the first
     * @param first key of the first, a single text
     */
    public record Options(Line key, Line cost, Line rival, Line first) implements Serializable {}

    /** Keeps its own copy of the entries. */
    public NearestMeetings {
        sought = Map.copyOf(sought);
    }

    @Override
    public List<Line> reads() {
        List<Line> lines = new ArrayList<>(
                List.of(range.low(), range.high(), options.key(), options.cost(), options.rival(), options.first()));
        sought.values()
                .forEach(each -> lines.addAll(List.of(each.keys(), each.name().line())));
        return lines;
    }

    @Override
    public List<Solved> find(Budget budget) {
        Figures figures = Figures.of(budget);
        List<Solved> all = new ArrayList<>();
        for (int row = 0; row < range.low().size(); row++) {
            Sought wanted = sought.get(row);
            Optional<CellRef> entry = wanted == null ? Optional.empty() : wanted.in(figures);
            int at = row;
            all.addAll(entry.map(cell -> meetings(figures, cell, at)).orElseGet(this::nothing));
        }
        return all;
    }

    private List<Solved> nothing() {
        return Collections.nCopies(options.key().size(), EMPTY);
    }

    private List<Solved> meetings(Figures figures, CellRef entry, int row) {
        double low = figures.number(range.low(), row);
        double high = figures.number(range.high(), row);
        Optional<CellRef> first = first(figures);
        if (first.isEmpty() || !(high > low)) {
            return nothing();
        }
        double now = figures.number(entry.line(), entry.cell());
        BreakEven search = BreakEven.of(figures.budget(), entry, Difference.between(first.get(), first.get()));
        return IntStream.range(0, options.key().size())
                .mapToObj(option -> figures.number(options.rival(), option) > 0
                        ? nearest(search.with(against(first.get(), option)), low, high, now)
                        : EMPTY)
                .toList();
    }

    private Optional<CellRef> first(Figures figures) {
        String key = figures.text(options.first(), 0);
        return IntStream.range(0, key.isEmpty() ? 0 : options.key().size())
                .filter(option -> figures.text(options.key(), option).equalsIgnoreCase(key))
                .mapToObj(option -> new CellRef(options.cost(), option))
                .findFirst();
    }

    private Difference against(CellRef first, int option) {
        return Difference.between(first, new CellRef(options.cost(), option));
    }

    private static Solved nearest(BreakEven search, double low, double high, double now) {
        return search.between(low, high).crossings().stream()
                .map(Crossing::first)
                .min(Comparator.comparingDouble(value -> Math.abs(value - now)))
                .map(Solved::number)
                .orElse(Solved.none("none in range"));
    }
}
