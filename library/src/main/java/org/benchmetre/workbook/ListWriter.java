package org.benchmetre.workbook;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;

/** Writes a schedule of single values, one a row: what to type, the value in the line's unit, the usual range and the source. */
final class ListWriter {

    private final WorkbookPlan plan;
    private final SheetPlan sheet;
    private final ValueCells cells;
    private final Pen pen;

    ListWriter(WorkbookPlan plan, SheetPlan sheet, ValueCells cells, Pen pen) {
        this.plan = plan;
        this.sheet = sheet;
        this.cells = cells;
        this.pen = pen;
    }

    void write(Box box) {
        boolean withEntries = sheet.firstSourceColumn(box.schedule()) == ColumnWidths.LIST_SOURCE;
        head(box.table(), withEntries);
        source(box, box.table(), withEntries ? "Source and notes" : "Notes", Look.Role.HEAD);
        int row = box.table() + 1;
        for (Line line : box.schedule().lines()) {
            Entry entry =
                    plan.isTypedInWorkings(line) ? plan.budget().entry(line).orElseThrow() : null;
            if (isSentence(line)) {
                sentence(box, row, line);
                pen.words(row++, 0, line.label(), Look.Role.WORDS);
                continue;
            }
            source(box, row, remarks(line, entry), Look.Role.WORDS);
            pen.words(row, 0, line.label(), Look.Role.WORDS);
            cells.write(pen, line);
            pen.words(row, ColumnWidths.LIST_UNIT, cells.unit(line), Look.Role.WORDS);
            if (withEntries) {
                rules(row, line, entry);
            }
            row++;
        }
    }

    /** A text that a formula makes, with nothing to say beside it: it runs over all columns. */
    private boolean isSentence(Line line) {
        return line.kind() == Kind.TEXT
                && plan.budget().formula(line).isPresent()
                && line.note().isEmpty();
    }

    private void sentence(Box box, int row, Line line) {
        pen.overColumns(() -> cells.write(pen, line));
        int last = sheet.lastSourceColumn(box.schedule());
        pen.spread(row, ColumnWidths.LIST_VALUE, last, cells.text(line), Look.Role.WORDS);
    }

    private void head(int row, boolean withEntries) {
        pen.words(row, 0, "Figure", Look.Role.HEAD);
        pen.words(row, ColumnWidths.LIST_VALUE, "Value", Look.Role.HEAD_NUMBER);
        pen.words(row, ColumnWidths.LIST_UNIT, "Unit", Look.Role.HEAD);
        if (withEntries) {
            pen.words(row, ColumnWidths.LIST_ENTRY, "As entered", Look.Role.HEAD_NUMBER);
            pen.words(row, ColumnWidths.LIST_ENTRY_UNIT, "Entered in", Look.Role.HEAD);
            pen.words(row, ColumnWidths.LIST_LOW, "Usual low", Look.Role.HEAD_NUMBER);
            pen.words(row, ColumnWidths.LIST_HIGH, "Usual high", Look.Role.HEAD_NUMBER);
        }
    }

    private void source(Box box, int row, String words, Look.Role role) {
        int first = sheet.firstSourceColumn(box.schedule());
        pen.across(row, first, sheet.lastSourceColumn(box.schedule()), words, role);
    }

    /** The unit an entry was given in and its usual range. */
    private void rules(int row, Line line, Entry entry) {
        if (!plan.isConverted(line)) {
            pen.words(row, ColumnWidths.LIST_ENTRY, "", Look.Role.WORDS);
        }
        pen.words(row, ColumnWidths.LIST_ENTRY_UNIT, typedUnit(line), Look.Role.WORDS);
        bound(
                row,
                ColumnWidths.LIST_LOW,
                entry == null ? Double.NaN : entry.plausible().low());
        bound(
                row,
                ColumnWidths.LIST_HIGH,
                entry == null ? Double.NaN : entry.plausible().high());
    }

    private String typedUnit(Line line) {
        return plan.isConverted(line)
                ? cells.unit(line, plan.budget().given(line).get(0).typedIn())
                : "";
    }

    private void bound(int row, int column, double bound) {
        if (Double.isFinite(bound)) {
            pen.number(row, column, bound, Look.number(Look.Role.USUAL, NumberFormats.ofNumber(bound)));
        } else {
            pen.words(row, column, "", Look.Role.WORDS);
        }
    }

    private String remarks(Line line, Entry entry) {
        return remarks(
                entry == null ? filled(line) : source(plan.budget().given(line).get(0), entry), line.note());
    }

    /** A source and a note, one after the other. */
    static String remarks(String source, String note) {
        return Stream.of(source, note).filter(text -> !text.isEmpty()).collect(Collectors.joining(" "));
    }

    /** On which entries a solved line was filled, as a sentence. */
    private String filled(Line line) {
        String words = cells.filledOn();
        return plan.budget().isSolved(line)
                ? words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + "."
                : "";
    }

    /** Where the value comes from, else where its default does. */
    static String source(Given given, Entry entry) {
        String words = given.source().isEmpty() ? entry.source() : given.source();
        return words.isEmpty() || ".!?".indexOf(words.charAt(words.length() - 1)) >= 0 ? words : words + ".";
    }
}
