package org.benchmetre.budget.entry;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Finds the names that someone may have meant.
 *
 * <p>Distance is the number of letters to insert, leave out, replace or swap with their neighbour (Damerau 1964, in the
 * form that edits no letter twice). Names further away than a third of the text's length, and at least two, are not
 * near.
 */
public final class NearNames {

    private static final int LONGEST = 200;

    private NearNames() {}

    /**
     * The names nearest to a text, ignoring case and spaces at its ends.
     *
     * @param text what was written
     * @param candidates the names that exist
     * @param limit how many names to give at most
     * @return the near ones, nearest first, equally near ones in alphabetical order; may be empty
     */
    public static List<String> nearest(String text, Collection<String> candidates, int limit) {
        String wanted = folded(text);
        int reach = Math.max(2, wanted.length() / 3);
        if (wanted.isEmpty() || wanted.length() > LONGEST) {
            return List.of();
        }
        return candidates.stream()
                .distinct()
                .filter(name -> isNear(wanted, folded(name), reach))
                .sorted(Comparator.comparingInt((String name) -> distance(wanted, folded(name)))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(limit)
                .collect(Collectors.toUnmodifiableList());
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

    private static boolean isNear(String wanted, String name, int reach) {
        if (Math.abs(wanted.length() - name.length()) > reach) {
            return false;
        }
        int distance = distance(wanted, name);
        return distance <= reach && distance < Math.max(wanted.length(), name.length());
    }

    static int distance(String a, String b) {
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                edits[i][j] = i == 0 || j == 0 ? i + j : leastEdits(edits, a, b, i, j);
            }
        }
        return edits[a.length()][b.length()];
    }

    private static int leastEdits(int[][] edits, String a, String b, int i, int j) {
        int replaced = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(replaced, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, edits[i - 2][j - 2] + 1) : least;
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private static String joined(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }
}
