package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/** Gathers the rows of the enterprise budget, section by section. */
final class BudgetRows {

    private final List<BudgetRow> rows = new ArrayList<>();
    private String section = BudgetRow.RECEIPT;

    /** The rows that follow count in this section. */
    BudgetRows section(String name) {
        section = name;
        return this;
    }

    /** A quantity with its money. */
    BudgetRows row(String key, Formula label, String unit, Formula quantity, Formula amount) {
        rows.add(new BudgetRow(unused(key), section, label, unit, quantity.counting(ONE), amount));
        return this;
    }

    /** A quantity with its money. */
    BudgetRows row(String key, String label, String unit, Formula quantity, Formula amount) {
        return row(key, text(label), unit, quantity, amount);
    }

    /** Money that no quantity stands behind: once a year. */
    BudgetRows lump(String key, String label, Formula amount) {
        return row(key, text(label), "a year", one(), amount);
    }

    /** A sum repeated as a row. */
    BudgetRows total(String key, String label, Formula amount) {
        rows.add(new BudgetRow(key, BudgetRow.TOTAL, text(label), "", one(), amount));
        return this;
    }

    /** A row for each row of a table, with words before its label. */
    BudgetRows each(Axis axis, String prefix, Line label, String unit, Line quantity, Line amount) {
        for (int i = 0; i < axis.size(); i++) {
            Formula words =
                    prefix.isEmpty() ? new Element(label, axis, i) : joined(text(prefix), new Element(label, axis, i));
            Formula count = quantity == null ? number(1, ONE) : new Element(quantity, axis, i);
            row(
                    (prefix.isEmpty() ? "work_" : "inputs_") + axis.keys().get(i),
                    words,
                    unit,
                    count,
                    new Element(amount, axis, i));
        }
        return this;
    }

    private String unused(String key) {
        boolean taken = rows.stream().anyMatch(row -> row.key().equals(key));
        return taken ? key + "_" + rows.size() : key;
    }

    List<BudgetRow> all() {
        return List.copyOf(rows);
    }
}
