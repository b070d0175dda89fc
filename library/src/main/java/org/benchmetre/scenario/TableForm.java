package org.benchmetre.scenario;

import java.util.List;
import java.util.Optional;

/**
 * How a table is kept: what names its rows, which columns it cannot do without, how many rows it may have.
 *
 * @param file the file, which is the table's name
 * @param key how rows are named
 * @param needed columns without which the table means nothing
 * @param most rows it may have; each is worked out in every table that runs along it
 * @param group the column of groups, if it has one
 * @param run the run of periods whose length its rows decide, if it has one
 */
public record TableForm(
        String file, Key key, List<String> needed, int most, Optional<GroupColumn> group, Optional<RunLength> run) {

    /**
     * How rows are named.
     *
     * @param column holds the key
     * @param count a second column that takes part, a number; empty when the first names the row alone
     * @param joint the word between the two
     * @param allowed the only keys there are; empty when a scenario makes its own
     */
    public record Key(String column, String count, String joint, List<String> allowed) {}

    /** Keeps its own copy. */
    public TableForm {
        needed = List.copyOf(needed);
    }

    /**
     * A table whose rows are named by one column.
     *
     * @param file the file
     * @param key the column of keys
     * @param needed columns without which it means nothing
     * @param most rows it may have
     * @return the form
     */
    public static TableForm of(String file, String key, List<String> needed, int most) {
        return new TableForm(file, new Key(key, "", "", List.of()), needed, most, Optional.empty(), Optional.empty());
    }

    /**
     * A table whose rows are known by themselves, such as the months; a scenario may leave some out.
     *
     * @param file the file
     * @param key the column of keys
     * @param allowed all keys there are
     * @return the form
     */
    public static TableForm fixed(String file, String key, List<String> allowed) {
        return new TableForm(
                file, new Key(key, "", "", allowed), List.of(key), allowed.size(), Optional.empty(), Optional.empty());
    }

    /**
     * The same with a column of groups.
     *
     * @param column whose texts are names of groups
     * @return the form
     */
    public TableForm groupedBy(GroupColumn column) {
        return new TableForm(file, key, needed, most, Optional.of(column), run);
    }

    /**
     * The same with a number as the second part of the key, as in {@code tray_plant_from_1000}.
     *
     * @param column the column of the number
     * @param joint the word between the two
     * @return the form
     */
    public TableForm countedBy(String column, String joint) {
        return new TableForm(file, new Key(key.column(), column, joint, List.of()), needed, most, group, run);
    }

    /**
     * The same with a run of periods whose length its rows decide.
     *
     * @param length how long it is
     * @return the form
     */
    public TableForm running(RunLength length) {
        return new TableForm(file, key, needed, most, group, Optional.of(length));
    }

    /**
     * The name under which the structure keeps the groups of a table.
     *
     * @param file the table
     * @return a name that no file has
     */
    public static String groupsOf(String file) {
        return file + " groups";
    }

    /**
     * The name under which the structure keeps the run of periods of a table.
     *
     * @param file the table
     * @return a name that no file has
     */
    public static String lengthOf(String file) {
        return file + " length";
    }
}
