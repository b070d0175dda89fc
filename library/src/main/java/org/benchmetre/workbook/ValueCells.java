package org.benchmetre.workbook;

import org.benchmetre.budget.Addresses;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
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
    private final NumberFormats formats;
    private final TypedCells typedCells;

    ValueCells(WorkbookPlan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
        this.budget = figures.budget();
        this.formats = new NumberFormats(figures);
        this.typedCells = new TypedCells(plan);
    }

    private Addresses from(String sheet) {
        return new CellPlaces(plan, sheet);
    }

    /** What a single text line says. */
    String text(Line line) {
        return figures.text(line, 0);
    }

    /** What a cell says. */
    String text(CellRef ref) {
        return figures.text(ref.line(), ref.cell());
    }

    /** The text that is typed for a cell; empty for a number. */
    String typedText(CellRef ref) {
        String text = budget.given(ref.line()).get(ref.cell()).text();
        return plan.homes().shown(ref.line(), text);
    }

    /** Writes all cells of a line where the plan puts them. */
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
                    pen.hideWhen(spot.row(), spot.column(), from(spot.sheet()).cell(names, index) + "=\"\"");
                }
            }
        }
    }

    private void write(Pen pen, Line line, int cell) {
        Spot spot = plan.spot(line, cell);
        Formula formula = budget.formula(line).orElse(null);
        if (formula != null) {
            formula(pen, spot, line, cell, FormulaText.of(line, formula, cell, from(spot.sheet())), format(line, cell));
        } else if (budget.isSolved(line)) {
            solved(pen, spot, line, cell);
        } else if (plan.homes().isApart(line)) {
            apart(pen, spot, line, cell);
        } else {
            entry(pen, spot, line, cell);
        }
    }

    /** What a search found: no formula, since none gives it. */
    private void solved(Pen pen, Spot spot, Line line, int cell) {
        if (line.kind() == Kind.TEXT || figures.hasReason(line, cell)) {
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

    /** The line's own cell of an entry that is typed in another one; beside it the typed one, where no page has it. */
    private void apart(Pen pen, Spot spot, Line line, int cell) {
        formula(pen, spot, line, cell, typedCells.formula(line, cell), format(line, cell));
        if (plan.isTypedInWorkings(line)) {
            entry(pen, plan.typedSpot(line, cell), line, cell);
        }
    }

    /** Writes an entry as it is typed. */
    void typed(Pen pen, CellRef ref) {
        entry(pen, plan.typedSpot(ref.line(), ref.cell()), ref.line(), ref.cell());
    }

    private void entry(Pen pen, Spot spot, Line line, int cell) {
        Given given = budget.given(line).get(cell);
        if (line.kind() == Kind.TEXT) {
            pen.words(spot.row(), spot.column(), plan.homes().shown(line, given.text()), Look.Role.ENTRY_TEXT);
            return;
        }
        boolean converted = plan.isConverted(line);
        String format = formats.typed(line);
        Look look = Look.number(Look.Role.ENTRY, format);
        boolean blank = !given.filled() && mayBeBlank(line);
        if (blank) {
            pen.blank(spot.row(), spot.column(), look);
        } else {
            pen.number(spot.row(), spot.column(), converted ? given.typed() : given.number(), look);
        }
    }

    /** In a row of periods alone a blank cell takes its default; what stands there is shown. */
    static boolean mayBeBlank(Line line) {
        return line.axes().isEmpty() || line.axes().stream().anyMatch(axis -> !axis.isOrdered());
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

    /** Writes an entry that is typed elsewhere, as it is typed there. */
    void repeated(Pen pen, Spot spot, CellRef ref, Look.Role role) {
        Line line = ref.line();
        Given given = budget.given(line).get(ref.cell());
        Spot typed = plan.typedSpot(line, ref.cell());
        String cell = plan.homes().isApart(line) && line.axes().isEmpty()
                ? TypedCells.name(line)
                : line.axes().isEmpty() ? line.id() : typed.seenFrom(spot.sheet());
        String formula = "IF(" + cell + "=\"\",\"\"," + cell + ")";
        if (line.kind() == Kind.TEXT) {
            pen.formula(spot.row(), spot.column(), formula, plan.homes().shown(line, given.text()), Look.of(role));
        } else {
            boolean converted = plan.isConverted(line);
            String format = formats.typed(line);
            double number = converted ? given.typed() : given.number();
            pen.formula(spot.row(), spot.column(), formula, number, Look.number(role, format));
        }
    }

    /** Writes a figure by reference to the cell of a line. */
    void shown(Pen pen, Spot spot, CellRef ref, Look.Role role, String format) {
        Line line = ref.line();
        String cell = from(spot.sheet()).cell(line, ref.cell());
        boolean mayBeBlank = line.kind() == Kind.TEXT && budget.entry(line).isPresent();
        String formula = mayBeBlank ? "IF(" + cell + "=\"\",\"\"," + cell + ")" : cell;
        if (line.kind() == Kind.TEXT || figures.hasReason(line, ref.cell())) {
            String text = figures.text(line, ref.cell());
            pen.formula(spot.row(), spot.column(), formula, text, Look.number(role, format));
        } else {
            pen.formula(
                    spot.row(), spot.column(), formula, figures.number(line, ref.cell()), Look.number(role, format));
        }
    }

    /** Writes the name of a row or period: alive where a line names it, else its key. */
    void name(Pen pen, int row, int column, Axis axis, int index, Look.Role role) {
        Line names = budget.rowName(axis).orElse(null);
        if (names == null) {
            String key = axis.isSpare(index) ? "" : axis.label(index);
            pen.words(row, column, key, role);
            return;
        }
        String cell = from(pen.sheet()).cell(names, index);
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
