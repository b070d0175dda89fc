package org.benchmetre;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Price;
import org.benchmetre.scenario.PriceList;

/** Lays a price list over the parts of a budget, item by item: price, pack, price year and source. */
record Prices(PriceList list, Faults faults) {

    Budget over(Budget budget) {
        Line price = budget.line(Lines.MATERIAL_PRICE);
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        for (Price found : list.prices().values()) {
            int row = price.axes().get(0).indexOf(found.item());
            if (row < 0) {
                faults.note(found.row().place("item"), "this scenario does not use " + Fault.quoted(found.item()));
            } else if (fits(budget, found, row)) {
                put(changes, budget, found, row);
            }
        }
        return budget.with(changes);
    }

    /** Reports another currency or unit; both, when both are wrong. */
    private boolean fits(Budget budget, Price found, int row) {
        int before = faults.size();
        if (!found.currency().isEmpty() && !found.currency().equals(budget.currency())) {
            String expected = "the scenario's currency, " + budget.currency();
            faults.add(found.row().place("currency"), Fault.quoted(found.currency()), expected);
        }
        String unit = budget.given(budget.line(Lines.MATERIAL_UNIT)).get(row).text();
        if (!folded(unit).equals(folded(found.unit()))) {
            String expected = "the unit of this part in the scenario, " + Fault.quoted(unit);
            faults.add(found.row().place("unit"), Fault.quoted(found.unit()), expected);
        }
        return faults.size() == before;
    }

    private static String folded(String text) {
        return text.trim().toLowerCase(Locale.ROOT);
    }

    private static void put(Map<Line, Map<Integer, Given>> changes, Budget budget, Price found, int row) {
        String source = found.source().isEmpty() ? "price list, no source given" : found.source();
        number(
                changes,
                budget,
                Lines.MATERIAL_PRICE,
                row,
                found.price(),
                source,
                found.row().place("price"));
        number(
                changes,
                budget,
                Lines.MATERIAL_PACK,
                row,
                found.pack(),
                source,
                found.row().place("pack"));
        number(
                changes,
                budget,
                Lines.MATERIAL_PRICE_YEAR,
                row,
                found.year(),
                source,
                found.row().place("price_year"));
        Given words = Given.text(source).at(found.row().place("source").toString());
        change(changes, budget.line(Lines.MATERIAL_SOURCE), row, words);
    }

    private static void number(
            Map<Line, Map<Integer, Given>> changes,
            Budget budget,
            String id,
            int row,
            double value,
            String source,
            Place place) {
        Line line = budget.line(id);
        Unit unit = line.unit();
        change(changes, line, row, Given.number(value, unit).from(source).at(place.toString()));
    }

    private static void change(Map<Line, Map<Integer, Given>> changes, Line line, int row, Given value) {
        changes.computeIfAbsent(line, key -> new HashMap<>()).put(row, value);
    }
}
