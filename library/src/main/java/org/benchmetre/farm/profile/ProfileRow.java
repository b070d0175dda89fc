package org.benchmetre.farm.profile;

import java.util.Map;

/**
 * A row of a table of a profile.
 *
 * @param place where it stands, for messages
 * @param cells text by column
 */
public record ProfileRow(String place, Map<String, String> cells) {

    /** Keeps its own copy. */
    public ProfileRow {
        cells = Map.copyOf(cells);
    }

    /**
     * The text of a cell.
     *
     * @param column its column
     * @return may be empty
     * @throws IllegalStateException when the table has no such column
     */
    public String text(String column) {
        String text = cells.get(column);
        if (text == null) {
            throw new IllegalStateException(place + " has no column '" + column + "'.");
        }
        return text;
    }

    /**
     * Whether a cell is blank.
     *
     * @param column its column
     * @return true when nothing stands in it
     */
    public boolean isBlank(String column) {
        return text(column).isEmpty();
    }

    /**
     * The number of a cell.
     *
     * @param column its column
     * @return NaN when the cell is blank
     * @throws IllegalStateException when the text is no number
     */
    public double number(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return Double.NaN;
        }
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new IllegalStateException(place + ", column " + column + ": '" + text + "' is no number.", e);
        }
    }
}
