package org.benchmetre.budget;

import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What decides which lines a budget has: the keys of each table in their order, and the names of what rows are gathered by. No value
 * of an entry is in it.
 *
 * @param title the words on top of every sheet
 * @param currency ISO 4217 code of all money
 * @param kind what it is a budget of, such as a crop; empty when that makes no difference
 * @param tables keys by table; a table that is not named has no rows
 * @param choices words by name that decide which lines there are, such as what a table runs over
 */
public record Structure(
        String title, String currency, String kind, Map<String, Keys> tables, Map<String, String> choices)
        implements Serializable {

    /**
     * The rows of one table.
     *
     * @param keys one a row, all different
     * @param names what people call each row, in the same order; empty where the table itself says so
     */
    public record Keys(List<String> keys, List<String> names) implements Serializable {

        /** No rows. */
        public static final Keys NONE = new Keys(List.of(), List.of());

        /** Keeps its own copies. */
        public Keys {
            keys = List.copyOf(keys);
            names = List.copyOf(names);
        }
    }

    /** Keeps its own copies. */
    public Structure {
        tables = new LinkedHashMap<>(tables);
        choices = new LinkedHashMap<>(choices);
    }

    /**
     * A structure in which nothing is chosen.
     *
     * @param title the words on top of every sheet
     * @param currency ISO 4217 code of all money
     * @param kind what it is a budget of
     * @param tables keys by table
     */
    public Structure(String title, String currency, String kind, Map<String, Keys> tables) {
        this(title, currency, kind, tables, Map.of());
    }

    /**
     * The rows of a table.
     *
     * @param table its name
     * @return no rows when the table is not named
     */
    public Keys keys(String table) {
        return tables.getOrDefault(table, Keys.NONE);
    }
}
