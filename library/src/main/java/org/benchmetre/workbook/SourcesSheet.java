package org.benchmetre.workbook;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Caution;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/** The last sheet: what to be careful about, and where every single value comes from. */
final class SourcesSheet {

    static final String NAME = "Sources and cautions";
    private static final int TOP = 3;
    private static final double[] WIDTHS = {38, 17, 13, 90};

    private final Budget budget;
    private final ValueCells cells;
    private final Pen pen;

    SourcesSheet(Budget budget, ValueCells cells, Pen pen) {
        this.budget = budget;
        this.cells = cells;
        this.pen = pen;
    }

    void write() {
        for (int column = 0; column < WIDTHS.length; column++) {
            pen.width(column, WIDTHS[column]);
        }
        sources(budget.cautions().isEmpty() ? TOP : cautions());
    }

    private int cautions() {
        int row = TOP;
        heading(row++, "Cautions");
        pen.words(row, 0, "Topic", Look.Role.HEAD);
        pen.across(row++, 1, 3, "Caution", Look.Role.HEAD);
        for (Caution caution : budget.cautions()) {
            pen.across(row, 1, 3, caution.text(), Look.Role.WORDS);
            pen.words(row++, 0, caution.topic(), Look.Role.WORDS);
        }
        return row + 1;
    }

    private void sources(int top) {
        int row = top;
        heading(row++, "Values in use and where they come from");
        pen.words(row, 0, "Figure", Look.Role.HEAD);
        pen.words(row, 1, "Value in use", Look.Role.HEAD_NUMBER);
        pen.words(row, 2, "Unit", Look.Role.HEAD);
        pen.words(row++, 3, "Source", Look.Role.HEAD);
        for (Line line : budget.lines()) {
            if (line.axes().isEmpty() && budget.entry(line).isPresent()) {
                source(row++, line, budget.entry(line).get());
            }
        }
    }

    private void source(int row, Line line, Entry entry) {
        pen.words(row, 0, line.label(), Look.Role.WORDS);
        String formula = line.kind() == Kind.TEXT ? line.id() + "&\"\"" : line.id();
        cells.formula(pen, new Spot(NAME, row, 1), line, 0, formula, cells.format(line));
        pen.words(row, 2, cells.unit(line), Look.Role.WORDS);
        pen.words(row, 3, ListWriter.source(budget.given(line).get(0), entry), Look.Role.WORDS);
    }

    private void heading(int row, String words) {
        pen.words(row, 0, words, Look.Role.HEADING);
        pen.height(row, 20);
    }
}
