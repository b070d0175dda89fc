package org.benchmetre.budget.entry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Finds the names that someone may have meant.
 *
 * <p>Distance is the number of letters to insert, leave out, replace or swap with their neighbour (Damerau 1964, in the
 * form that edits no letter twice). Names further away than a third of the text's length, and at least two, are not
 * near. Where none is, the names that hold every word of the text count as near.
 */
public final class NearNames {

    private static final int LONGEST = 200;
    private static final int SHORTEST_WORD = 3;
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

    /** A name and how far it is. */
    private record Near(String name, int distance) {}

    private NearNames() {}

    /**
     * The names nearest to a text, ignoring case and spaces at its ends.
     *
     * @param text what was written
     * @param candidates the names that exist
     * @param limit how many names to give at most
     * @return the near ones, nearest first, equally near ones in alphabetical order; else those that hold all its words,
     *     the shortest first; may be empty
     */
    public static List<String> nearest(String text, Collection<String> candidates, int limit) {
        String wanted = folded(text);
        if (wanted.isEmpty() || wanted.length() > LONGEST) {
            return List.of();
        }
        Set<String> names = new TreeSet<>(candidates);
        List<Near> near = bySpelling(wanted, names);
        if (near.isEmpty()) {
            near = byWords(wanted, names);
        }
        return near.stream()
                .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
                .limit(limit)
                .map(Near::name)
                .toList();
    }

    /**
     * The nearest names as a question.
     *
     * @param text what was written
     * @param candidates the names that exist
     * @return for example {@code did you mean price?}, with up to three names; empty when none is near
     */
    public static String didYouMean(String text, Collection<String> candidates) {
        List<String> near = nearest(text, candidates, 3);
        return near.isEmpty() ? "" : "did you mean " + joined(near) + "?";
    }

    private static List<Near> bySpelling(String wanted, Set<String> names) {
        int reach = Math.max(2, wanted.length() / 3);
        List<Near> near = new ArrayList<>();
        for (String name : names) {
            String folded = folded(name);
            int distance = distance(wanted, folded, reach);
            if (distance <= reach && distance < Math.max(wanted.length(), folded.length())) {
                near.add(new Near(name, distance));
            }
        }
        return near;
    }

    /** Names that hold every word of the text; how much longer they are is how far. */
    private static List<Near> byWords(String wanted, Set<String> names) {
        List<String> words = Arrays.stream(BETWEEN_WORDS.split(wanted))
                .filter(word -> word.length() >= SHORTEST_WORD)
                .toList();
        if (words.isEmpty()) {
            return List.of();
        }
        return names.stream()
                .filter(name -> words.stream().allMatch(folded(name)::contains))
                .map(name -> new Near(name, name.length()))
                .toList();
    }

    /** The distance of two texts; any number above the reach when they are further apart than that. */
    static int distance(String a, String b, int reach) {
        if (Math.abs(a.length() - b.length()) > reach) {
            return reach + 1;
        }
        Edits edits = new Edits(a, b);
        for (int i = 1; i <= a.length(); i++) {
            int least = edits.row(i, reach);
            if (least > reach) {
                return least;
            }
        }
        return edits.last[b.length()];
    }

    /** The table of distances of all beginnings of two texts, of which the last rows are kept. */
    private static final class Edits {

        private final String a;
        private final String b;
        private int[] beforeLast;
        private int[] last;
        private int[] now;

        private Edits(String a, String b) {
            this.a = a;
            this.b = b;
            beforeLast = new int[b.length() + 1];
            last = new int[b.length() + 1];
            now = new int[b.length() + 1];
            Arrays.setAll(last, j -> j);
        }

        /** Fills the row of the first i letters, as far as the reach goes, and gives the least of it. */
        private int row(int i, int reach) {
            Arrays.fill(now, reach + 1);
            now[0] = i;
            int least = i;
            int end = Math.min(b.length(), i + reach);
            for (int j = Math.max(1, i - reach); j <= end; j++) {
                now[j] = least(i, j);
                least = Math.min(least, now[j]);
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = now;
            now = spare;
            return least;
        }

        private int least(int i, int j) {
            int replaced = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
            int least = Math.min(replaced, 1 + Math.min(last[j], now[j - 1]));
            boolean swapped =
                    i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
            return swapped ? Math.min(least, beforeLast[j - 2] + 1) : least;
        }
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private static String joined(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }
}
