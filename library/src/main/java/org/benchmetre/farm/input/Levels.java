package org.benchmetre.farm.input;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;

/** One number that moves many entries at once, 1 for those as entered: what would change if all wages, plants or parts cost more. */
public final class Levels {

    /** All wages against those entered. */
    public final Line wages;
    /** All prices of plants against those entered. */
    public final Line plants;
    /** All prices of parts against those entered. */
    public final Line parts;

    /**
     * Declares the entries.
     *
     * @param b where the schedule is added
     * @param entries gives entries their values
     */
    public Levels(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Levels: many entries at once");
        wages = level(s, entries, "wage_level", "All wages against those entered");
        plants = level(s, entries, "plant_price_level", "All prices of plants against those entered");
        parts = level(s, entries, "parts_price_level", "All prices of parts against those entered");
    }

    private static Line level(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, ONE).from(0, 10));
    }
}
