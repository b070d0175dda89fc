package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.farm.irrigation.clogging.FailedOutlets;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.takeoff.Materials;

/** Gathers the entries whose value decides between ways to water. */
public final class DoubtfulEntries {

    private final BudgetBuilder b;
    private final String currency;
    private final List<Flips.Doubtful> entries = new ArrayList<>();

    /**
     * Starts with none.
     *
     * @param b knows the plausible ranges of single entries
     * @param currency ISO 4217 code of all money
     */
    public DoubtfulEntries(BudgetBuilder b, String currency) {
        this.b = b;
        this.currency = currency;
    }

    /**
     * Adds life, price and clogging of what carries the outlets of each way in the files.
     *
     * @param ways ways to water
     * @param m parts as entered
     * @param failed outlets that fail
     * @return this
     */
    public DoubtfulEntries ofWays(Ways ways, Materials m, FailedOutlets failed) {
        return this;
    }

    /**
     * Adds a single entry with its own plausible range.
     *
     * @param line an entry
     * @return this
     */
    public DoubtfulEntries add(Line line) {
        Plausible range = b.entry(line).plausible();
        entries.add(new Flips.Doubtful(
                line.id(),
                line.label(),
                line.id(),
                text(line.unit().display(currency)),
                line.counting(ONE),
                Flips.bound(range.low()),
                Flips.bound(range.high())));
        return this;
    }

    /**
     * Adds one cell of a table, whose range stands in two other columns.
     *
     * @param label what a reader sees
     * @param unit the unit, a text; of the row where it has one
     * @param key of the row
     * @param value the entry along the rows
     * @param low low end along the rows
     * @param high high end along the rows
     * @return this
     */
    public DoubtfulEntries add(String label, Formula unit, String key, Line value, Line low, Line high) {
        Axis axis = value.axes().get(0);
        int row = axis.indexOf(key);
        entries.add(new Flips.Doubtful(
                value.id() + "_" + key,
                label,
                value.id() + "[" + key + "]",
                unit,
                cell(value, axis, row),
                cell(low, axis, row),
                cell(high, axis, row)));
        return this;
    }

    private static Formula cell(Line line, Axis axis, int row) {
        return new Element(line, axis, row).counting(ONE);
    }

    /**
     * All of them.
     *
     * @return in the order they were added
     */
    public List<Flips.Doubtful> all() {
        return List.copyOf(entries);
    }
}
