package org.benchmetre.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.Typed;

/**
 * The file of single values, {@code line,value,unit,low,high,source}: one row for each entry that is not as documented. A line may
 * also be the address of a cell of a table, such as {@code material_price[tape]}, which then goes before the table.
 *
 * @param budget whose entries are meant
 * @param table the file
 * @param faults where rows that name no entry, or the same one twice, and values that are refused are reported
 */
record SingleRows(Budget budget, CsvTable table, Faults faults) {

    static final String LINE = "line";
    static final String VALUE = "value";
    static final String UNIT = "unit";
    static final String LOW = "low";
    static final String HIGH = "high";
    static final String SOURCE = "source";
    static final List<String> COLUMNS = List.of(LINE, VALUE, UNIT, LOW, HIGH, SOURCE);

    /** Rows that say something of the scenario itself. */
    static final List<String> HEADING = List.of(HeadingReader.TITLE, HeadingReader.CURRENCY, HeadingReader.CROP);

    Layer read() {
        Layer layer = new Layer();
        table.requireColumns(LINE, VALUE, UNIT);
        Map<String, Row> first = new HashMap<>();
        for (Row row : table.rows()) {
            String name = Phrases.folded(row.text(LINE));
            Row before = name.isEmpty() ? null : first.putIfAbsent(name, row);
            if (name.isEmpty()) {
                faults.add(row.place(LINE), "nothing", "the name of a line");
            } else if (before != null) {
                faults.add(
                        row.place(LINE),
                        Quoted.text(name) + ", which row " + before.rowNumber() + " has already",
                        "each line once");
            } else if (!HEADING.contains(name) && !budget.structure().choices().containsKey(name)) {
                cell(row, name).ifPresent(cell -> read(row, cell, layer));
            }
        }
        table.warnOfOthers(COLUMNS, faults);
        return layer;
    }

    private Optional<CellRef> cell(Row row, String name) {
        try {
            return Address.parse(name).entryIn(budget, row.place(LINE), faults);
        } catch (SettingSyntaxException e) {
            faults.add(row.place(LINE), Quoted.text(name), "the name of an entry, such as bench_count");
            return Optional.empty();
        }
    }

    private void read(Row row, CellRef cell, Layer layer) {
        Line line = cell.line();
        boolean number = FileLayer.isNumber(line);
        String unit = number ? row.text(UNIT) : "";
        Typed typed = new Typed(row.text(VALUE), unit, line.unit(), row.decimalComma());
        Optional<Given> given = budget.gate()
                .accept(line, cell.cell(), typed)
                .orElse(no -> faults.add(
                        row.place(no.found().equals(Quoted.text(unit)) || no.isOfCurrency() ? UNIT : VALUE),
                        no.found(),
                        no.expected()));
        if (given.isEmpty()) {
            return;
        }
        Place place = row.place(VALUE);
        Given credited = given.get()
                .from(FileLayer.sourceOf(row.text(SOURCE)))
                .at(new Origin.File(place.file(), place.row(), place.column()));
        layer.put(line, cell.cell(), number ? credited.usually(range(row, cell, credited)) : credited);
        ends(row, cell, credited, layer);
    }

    /** A range of the scenario's own takes the place of the documented one, end by end. */
    private Plausible range(Row row, CellRef cell, Given value) {
        Plausible known = budget.entry(cell.line()).orElseThrow().plausible();
        if (row.isBlank(LOW) && row.isBlank(HIGH)) {
            return Plausible.UNKNOWN;
        }
        double low = end(row, LOW, cell, value, known.low());
        double high = end(row, HIGH, cell, value, known.high());
        if (low > high) {
            faults.add(
                    row.place(LOW),
                    Quoted.text(row.text(LOW)),
                    "a low value not above the high one, " + row.text(HIGH));
            return Plausible.UNKNOWN;
        }
        return new Plausible(low, known.typical(), high);
    }

    private double end(Row row, String column, CellRef cell, Given value, double known) {
        if (row.isBlank(column)) {
            return known;
        }
        Typed typed = new Typed(row.text(column), "", value.typedIn(), row.decimalComma());
        return budget.gate()
                .accept(cell.line(), cell.cell(), typed)
                .orElse(no -> faults.add(row.place(column), no.found(), no.expected()))
                .map(Given::number)
                .orElse(known);
    }

    /** Ends of this row's range that are entries of their own, since figures are made of them. */
    private void ends(Row row, CellRef cell, Given value, Layer layer) {
        for (String column : List.of(LOW, HIGH)) {
            Home home = Home.single(cell.line().id(), column);
            budget.find(cell.line().id() + "_" + column)
                    .filter(end -> budget.entry(end)
                            .filter(entry -> entry.home().equals(home))
                            .isPresent())
                    .filter(end -> !row.isBlank(column))
                    .ifPresent(end -> end(row, column, value, end, layer));
        }
    }

    private void end(Row row, String column, Given value, Line end, Layer layer) {
        Typed typed = new Typed(row.text(column), "", value.typedIn(), row.decimalComma());
        budget.gate()
                .accept(end, 0, typed)
                .orElse(no -> faults.addOnce(row.place(column), no.found(), no.expected()))
                .ifPresent(given -> layer.put(end, 0, given.from(value.source()).at(value.origin())));
    }
}
