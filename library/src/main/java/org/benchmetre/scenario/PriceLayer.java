package org.benchmetre.scenario;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.Typed;
import org.benchmetre.budget.entry.UnitWord;
import org.benchmetre.budget.unit.Unit;

/**
 * A price list that several scenarios may share, as a layer over the parts of one: {@code item,pack,unit,price,price_year,source} and,
 * if need be, {@code currency}. Its columns are those of the table it prices; items that are no rows of that table may be single
 * entries, see {@link SinglePrices}.
 */
public final class PriceLayer {

    private static final String ITEM = "item";
    private static final String UNIT = "unit";
    private static final String SOURCE = "source";
    private static final String CURRENCY = "currency";
    private static final List<String> NEEDED = List.of("pack", "price", "price_year");

    private final Budget budget;
    private final Layer below;
    private final String table;
    private final Faults faults;
    private final Layer layer = new Layer();
    private final Map<String, Row> first = new HashMap<>();
    private final Map<String, Line> entries = new HashMap<>();
    private final SinglePrices singles;

    private PriceLayer(Budget budget, Layer below, String table, Faults faults) {
        this.budget = budget;
        this.below = below;
        this.table = table;
        this.faults = faults;
        this.singles = new SinglePrices(budget);
    }

    /**
     * Reads a price list.
     *
     * @param path the CSV file
     * @param budget of the scenario
     * @param below what the scenario says
     * @param table the table that is priced, such as {@code materials.csv}
     * @param faults where everything wrong with it is reported, another unit than the part's and another currency included; an item that
     *     no part has is noted
     * @return what can be laid over the budget
     */
    public static Layer read(Path path, Budget budget, Layer below, String table, Faults faults) {
        PriceLayer list = new PriceLayer(budget, below, table, faults);
        CsvTable file = CsvTable.read(path, faults);
        file.requireColumns(ITEM, "pack", UNIT, "price", "price_year", SOURCE);
        file.rows().forEach(list::read);
        file.warnOfOthers(List.of(ITEM, "pack", UNIT, "price", "price_year", SOURCE, CURRENCY), faults);
        return list.layer;
    }

    private void read(Row row) {
        String item = row.key(ITEM, faults);
        Row before = item.isEmpty() ? null : first.putIfAbsent(item, row);
        if (before != null) {
            faults.add(
                    row.place(ITEM),
                    Quoted.text(item) + ", which row " + before.rowNumber() + " has already",
                    "each item once");
            return;
        }
        Axis axis = entry("price").axes().get(0);
        int index = axis.indexOf(item);
        boolean used = index >= 0;
        int found = faults.size();
        checkCurrency(row);
        Optional<Line> single = used ? Optional.empty() : singles.of(item);
        if (used) {
            checkUnit(row, item, index);
        }
        single.ifPresent(price -> checkUnit(row, price));
        for (String column : NEEDED) {
            value(row, column, item, index);
        }
        if (item.isEmpty() || faults.size() > found) {
            return;
        }
        if (used) {
            put(row, SOURCE, index, Given.text(sourceOf(row)));
        } else if (single.isPresent()) {
            putSingle(row, single.get());
        } else {
            faults.note(row.place(ITEM), "this scenario does not use " + Quoted.text(item));
        }
    }

    private void value(Row row, String column, String item, int index) {
        Line line = entry(column);
        if (row.isBlank(column) && budget.entry(line).orElseThrow().blank() != Blank.REFUSED) {
            faults.add(row.place(column), "nothing", line.label() + " of " + Quoted.text(item));
            return;
        }
        Typed typed = new Typed(row.text(column), "", line.unit(), row.decimalComma());
        Optional<Given> given = budget.gate()
                .accept(line, line.id() + "[" + item + "]", typed)
                .orElse(no -> faults.add(row.place(column), no.found(), no.expected()));
        given.filter(any -> index >= 0).ifPresent(value -> put(row, column, index, value));
    }

    private void put(Row row, String column, int index, Given value) {
        layer.put(entry(column), index, from(row, column, value));
    }

    /** A price for a unit, from that of a pack. */
    private void putSingle(Row row, Line price) {
        double units =
                number(row, "pack") * SinglePrices.held(price, row.text(UNIT)).orElseThrow();
        singles.put(
                layer,
                price,
                from(row, "price", Given.number(number(row, "price") / units, price.unit())),
                from(row, "price_year", Given.number(number(row, "price_year"), Unit.ONE)));
    }

    private double number(Row row, String column) {
        Line line = entry(column);
        Typed typed = new Typed(row.text(column), "", line.unit(), row.decimalComma());
        return budget.gate()
                .accept(line, line.id(), typed)
                .orElse(no -> {})
                .orElseThrow()
                .number();
    }

    private static Given from(Row row, String column, Given value) {
        Place place = row.place(column);
        return value.from(sourceOf(row)).at(new Origin.File(place.file(), place.row(), place.column()));
    }

    private void checkUnit(Row row, Line price) {
        if (SinglePrices.held(price, row.text(UNIT)).isEmpty()) {
            String expected = SinglePrices.per(price) + ", or a unit that converts to it";
            faults.add(row.place(UNIT), Quoted.text(row.text(UNIT)), expected);
        }
    }

    private static String sourceOf(Row row) {
        return row.isBlank(SOURCE) ? "price list, no source given" : row.text(SOURCE);
    }

    private void checkCurrency(Row row) {
        String code = row.text(CURRENCY).toUpperCase(Locale.ROOT);
        if (!code.isEmpty() && !code.equals(budget.currency())) {
            String expected = "the scenario's currency, " + budget.currency();
            faults.add(row.place(CURRENCY), Quoted.text(row.text(CURRENCY)), expected);
        }
    }

    /** A part without a unit of its own takes that of the list. */
    private void checkUnit(Row row, String item, int index) {
        String unit = below.over(budget, entry(UNIT), index).text();
        if (unit.isEmpty()) {
            if (!row.isBlank(UNIT)) {
                value(row, UNIT, item, index);
            }
        } else if (!UnitWord.isSame(unit, row.text(UNIT))) {
            String expected = "the unit of this part in the scenario, " + Quoted.text(unit);
            faults.add(row.place(UNIT), Quoted.text(row.text(UNIT)), expected);
        }
    }

    /** The entry that a column of the priced table is. */
    private Line entry(String column) {
        return entries.computeIfAbsent(column, this::find);
    }

    private Line find(String column) {
        return budget.lines().stream()
                .filter(line -> budget.entry(line)
                        .filter(entry -> entry.home().table().equals(table)
                                && entry.home().columns().equals(List.of(column)))
                        .isPresent())
                .findFirst()
                .orElseThrow(
                        () -> new IllegalStateException("No entry is kept in " + table + ", column " + column + "."));
    }
}
