package org.benchmetre.decision;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Search;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.entry.EvidenceKind;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;

/** What is known of single entries beside their values, as it was when the searches ran. */
public final class EntryWords {

    private static final String UNSAID = "none said";

    private EntryWords() {}

    /**
     * How a number is told.
     *
     * @param factor what the number in the unit of its line is multiplied with
     * @param decimals how many are shown
     * @param unit words behind it, or the empty text
     */
    public record Told(double factor, int decimals, String unit) implements Serializable {

        String ends(double low, double high) {
            return number(low) + " to " + number(high) + (unit.isEmpty() ? "" : " " + unit);
        }

        private String number(double value) {
            return String.format(Locale.ROOT, "%,." + decimals + "f", value * factor + 0.0);
        }
    }

    /**
     * Both ends of each range.
     *
     * @param ends entries and their ends
     * @param told how each is told
     */
    public record Ranges(RangeEnds ends, List<Told> told) implements Search {

        /** Keeps its own copy. */
        public Ranges {
            told = List.copyOf(told);
        }

        @Override
        public List<Line> reads() {
            return ends.entries();
        }

        @Override
        public List<Solved> find(Budget budget) {
            return IntStream.range(0, told.size())
                    .mapToObj(row -> {
                        Plausible range = ends.ends(budget, ends.entries().get(row));
                        return Solved.none(told.get(row).ends(range.low(), range.high()));
                    })
                    .toList();
        }
    }

    /**
     * Where the value of each entry comes from.
     *
     * @param entries single entries
     */
    public record Sources(List<Line> entries) implements Search {

        /** Keeps its own copy. */
        public Sources {
            entries = List.copyOf(entries);
        }

        @Override
        public List<Line> reads() {
            return entries;
        }

        @Override
        public List<Solved> find(Budget budget) {
            return all(budget, entries, Entry::sourceOf)
                    .map(source -> Solved.none(source.isBlank() ? UNSAID : source))
                    .toList();
        }
    }

    /**
     * How far each can be trusted.
     *
     * @param entries single entries
     */
    public record Kinds(List<Line> entries) implements Search {

        /** Keeps its own copy. */
        public Kinds {
            entries = List.copyOf(entries);
        }

        @Override
        public List<Line> reads() {
            return entries;
        }

        @Override
        public List<Solved> find(Budget budget) {
            return all(budget, entries, Entry::evidence)
                    .map(kind -> Solved.none(kind.label()))
                    .toList();
        }
    }

    /**
     * How many of them rest on some kinds of evidence.
     *
     * @param entries single entries
     * @param kinds which ones count
     */
    public record Counted(List<Line> entries, Set<EvidenceKind> kinds) implements Search {

        /** Keeps its own copies. */
        public Counted {
            entries = List.copyOf(entries);
            kinds = Set.copyOf(kinds);
        }

        @Override
        public List<Line> reads() {
            return entries;
        }

        @Override
        public List<Solved> find(Budget budget) {
            return List.of(Solved.number(all(budget, entries, Entry::evidence)
                    .filter(kinds::contains)
                    .count()));
        }
    }

    private static <T> Stream<T> all(Budget budget, List<Line> entries, BiFunction<Entry, Given, T> told) {
        return entries.stream()
                .map(line -> told.apply(
                        budget.entry(line).orElseThrow(), budget.given(line).get(0)));
    }
}
