package org.benchmetre.scenario;

/**
 * One entry of {@code farm.csv}, its cells as text. What they mean is for the line's owner to say, who reads typed
 * cells from {@link #row()} under the same column names.
 *
 * @param line the address of a line in lower case, such as {@code bench_count} or {@code material_price[tape]}
 * @param value a number or a word
 * @param unit the unit of value, low and high; empty means the line's own
 * @param low the low end of what is plausible; may be empty
 * @param high the high end of what is plausible; may be empty
 * @param source where the value comes from; may be empty
 * @param row the row itself
 */
public record FarmRow(String line, String value, String unit, String low, String high, String source, Row row) {

    static FarmRow of(Row row) {
        return new FarmRow(
                Words.folded(row.text("line")),
                row.text("value"),
                row.text("unit"),
                row.text("low"),
                row.text("high"),
                row.text("source"),
                row);
    }
}
