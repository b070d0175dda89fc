package org.benchmetre.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.Page;
import org.benchmetre.page.shown.ShownCells;

/**
 * Entries as they were typed: number and unit, choices by their labels, usual range, source.
 *
 * @param figures the budget, computed
 */
record EntryText(Figures figures) {

    /** Figures of a range that count, since it may be converted from another unit. */
    private static final MathContext CONVERTED = new MathContext(4);

    Given given(CellRef cell) {
        return budget().given(cell.line()).get(cell.cell());
    }

    /** The value as typed, with every digit; empty for a blank cell. */
    String value(CellRef cell) {
        Given given = given(cell);
        if (!given.filled()) {
            return "";
        }
        return cell.line().kind() == Kind.TEXT
                ? words(entry(cell.line()).form(), given.text())
                : exact(given.typedIn(), given.typed());
    }

    /** The unit it was typed in; empty for texts and plain numbers. */
    String unit(CellRef cell) {
        return new ShownCells(figures, Page.Kind.ENTRIES).unit(given(cell).typedIn());
    }

    /** The usual range in the unit the entry was typed in, with a mark where the value lies outside; empty where none is known. */
    String range(CellRef cell) {
        if (cell.line().kind() == Kind.TEXT) {
            return "";
        }
        Plausible usual = budget().range(cell.line(), cell.cell()).range();
        String low = end(cell, usual.low());
        String high = end(cell, usual.high());
        if (low.isEmpty() && high.isEmpty()) {
            return "";
        }
        Given given = given(cell);
        boolean outside = given.filled() && usual.isUnusual(given.number());
        String range = low.isEmpty() ? "to " + high : high.isEmpty() ? "from " + low : low + " to " + high;
        return range + (outside ? " (outside)" : "");
    }

    String source(CellRef cell) {
        return entry(cell.line()).sourceOf(given(cell));
    }

    private String end(CellRef cell, double bound) {
        if (Double.isNaN(bound)) {
            return "";
        }
        Unit typedIn = given(cell).typedIn();
        double converted = cell.line().unit().convertLevel(bound, typedIn);
        return exact(typedIn, new BigDecimal(converted).round(CONVERTED).doubleValue());
    }

    private static String exact(Unit unit, double typed) {
        return Decimals.exact(unit, new double[] {typed}).written(typed);
    }

    /** A choice by its label, several keys by theirs; any other text as it is. */
    private String words(TextForm form, String text) {
        if (form.keysOf().isEmpty()) {
            return form.label(text);
        }
        return Arrays.stream(text.split(" "))
                .map(key -> label(budget().line(form.keysOf()), key).orElse(key))
                .collect(Collectors.joining(", "));
    }

    private Optional<String> label(Line keys, String key) {
        Optional<Line> names = budget().rowName(keys.axes().get(0));
        for (int row = 0; names.isPresent() && row < keys.size(); row++) {
            if (figures.text(keys, row).equalsIgnoreCase(key)) {
                return Optional.of(figures.text(names.get(), row)).filter(name -> !name.isEmpty());
            }
        }
        return Optional.empty();
    }

    private Entry entry(Line line) {
        return budget().entry(line).orElseThrow();
    }

    private Budget budget() {
        return figures.budget();
    }
}
