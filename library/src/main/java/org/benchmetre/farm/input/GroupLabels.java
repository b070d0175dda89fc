package org.benchmetre.farm.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Row;

/** Groups that rows of a table are gathered by: labels as a scenario writes them, in order of first use, and their keys. */
public final class GroupLabels {

    private GroupLabels() {}

    /**
     * The groups a table names.
     *
     * @param rows the rows of the file
     * @param column the column of groups
     * @param other label of the rows without a group, which is not among the groups
     * @return labels in order of first use; the same words in other case are one group
     */
    public static List<String> inOrder(List<Row> rows, String column, String other) {
        return rows.stream()
                .map(row -> row.label(column, other, true, new Faults()))
                .filter(name -> !name.isEmpty() && !name.equalsIgnoreCase(other))
                .collect(Collectors.toMap(
                        name -> name.toLowerCase(Locale.ROOT),
                        name -> name,
                        (first, again) -> first,
                        LinkedHashMap::new))
                .values()
                .stream()
                .toList();
    }

    /**
     * Labels as keys of an axis.
     *
     * @param labels any words
     * @return lower snake case; where two would be the same, the later one takes its number in the list
     */
    public static List<String> keys(List<String> labels) {
        List<String> keys = new ArrayList<>();
        for (String label : labels) {
            String key =
                    label.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_+|_+$", "");
            boolean usable = !key.isEmpty() && !keys.contains(key);
            keys.add(usable ? key : (key.isEmpty() ? "group" : key) + "_" + (keys.size() + 1));
        }
        return keys;
    }
}
