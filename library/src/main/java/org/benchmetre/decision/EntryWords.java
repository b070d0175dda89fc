package org.benchmetre.decision;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
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
    private static final String MORE = " ...";

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
     * Where the value of each entry comes from, in so many letters at most; what is said of the range is left out.
     *
     * @param entries single entries
     * @param most letters
     */
    public record Sources(List<Line> entries, int most) implements Search {

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
            return entries.stream()
                    .map(line -> source(budget, line))
                    .map(source -> Solved.none(source.isBlank() ? UNSAID : cut(EvidenceKind.ofValue(source))))
                    .toList();
        }

        private String cut(String words) {
            return words.length() <= most
                    ? words
                    : words.substring(0, words.lastIndexOf(' ', most - MORE.length())) + MORE;
        }
    }

    private static String source(Budget budget, Line line) {
        return budget.entry(line).orElseThrow().sourceOf(budget.given(line).get(0));
    }

    /**
     * Entries whose evidence is asked for. What multiplies other entries, such as the level of all wages, rests on the weakest of them.
     *
     * @param entries single entries
     * @param behind for the name of an entry those of what it multiplies; the first of them that has values counts
     */
    public record Asked(List<Line> entries, Map<String, List<String>> behind) implements Serializable {

        /** Keeps its own copies. */
        public Asked {
            entries = List.copyOf(entries);
            behind = Map.copyOf(behind);
        }

        List<EvidenceKind> kinds(Budget budget) {
            return entries.stream()
                    .map(line -> behind.getOrDefault(line.id(), List.of()).stream()
                            .flatMap(id -> budget.find(id).stream())
                            .flatMap(other -> weakest(budget, other).stream())
                            .findFirst()
                            .orElseGet(() -> weakest(budget, line).orElse(EvidenceKind.UNSAID)))
                    .toList();
        }

        private static Optional<EvidenceKind> weakest(Budget budget, Line line) {
            Entry entry = budget.entry(line).orElseThrow();
            return EvidenceKind.weakest(
                    budget.given(line).stream().filter(Given::filled).map(entry::evidence));
        }
    }

    /**
     * How far each can be trusted.
     *
     * @param asked the entries
     */
    public record Kinds(Asked asked) implements Search {

        @Override
        public List<Line> reads() {
            return asked.entries();
        }

        @Override
        public List<Solved> find(Budget budget) {
            return asked.kinds(budget).stream()
                    .map(kind -> Solved.none(kind.label()))
                    .toList();
        }
    }

    /**
     * How many of them rest on some kinds of evidence.
     *
     * @param asked the entries
     * @param kinds which ones count
     */
    public record Counted(Asked asked, Set<EvidenceKind> kinds) implements Search {

        /** Keeps its own copy. */
        public Counted {
            kinds = Set.copyOf(kinds);
        }

        @Override
        public List<Line> reads() {
            return asked.entries();
        }

        @Override
        public List<Solved> find(Budget budget) {
            return List.of(Solved.number(
                    asked.kinds(budget).stream().filter(kinds::contains).count()));
        }
    }
}
