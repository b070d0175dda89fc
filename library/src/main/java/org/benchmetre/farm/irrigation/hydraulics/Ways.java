package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.OUTLET;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * The open list of irrigation systems: how many lines lie on a bench and where their outlets are. Outlets follow the plants (so many
 * per plant) or the line (one every so often along each line); the second goes before the first. Plain counting.
 */
public final class Ways {

    /** The file. */
    public static final String FILE = FarmTable.IRRIGATION.file();

    /** The columns of the file, for sections that ask for more of them. */
    public final Columns columns;
    /** One row for each way. */
    public final Axis axis;
    /** Keys. */
    public final Line key;
    /** Labels. */
    public final Line label;
    /** Outlets of the house, if watered this way. */
    public final Line outletCount;
    /** Metres of line of the house, if watered this way, m. */
    public final Line lineMetres;
    /** Lines on a bench. */
    public final Line lines;
    /** Outlets a plant, where outlets follow the plants, outlet/plant. */
    public final Line perPlant;
    /** Spacing of outlets along a line, m; 0 where outlets follow the plants. */
    public final Line spacing;
    /** Extra length of each line, m. */
    public final Line tail;
    /** The benches they water. */
    public final House house;
    /** The plants they water. */
    public final Planting planting;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param house benches
     * @param planting plants
     */
    public Ways(BudgetBuilder b, House house, Planting planting) {
        this.house = house;
        this.planting = planting;
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Irrigation systems");
        s.note(
                "Every system is priced at once; the one chosen on the sheet of entries is counted. A fourth system is one more row, "
                        + "and its parts carry its key.");
        columns = Columns.of(b, FarmTable.IRRIGATION, s);
        axis = columns.axis();
        label = columns.names("way_label", "Irrigation system");
        key = columns.keys("way_key", "Key");
        lines = columns.numbers("lines", "way_lines", "Lines on a bench", ONE, new Bounds(0, true, 20, false), 1);
        perPlant = columns.numbers(
                "outlets_per_plant",
                "way_outlets_per_plant",
                "Outlets a plant",
                Unit.parse("outlet/plant"),
                new Bounds(0, true, 20, false),
                0);
        spacing = columns.numbers(
                "outlet_spacing", "way_outlet_spacing", "Outlet spacing", METRE, new Bounds(0, true, 10, false), 0);
        tail = columns.numbers(
                "tail", "way_tail", "Extra length of each line", METRE, new Bounds(0, true, 100, false), 0);
        columns.words("source", "way_source", "Source");
        b.rule(new OutletsGiven(key, perPlant, spacing));

        Formula onTheLine = house.benchCount
                .counting(ONE)
                .times(lines)
                .times(house.benchLength.over(spacing).wholeDown())
                .counting(OUTLET);
        outletCount = s.line(
                "way_outlet_count",
                "Outlets",
                OUTLET,
                when(spacing.isPositive(), onTheLine, planting.plantCount.times(perPlant)));
        lineMetres = s.line(
                "way_line_metres",
                "Metres of line",
                METRE,
                house.benchCount.counting(ONE).times(lines).times(house.benchLength.plus(tail)));
    }

    /**
     * Guards a formula against spare rows.
     *
     * @param formula along this axis or single
     * @return the formula where the way has a key, else nothing
     */
    public Formula whereFilled(Formula formula) {
        return when(key.isFilled(), formula, none(formula.unit()));
    }
}
