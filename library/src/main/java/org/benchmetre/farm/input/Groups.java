package org.benchmetre.farm.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.benchmetre.budget.entry.Folding;

/**
 * Groups that rows of a table are gathered by. A scenario names them; they are told apart and summed by their keys.
 *
 * @param names in order of first use, the group of all other rows last
 * @param keys lower snake case, one for each name
 */
public record Groups(List<String> names, List<String> keys) {

    /** Keeps its own copies. */
    public Groups {
        names = List.copyOf(names);
        keys = List.copyOf(keys);
    }

    /**
     * Groups by their names.
     *
     * @param used names as a scenario uses them, in order of first use
     * @param fixed names that are groups whether or not a row names them, the group of all other rows last
     * @return the groups; of names that readers take for one, the first counts
     */
    public static Groups of(List<String> used, String... fixed) {
        List<String> all = new ArrayList<>();
        used.forEach(name -> addTo(all, name));
        List.of(fixed).forEach(name -> addTo(all, name));
        String other = fixed[fixed.length - 1];
        all.removeIf(name -> Folding.folded(name).equals(Folding.folded(other)));
        all.add(other);
        return new Groups(all, keysOf(all));
    }

    private static void addTo(List<String> all, String name) {
        boolean known = all.stream().anyMatch(each -> Folding.folded(each).equals(Folding.folded(name)));
        if (!known) {
            all.add(name);
        }
    }

    /**
     * Names as keys of an axis.
     *
     * @param names any words
     * @return lower snake case; where two would be the same, the later one takes its number in the list
     */
    public static List<String> keysOf(List<String> names) {
        List<String> keys = new ArrayList<>();
        for (String name : names) {
            String key =
                    name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_+|_+$", "");
            boolean usable = !key.isEmpty() && !keys.contains(key);
            keys.add(usable ? key : (key.isEmpty() ? "group" : key) + "_" + (keys.size() + 1));
        }
        return keys;
    }

    /**
     * The key of the group of all other rows.
     *
     * @return the last key
     */
    public String otherKey() {
        return keys.get(keys.size() - 1);
    }

    /**
     * The key of a group.
     *
     * @param name one of the names, or one that readers take for it
     * @return its key
     */
    public String key(String name) {
        List<String> folded = names.stream().map(Folding::folded).toList();
        return keys.get(folded.indexOf(Folding.folded(name)));
    }
}
