package org.benchmetre.farm.operations;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;

/** Puts the parts of this section together, in the order a reader meets them. */
public final class Operations {

    /** Picking and packing. */
    public final PickingWork fruit;
    /** Work and inputs by group. */
    public final OperationGroups groups;
    /** Work by month and in a year. */
    public final Labour labour;

    /**
     * What work is counted by, each owned by its own section.
     *
     * @param benchMetres all benches end to end
     * @param benchCount benches
     * @param containerCount containers
     * @param plantCount plants
     * @param houseArea floor
     * @param substrateVolume substrate in place
     * @param mulchMetres metres of mulch film
     * @param zoneCount zones watered one after the other
     * @param cropsPerYear crops in a year
     * @param yield marketable fruit picked in a year, the sum of its months
     * @param monthYield marketable fruit picked in each month
     * @param cropShare share of each month in crop
     * @param setOut plants set out of the chosen stock
     * @param stands weeks a year the chosen stock stands, wk/a
     */
    public record Grounds(
            Line benchMetres,
            Line benchCount,
            Line containerCount,
            Line plantCount,
            Line houseArea,
            Line substrateVolume,
            Line mulchMetres,
            Line zoneCount,
            Line cropsPerYear,
            Line yield,
            Line monthYield,
            Line cropShare,
            Formula setOut,
            Formula stands) {}

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives single entries their values
     * @param months the months
     * @param g what work is counted by
     */
    public Operations(BudgetBuilder b, FarmEntries entries, Months months, Grounds g) {
        Wages wages = new Wages(b, entries);
        CropMonths crop = new CropMonths(b, months, g.cropShare(), g.monthYield(), g.yield(), g.stands());
        Replanting again = new Replanting(b, entries, g.plantCount(), g.setOut(), g.yield());
        TaskDrivers drivers = new TaskDrivers(
                b,
                new TaskDrivers.Amounts(
                        g.benchMetres(),
                        g.benchCount(),
                        g.containerCount(),
                        g.plantCount(),
                        again.plants,
                        g.houseArea(),
                        g.substrateVolume(),
                        g.mulchMetres(),
                        g.zoneCount(),
                        g.yield()));
        Tasks tasks = new Tasks(b, drivers, months);
        TaskWork work = new TaskWork(b, tasks, drivers, wages, crop, g.cropsPerYear(), months);
        fruit = new PickingWork(b, entries, wages, months, g.monthYield(), g.yield(), g.benchMetres());
        groups = new OperationGroups(b, tasks, work, fruit);
        b.caution(
                "Work",
                "Bending, lifting and heat wear people out: plan breaks, water and carts, and keep people out after a treatment "
                        + "for as long as its label says. Hours, wages, housing and work of minors are under local law.");
        labour = new Labour(b, entries, tasks, work, fruit, groups, wages, months, g.benchMetres());
    }
}
