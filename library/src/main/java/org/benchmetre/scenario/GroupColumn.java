package org.benchmetre.scenario;

import java.util.List;

/**
 * A column whose texts are the names of groups, which are part of the structure.
 *
 * @param column its name
 * @param reserved names that no row may take
 */
public record GroupColumn(String column, List<String> reserved) {

    /** Keeps its own copy. */
    public GroupColumn {
        reserved = List.copyOf(reserved);
    }
}
