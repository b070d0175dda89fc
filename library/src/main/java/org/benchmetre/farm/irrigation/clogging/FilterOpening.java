package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.farm.input.TradeUnits.MILLIMETRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * The filter against the outlet: its openings are to be no wider than a seventh of the smallest passage of the outlet (a seventh to a
 * tenth is the usual advice of micro-irrigation texts; from memory), because grains that pass singly bridge together.
 */
public final class FilterOpening {

    private static final double GRAINS_THAT_BRIDGE = 7;

    /**
     * Declares the entry, the column and the lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param ways irrigation systems
     */
    public FilterOpening(BudgetBuilder b, FarmEntries entries, Ways ways) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Filter");
        s.note("Openings of 0.13 mm are about 120 mesh.");
        Line opening = entries.add(
                s.entry("filter_opening", "Opening of the filter", MILLIMETRE).above(0, 10));
        ScheduleBuilder list = b.shared(Sheets.IRRIGATION, Tables.FAILING);
        Line passage = ways.columns
                .in(list)
                .numbers(
                        "outlet_passage",
                        "way_outlet_passage",
                        "Smallest passage of an outlet, blank when unknown",
                        MILLIMETRE,
                        new Bounds(0, true, 50, false),
                        0);
        Line widest = list.line(
                "way_widest_opening",
                "Widest opening that protects it",
                MILLIMETRE,
                passage.over(number(GRAINS_THAT_BRIDGE, ONE)),
                "a seventh of the passage; from memory");
        list.warning(
                "way_filter_warning",
                "Filter against the outlet",
                and(passage.isPositive(), opening.exceeds(widest)),
                "The filter is coarser than these outlets need, a seventh of their smallest passage (from memory): lower "
                        + "filter_opening, or take outlets with a wider passage.");
    }
}
