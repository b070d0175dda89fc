package org.benchmetre.batch;

import java.util.List;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/**
 * The doubtful entries on a console, each with the value at which the answer flips.
 *
 * @param figures the farm, computed
 */
record FlipTable(Figures figures) {

    @Override
    public String toString() {
        return TextTable.wrapped(
                        "With the value under \"Flips at\" and all else as entered, the system under \"To\" costs as"
                                + " much a year as the system recommended: " + figures.text("recommended_label") + ".")
                + "\n"
                + table()
                + "\n"
                + TextTable.wrapped(
                        "Every digit of a flip value: irrigation --csv, line flip_value. Target uniformity: "
                                + figures.text("target_finding"));
    }

    private TextTable table() {
        TextTable table = new TextTable(List.of("Entry", "Now", "Flips at", "Unit", "To", "Plausible", "Change, %"), 1)
                .right(1, 2, 6);
        for (int row = 0; row < line("flip_label").size(); row++) {
            if (!shown("flip_label", row).isEmpty()) {
                table.row(row(row));
            }
        }
        return table;
    }

    private List<String> row(int row) {
        return List.of(
                shown("flip_label", row) + " (" + shown("flip_address", row) + ")",
                value("flip_current", row),
                value("flip_value", row),
                shown("flip_unit", row),
                shown("flip_to", row),
                range(row),
                shown("flip_margin", row));
    }

    private String range(int row) {
        return figures.number(line("flip_high"), row) > 0
                ? value("flip_low", row) + " to " + value("flip_high", row)
                : "none given";
    }

    /** A value in the unit of the row, of which only the words are known. */
    private String value(String id, int row) {
        String currency = figures.budget().currency();
        boolean money = figures.text(line("flip_unit"), row).contains(currency);
        return money && !figures.hasReason(line(id), row)
                ? Shown.money(figures.number(line(id), row), currency)
                : shown(id, row);
    }

    private String shown(String id, int row) {
        return Shown.cell(figures, line(id), row);
    }

    private Line line(String id) {
        return figures.budget().line(id);
    }
}
