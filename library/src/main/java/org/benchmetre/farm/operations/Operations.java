package org.benchmetre.farm.operations;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.crop.Crop;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.layout.Containers;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.layout.Trough;

/** Puts the parts of this section together, in the order a reader meets them. */
public final class Operations {

    /** Picking and packing. */
    public final PickingWork fruit;
    /** Work and inputs by group. */
    public final OperationGroups groups;
    /** Share of the planting that falls in each month. */
    public final Line plantingShare;
    /** Tasks, picking and packing by month and in a year. */
    public final Labour labour;

    /**
     * Where work is done, each of which owns what work is counted by.
     *
     * @param house benches, floor and zones
     * @param containers containers
     * @param planting plants
     * @param trough substrate and mulch film
     * @param wageLevel all wages against those entered
     */
    public record Grounds(House house, Containers containers, Planting planting, Trough trough, Line wageLevel) {}

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives single entries their values
     * @param months the months
     * @param g where work is done
     * @param crop fruit, and the plants it grows on
     * @param cropShare share of each month in crop
     */
    public Operations(BudgetBuilder b, FarmEntries entries, Months months, Grounds g, Crop crop, Line cropShare) {
        Harvest harvest = crop.harvest;
        Wages wages = new Wages(b, entries, g.wageLevel());
        CropMonths inCrop = new CropMonths(b, months, cropShare, harvest, crop);
        plantingShare = inCrop.plantingShare;
        Replanting again = new Replanting(b, entries, g.planting().plantCount, crop.chosen, harvest.yield);
        TaskDrivers drivers = new TaskDrivers(b, g, again.plants, harvest.yield);
        Tasks tasks = new Tasks(b, drivers, months);
        TaskWork work = new TaskWork(b, tasks, drivers, wages, inCrop);
        fruit = new PickingWork(b, entries, wages, months, harvest, g.house().benchMetres);
        groups = new OperationGroups(b, work, fruit);
        b.caution(
                "Labour",
                "Bending, lifting and heat wear people out: plan breaks, water and carts, and keep people out after a treatment "
                        + "for as long as its label says. Hours, wages, housing and labour of minors are under local law.");
        labour = new Labour(b, groups, wages);
    }
}
