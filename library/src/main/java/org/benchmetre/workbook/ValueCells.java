package org.benchmetre.workbook;

import org.benchmetre.budget.Addresses;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.FormulaText;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/** Writes the cells of lines: what is to be typed in, and formulas with the engine's values. */
final class ValueCells {

    private final WorkbookPlan plan;
    private final Figures figures;
    private final Budget budget;
    private final Addresses addresses;
    private final NumberFormats formats;

    ValueCells(WorkbookPlan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
        this.budget = figures.budget();
        this.addresses = new CellPlaces(plan);
        this.formats = new NumberFormats(figures);
    }

    /** Writes all cells of a line where the plan puts them. */
    /** What a single text line says. */
    String text(Line line) {
        return figures.text(line, 0);
    }

    void write(Pen pen, Line line) {
        for (int cell = 0; cell < line.size(); cell++) {
            write(pen, line, cell);
        }
        if (line.kind() != Kind.TEXT && budget.entry(line).isEmpty()) {
            hideWhileUnnamed(pen, line);
        }
    }

    /** What a spare row shows although it is empty, such as the reason for having no number, waits until the row has a name. */
    private void hideWhileUnnamed(Pen pen, Line line) {
        for (int cell = 0; cell < line.size(); cell++) {
            boolean shows = figures.hasReason(line, cell) || figures.number(line, cell) != 0;
            for (Axis axis : line.axes()) {
                int index = line.positionOf(cell).on(axis);
                Line names = budget.rowName(axis).orElse(null);
                if (shows && names != null && axis.isSpare(index)) {
                    Spot spot = plan.spot(line, cell);
                    pen.hideWhen(spot.row(), spot.column(), addresses.cell(names, index) + "=\"\"");
                }
            }
        }
    }

    private void write(Pen pen, Line line, int cell) {
        Spot spot = plan.spot(line, cell);
        Formula formula = budget.formula(line).orElse(null);
        if (formula != null) {
            formula(pen, spot, line, cell, FormulaText.of(line, formula, cell, addresses), format(line, cell));
        } else if (budget.isSolved(line)) {
            solved(pen, spot, line, cell);
        } else if (plan.isConverted(line)) {
            converted(pen, spot, line);
        } else {
            entry(pen, spot, line, cell);
        }
    }

    /** What a search found: no formula, since none gives it. */
    private void solved(Pen pen, Spot spot, Line line, int cell) {
        if (figures.hasReason(line, cell)) {
            pen.words(spot.row(), spot.column(), figures.text(line, cell), Look.Role.SOLVED);
        } else {
            Look plain = Look.number(Look.Role.SOLVED, format(line, cell));
            Look look = isInSpareColumn(line, cell) ? plain.shrinking() : plain;
            pen.number(spot.row(), spot.column(), figures.number(line, cell), look);
        }
    }

    /** What a reader sees above or beside a line: its label, and of a solved line on which entries it was filled. */
    String label(Line line) {
        return budget.isSolved(line) ? line.label() + ", " + figures.filledOn() : line.label();
    }

    /** On which entries searches ran, in words for a reader. */
    String filledOn() {
        return figures.filledOn();
    }

    private void converted(Pen pen, Spot spot, Line line) {
        Given given = budget.given(line).get(0);
        Spot typed = plan.typedSpot(line, 0);
        pen.number(
                typed.row(),
                typed.column(),
                given.typed(),
                Look.number(Look.Role.ENTRY, NumberFormats.ofNumber(given.typed())));
        String text = Conversion.of(typedName(line), given.typedIn(), line.unit());
        formula(pen, spot, line, 0, text, formats.of(line));
    }

    /** The name of the cell to type in, where it is not the one with the value. */
    static String typedName(Line line) {
        return line.id() + "_entry";
    }

    private void entry(Pen pen, Spot spot, Line line, int cell) {
        Given given = budget.given(line).get(cell);
        if (line.kind() == Kind.TEXT) {
            pen.words(spot.row(), spot.column(), given.text(), Look.Role.ENTRY_TEXT);
            return;
        }
        Look look = Look.number(Look.Role.ENTRY, format(line, cell));
        boolean blank = !given.filled() && line.axes().stream().noneMatch(Axis::isOrdered);
        if (blank) {
            pen.blank(spot.row(), spot.column(), look);
        } else {
            pen.number(spot.row(), spot.column(), given.number(), look);
        }
    }

    private String format(Line line, int cell) {
        return line.isSpare(cell) ? formats.withoutZero(line) : formats.of(line);
    }

    private boolean isInSpareColumn(Line line, int cell) {
        Axis across = plan.place(line).across();
        return across != null && across.isSpare(line.positionOf(cell).on(across));
    }

    /** Writes a formula that gives the value of a cell of a line. */
    void formula(Pen pen, Spot spot, Line line, int cell, String text, String format) {
        if (line.kind() == Kind.TEXT) {
            pen.formula(spot.row(), spot.column(), text, figures.text(line, cell), Look.of(Look.Role.FIGURE_TEXT));
            return;
        }
        boolean optional = line.kind() == Kind.OPTIONAL;
        Look plain = Look.number(optional ? Look.Role.FIGURE_OR_REASON : Look.Role.FIGURE, format);
        Look look = isInSpareColumn(line, cell) ? plain.shrinking() : plain;
        if (figures.hasReason(line, cell)) {
            pen.formula(spot.row(), spot.column(), text, figures.text(line, cell), look);
        } else {
            pen.formula(spot.row(), spot.column(), text, figures.number(line, cell), look);
        }
    }

    String format(Line line) {
        return formats.of(line);
    }

    /** Writes the name of a row or period: alive where a line names it, else its key. */
    void name(Pen pen, int row, int column, Axis axis, int index, Look.Role role) {
        Line names = budget.rowName(axis).orElse(null);
        if (names == null) {
            String key = axis.isSpare(index) ? "" : axis.keys().get(index);
            pen.words(row, column, key, role);
            return;
        }
        String cell = addresses.cell(names, index);
        String text = "IF(" + cell + "=\"\",\"\"," + cell + ")";
        pen.formula(row, column, text, figures.text(names, index), Look.of(role));
    }

    String unit(Line line) {
        return unit(line, line.unit());
    }

    String unit(Line line, Unit unit) {
        boolean none = line.kind() == Kind.TEXT || line.kind() == Kind.TRUTH;
        return none || unit.equals(Unit.ONE) ? "" : unit.display(budget.currency());
    }
}
