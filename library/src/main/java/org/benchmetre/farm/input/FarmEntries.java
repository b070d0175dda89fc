package org.benchmetre.farm.input;

import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Plausible;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Bounds;
import org.benchmetre.scenario.FarmFile;
import org.benchmetre.scenario.FarmRow;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.NearNames;
import org.benchmetre.scenario.Units;

/**
 * Gives single-valued entries their value from {@code farm.csv}; what is left out takes the documented default. A value that is
 * refused is reported and the default stands in, so that no fault hides another.
 */
public final class FarmEntries {

    private static final String NO_SOURCE = "scenario, no source given";

    private final FarmFile farm;
    private final Map<String, Unit> unitNames;
    private final Faults faults;

    /**
     * Reads from one farm file.
     *
     * @param farm the file
     * @param currency ISO 4217 code that stands for money in its units
     * @param faults where faults are collected
     */
    public FarmEntries(FarmFile farm, String currency, Faults faults) {
        this.farm = farm;
        this.unitNames = Map.of(currency, Unit.MONEY);
        this.faults = faults;
    }

    /**
     * Adds an entry with its value from the file.
     *
     * @param entry the entry, all but its value
     * @return the line
     */
    public Line add(EntryBuilder entry) {
        EntryBuilder.Draft draft = entry.draft();
        Optional<FarmRow> row = farm.take(draft.id());
        if (row.isEmpty()) {
            return entry.given(usual(draft));
        }
        if (draft.kind() == Kind.TEXT) {
            return entry.given(textOf(draft, row.get()));
        }
        Optional<Unit> unit = unitOf(draft, row.get());
        if (unit.isEmpty()) {
            return entry.given(usual(draft));
        }
        rangeOf(entry, draft, row.get(), unit.get());
        return entry.given(numberOf(draft, row.get(), unit.get()));
    }

    private static Given usual(EntryBuilder.Draft draft) {
        Entry entry = draft.entry();
        Given value = draft.kind() == Kind.TEXT
                ? Given.text(entry.usualText())
                : Given.number(entry.plausible().typical(), draft.unit());
        return value.from(entry.source());
    }

    private Given textOf(EntryBuilder.Draft draft, FarmRow row) {
        Entry entry = draft.entry();
        boolean isKey = !entry.allowed().isEmpty() || entry.keysOf() != null;
        String text = isKey ? row.row().key("value", faults) : row.row().label("value", true, faults);
        if (!entry.allowed().isEmpty() && !text.isEmpty() && !entry.allowed().contains(text)) {
            faults.add(row.row().place("value"), quoted(text), "one of " + String.join(", ", entry.allowed()));
        }
        return Given.text(text).from(sourceOf(row)).at(row.row().place("value").toString());
    }

    private Optional<Unit> unitOf(EntryBuilder.Draft draft, FarmRow row) {
        Optional<Unit> unit = Units.read(row.row(), "unit", unitNames, faults);
        if (unit.isPresent() && !unit.get().sameDimension(draft.unit())) {
            faults.add(
                    row.row().place("unit"),
                    quoted(row.unit()),
                    "a unit that converts to " + draft.unit() + " for " + draft.label());
            return Optional.empty();
        }
        return unit;
    }

    private Given numberOf(EntryBuilder.Draft draft, FarmRow row, Unit unit) {
        double typed = row.row().number("value", Bounds.any(), row.unit(), faults);
        if (Double.isNaN(typed)) {
            return usual(draft);
        }
        Given value = Given.typed(typed, unit, draft.unit());
        Optional<String> refusal = draft.entry().bounds().refusal(value.number(), draft.unit());
        if (refusal.isPresent()) {
            faults.add(row.row().place("value"), quoted(row.value() + " " + row.unit()), refusal.get());
            return usual(draft);
        }
        return value.from(sourceOf(row)).at(row.row().place("value").toString());
    }

    /** A range of the scenario's own takes the place of the documented one. */
    private void rangeOf(EntryBuilder entry, EntryBuilder.Draft draft, FarmRow row, Unit unit) {
        Plausible known = draft.entry().plausible();
        double low = bound(draft, row, "low", unit, known.low());
        double high = bound(draft, row, "high", unit, known.high());
        if (low > high) {
            faults.add(row.row().place("low"), quoted(row.low()), "a low value not above the high one, " + row.high());
            return;
        }
        entry.usually(new Plausible(low, known.typical(), high), draft.entry().source());
    }

    private double bound(EntryBuilder.Draft draft, FarmRow row, String column, Unit unit, double known) {
        if (row.row().isBlank(column)) {
            return known;
        }
        double typed = row.row().number(column, Bounds.any(), row.unit(), faults);
        return Double.isNaN(typed) ? known : unit.convertLevel(typed, draft.unit());
    }

    private static String sourceOf(FarmRow row) {
        return row.source().isEmpty() ? NO_SOURCE : row.source();
    }

    /**
     * Reports the rows that no line took, with the nearest known name.
     *
     * @param known names of all lines that may stand in the file
     */
    public void reportUnknown(Iterable<String> known) {
        java.util.List<String> names = new java.util.ArrayList<>();
        known.forEach(names::add);
        for (FarmRow row : farm.untaken()) {
            String question = NearNames.didYouMean(row.line(), names);
            faults.add(
                    row.row().place("line"),
                    quoted(row.line()),
                    "the name of an entry" + (question.isEmpty() ? "" : "; " + question));
        }
    }

    private static String quoted(String text) {
        return "\"" + text.trim() + "\"";
    }
}
