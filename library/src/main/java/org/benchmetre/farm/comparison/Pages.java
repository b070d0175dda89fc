package org.benchmetre.farm.comparison;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * The tables of the comparison, opened before all others so that they lead the sheet, in reading order.
 *
 * @param answer the recommendation with its reasons and doubts
 * @param side the ways side by side
 * @param causes the tables by cause
 * @param flips at which value of an entry the answer flips
 * @param target where the uniformity asked for would flip it
 */
public record Pages(
        ScheduleBuilder answer, ScheduleBuilder side, ByCause causes, ScheduleBuilder flips, ScheduleBuilder target) {

    /**
     * The tables by cause.
     *
     * @param cost yearly cost by cause and way
     * @param boxes the partial budget in four boxes
     * @param added what the boxes add up
     */
    public record ByCause(ScheduleBuilder cost, ScheduleBuilder boxes, ScheduleBuilder added) {}

    static Pages open(BudgetBuilder b) {
        Pages pages = new Pages(
                b.schedule(Sheets.IRRIGATION, "Which irrigation system"),
                b.shared(Sheets.IRRIGATION, Tables.SIDE_BY_SIDE),
                new ByCause(
                        b.schedule(Sheets.IRRIGATION, "Yearly cost per metre of bench, by cause"),
                        b.schedule(Sheets.IRRIGATION, "Partial budget: from the system chosen to its rival"),
                        b.shared(Sheets.IRRIGATION, Tables.CAUSES)),
                b.schedule(Sheets.IRRIGATION, "At which value of an entry the answer flips"),
                b.schedule(Sheets.IRRIGATION, "The uniformity asked for, and where it would flip the answer"));
        pages.side()
                .note(
                        "Yearly cost holds capital recovery, laying and removing, water, nutrient solution, pumping, maintenance and the fruit lost to "
                                + "dry plants; whatever is the same for every system is in it too. Water follows the uniformity over whole pulses, a mass-balance bound "
                                + "derived here, not published; what check valves save is told without their price.");
        return pages;
    }
}
