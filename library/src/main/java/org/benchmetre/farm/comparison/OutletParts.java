package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.clogging.FailedOutlets;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.takeoff.Materials;

/**
 * Parts that carry the outlets of the first rows of the ways table, each part once, in the row of the first way that has it. What is
 * asked of a part is looked up once here, so that no block of entries and ways goes through all parts in each of its cells.
 */
final class OutletParts {

    /** How many rows of the ways table are looked at: entries times ways is worked out, so both cannot grow together. */
    static final int MOST = 20;

    /** One row for each of the first ways. */
    final Axis axis;
    /** Key of the part; empty where a way before has it, or where there is none. */
    final Line item;

    private final Materials materials;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param ways irrigation systems
     * @param materials parts as entered
     * @param failed knows the part that carries the outlets of each way
     */
    OutletParts(BudgetBuilder b, Ways ways, Materials materials, FailedOutlets failed) {
        this.materials = materials;
        int filled = Math.min(ways.axis.filled(), MOST);
        int spare = Math.min(ways.axis.size(), MOST) - filled;
        axis = Axis.rows("outlet_part", "Outlets of", ways.axis.keys().subList(0, filled), spare);
        Line part = b.shared(Sheets.IRRIGATION, Tables.SYSTEM_SLOPES)
                .textLine(
                        "way_part",
                        "Part that carries the outlets",
                        when(
                                ways.key.isFilled(),
                                when(failed.itemsFound.isPositive(), failed.outletItem, text("")),
                                text("")));
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.OUTLET_PARTS);
        b.nameRows(axis, s.textLine("way_part_of", "Outlets of", rows(row -> new Element(ways.label, ways.axis, row))));
        item = s.textLine(
                "way_part_once",
                "Part that carries them, where no system before has it",
                rows(row -> once(ways, part, new Element(part, ways.axis, row), row)));
    }

    private static Formula once(Ways ways, Line part, Formula own, int row) {
        Formula isFirst = lookup(ways.key, part, own).is(new Element(ways.key, ways.axis, row));
        return when(own.isFilled(), when(isFirst, own, text("")), text(""));
    }

    private Formula rows(Function<Integer, Formula> formula) {
        List<Formula> rows =
                IntStream.range(0, axis.size()).boxed().map(formula).toList();
        return new Rows(axis, rows);
    }

    /**
     * What a column holds of each part.
     *
     * @param column a line of parts
     * @param otherwise stands where the row has no part
     * @return by row here
     */
    Formula of(Line column, Formula otherwise) {
        return when(item.isFilled(), lookup(column, materials.key, item), otherwise);
    }

    /**
     * The key of the part in one row.
     *
     * @param row of this axis
     * @return a text
     */
    Formula itemIn(int row) {
        return new Element(item, axis, row);
    }

    /**
     * Where the key of the part in one row stands.
     *
     * @param row of this axis
     * @return the cell
     */
    CellRef cell(int row) {
        return new CellRef(item, row);
    }
}
