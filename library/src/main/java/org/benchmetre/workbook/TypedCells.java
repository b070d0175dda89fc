package org.benchmetre.workbook;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.TextForm;

/** What a typed cell counts as, where that is not what is typed: the formula of the line's own cell. */
record TypedCells(WorkbookPlan plan) {

    /** The name of the cell to type in, where it is not the one with the value. */
    static String name(Line line) {
        return line.id() + "_entry";
    }

    /** The formula of the line's own cell. */
    String formula(Line line, int cell) {
        Budget budget = plan.budget();
        Given given = budget.given(line).get(cell);
        String typed =
                line.axes().isEmpty() ? name(line) : plan.typedSpot(line, cell).seenFrom(here(line));
        if (line.kind() != Kind.TEXT) {
            return plan.isConverted(line) ? Conversion.of(typed, given.typedIn(), line.unit()) : typed;
        }
        return plan.homes().isWorded(line) ? word(line, typed, given.text()) : typed + "&\"\"";
    }

    private String here(Line line) {
        return plan.place(line).sheet();
    }

    private CellPlaces from(Line line) {
        return new CellPlaces(plan, here(line));
    }

    /** A label that is found in no row leaves the choice as it was written. */
    private String word(Line line, String typed, String written) {
        TextForm form = plan.budget().entry(line).orElseThrow().form();
        String names;
        String words;
        if (form.keysOf().isEmpty()) {
            names = plan.lists().range(form.labels());
            words = plan.lists().range(form.words());
        } else {
            Line labels = plan.homes().labelsOf(form);
            Line keys = plan.homes().keysOf(form);
            names = from(line).range(labels, labels.axes().get(0), Position.NONE);
            words = from(line).range(keys, keys.axes().get(0), Position.NONE);
        }
        String found = "MATCH(" + typed + "," + names + ",0)";
        return "IF(" + typed + "=\"\",\"\",IF(ISNUMBER(" + found + "),INDEX(" + words + "," + found + "),\"" + written
                + "\"))&\"\"";
    }
}
