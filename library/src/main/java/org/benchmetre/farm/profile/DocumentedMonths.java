package org.benchmetre.farm.profile;

import java.util.List;

/**
 * What is documented of an entry by month.
 *
 * @param values twelve, in the order of the calendar, in the unit of the line
 * @param source where they come from
 */
public record DocumentedMonths(List<Double> values, String source) {

    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    /** Keeps its own copy. */
    public DocumentedMonths {
        values = List.copyOf(values);
    }

    static DocumentedMonths of(ProfileRow row) {
        return new DocumentedMonths(MONTHS.stream().map(row::number).toList(), row.text("source"));
    }
}
