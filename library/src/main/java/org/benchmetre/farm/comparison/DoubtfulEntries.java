package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.decision.Sought;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.clogging.FailedOutlets;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.takeoff.Materials;

/**
 * Gathers the entries whose value decides between irrigation systems. Life and price belong to a part: where several ways share the part
 * that carries their outlets, it stands once, in the rows of the first of them. Each spare row for a way has its rows as well, but
 * only the first {@value OutletParts#MOST} rows of the ways table are looked at, filled or spare.
 */
public final class DoubtfulEntries {

    private final BudgetBuilder b;
    private final String currency;
    private final List<Doubtful> filled = new ArrayList<>();
    private final List<Doubtful> spare = new ArrayList<>();
    private boolean leftOut;

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
     * Adds life and price of what carries the outlets, and the outlets that fail, of every way.
     *
     * @param failed outlets that fail
     * @param slopes what prices move
     * @return this
     */
    public DoubtfulEntries ofWays(FailedOutlets failed, CostSlopes slopes) {
        Ways ways = slopes.ways();
        Materials m = slopes.materials();
        OutletParts carriers = new OutletParts(b, ways, m, failed);
        Line perPrice = slopes.ofPrice(b, carriers);
        leftOut = ways.axis.filled() > OutletParts.MOST;
        List<Formula> typed = m.axis.keys().stream().map(key -> text(key)).toList();
        Line rowKey = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT)
                .textLine("material_row_key", "Key of its row", new Rows(m.axis, typed));
        for (int way = 0; way < carriers.axis.size(); way++) {
            List<Doubtful> rows = ways.axis.isSpare(way) ? spare : filled;
            String key = ways.axis.keys().get(way);
            OfPart carrier = new OfPart(b, m, rowKey, carriers.itemIn(way), carriers.cell(way));
            rows.add(carrier.life("material_life_" + key));
            rows.add(carrier.price("material_price_" + key, text(currency), new Element(perPrice, carriers.axis, way)));
            rows.add(failing(ways, failed, way));
        }
        return this;
    }

    /** Life and price of a part that a text names. */
    private record OfPart(BudgetBuilder b, Materials m, Line rowKey, Formula item, CellRef cell) {

        private Bounds bounds(Line entry) {
            return b.entry(entry).bounds();
        }

        Doubtful life(String key) {
            return new Doubtful(
                    key,
                    words("Life of ", years(), m.life),
                    new Doubtful.Values(number(m.life), number(m.lifeLow), number(m.lifeHigh), bounds(m.life)),
                    new Doubtful.Searched(new Sought(m.life, m.key, cell)));
        }

        Doubtful price(String key, Formula currency, Formula slope) {
            return new Doubtful(
                    key,
                    words("Price of a pack of ", when(item.isFilled(), currency, text("")), m.price),
                    new Doubtful.Values(number(m.price), number(m.priceLow), number(m.priceHigh), bounds(m.price)),
                    new Doubtful.Straight(slope));
        }

        /** The unit of a life as people read it. */
        private Formula years() {
            Formula words = when(lookup(m.lifeUnit, m.key, item).is("crop"), text("crops"), text("yr"));
            return when(item.isFilled(), words, text(""));
        }

        private Doubtful.Words words(String what, Formula unit, Line entry) {
            Formula address = joined(text(entry.id() + "["), lookup(rowKey, m.key, item), text("]"));
            return new Doubtful.Words(
                    when(item.isFilled(), joined(text(what), lookup(m.label, m.key, item)), text("")),
                    unit,
                    when(item.isFilled(), address, text("")));
        }

        private Formula number(Line column) {
            return of(column, none(column.unit())).counting(ONE);
        }

        private Formula of(Line column, Formula otherwise) {
            return when(item.isFilled(), lookup(column, m.key, item), otherwise);
        }
    }

    private Doubtful failing(Ways ways, FailedOutlets failed, int way) {
        String key = ways.axis.keys().get(way);
        Formula wayKey = new Element(ways.key, ways.axis, way);
        Formula name = new Element(ways.label, ways.axis, way);
        Line entry = failed.failedPerYear;
        return new Doubtful(
                entry.id() + "_" + key,
                new Doubtful.Words(
                        ifFilled(wayKey, joined(text("Failing outlets of "), name)),
                        ifFilled(wayKey, text(entry.unit().display(currency))),
                        ifFilled(wayKey, text(entry.address(way)))),
                new Doubtful.Values(
                        new Element(entry, ways.axis, way).counting(ONE),
                        new Element(failed.failedLow, ways.axis, way).counting(ONE),
                        new Element(failed.failedHigh, ways.axis, way).counting(ONE),
                        b.entry(entry).bounds()),
                new Doubtful.Searched(new Sought(entry, ways.key, new CellRef(ways.key, way))));
    }

    private static Formula ifFilled(Formula key, Formula words) {
        return when(key.isFilled(), words, text(""));
    }

    /**
     * Adds a single entry with its own plausible range, in which the cost of every way is a straight line.
     *
     * @param line an entry
     * @param range the ends of its usual range
     * @param slope yearly cost per metre for one unit of it, by way
     * @return this
     */
    public DoubtfulEntries add(Line line, FarmEntries.Range range, Line slope) {
        Entry entry = b.entry(line);
        filled.add(new Doubtful(
                line.id(),
                new Doubtful.Words(text(line.label()), text(shown(line)), text(line.id())),
                new Doubtful.Values(
                        line.counting(ONE),
                        range.low().counting(ONE),
                        range.high().counting(ONE),
                        entry.bounds()),
                new Doubtful.Straight(slope)));
        return this;
    }

    /** A plain number has no unit. */
    private String shown(Line line) {
        return line.unit().equals(ONE) ? "" : line.unit().display(currency);
    }

    /** All of them, those of spare rows last. */
    List<Doubtful> all() {
        List<Doubtful> all = new ArrayList<>(filled);
        all.addAll(spare);
        return List.copyOf(all);
    }

    /** Whether ways in use stand in rows that are not looked at. */
    boolean leavesOutWays() {
        return leftOut;
    }

    /** How many are of spare rows. */
    int spare() {
        return spare.size();
    }
}
