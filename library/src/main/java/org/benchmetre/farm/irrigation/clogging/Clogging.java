package org.benchmetre.farm.irrigation.clogging;

import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Clogging of the lines, put together in two steps: which plants fall dry and what fruit that takes, then, when it is known what a
 * kilogram leaves, what all of it costs.
 */
public final class Clogging {

    private final BudgetBuilder b;
    private final FarmEntries entries;
    private final Ways ways;
    private final Line outletsInReach;
    private final Line wage;
    private FailedOutlets failed;
    private DryPlants dry;
    private DryLoss loss;
    private LineCare care;

    /**
     * Declares the quality of the water and the filter.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param h hydraulics of the benches
     * @param wage wage of whoever cares for the lines
     * @param following causes of clogging that follow from the analysis of the raw water, by their key
     */
    public Clogging(BudgetBuilder b, FarmEntries entries, Hydraulics h, Line wage, Map<String, Line> following) {
        this.b = b;
        this.entries = entries;
        this.ways = h.ways;
        this.outletsInReach = h.outletsInReach;
        this.wage = wage;
        new WaterQuality(b, entries, following);
        new FilterOpening(b, entries, ways);
    }

    /**
     * First step.
     *
     * @param carriers the parts that carry the outlets
     * @param fruit marketable fruit of the house before any plant falls dry, kg/a
     * @param newPlant cost of one established plant, money/plant
     * @return marketable fruit lost, kg/a, by way
     */
    public Line fruitLost(FailedOutlets.Parts carriers, Line fruit, Formula newPlant) {
        failed = new FailedOutlets(b, entries, ways, carriers, outletsInReach);
        dry = new DryPlants(
                b, entries, ways, failed, new DryPlants.Plants(ways.planting.plantCount, fruit, newPlant), wage);
        return dry.fruitLost;
    }

    /**
     * Second step.
     *
     * @param netPerKg what a kilogram leaves after all that moves with yield
     */
    public void value(Line netPerKg) {
        loss = new DryLoss(b, dry, ways.planting.plantCount, netPerKg, ways.house);
        care = new LineCare(b, entries, ways, dry, wage);
    }

    /**
     * Outlets that fail.
     *
     * @return known after the first step
     */
    public FailedOutlets failed() {
        return failed;
    }

    /**
     * Plants that fall dry.
     *
     * @return known after the first step
     */
    public DryPlants dry() {
        return dry;
    }

    /**
     * What they cost.
     *
     * @return known after the second step
     */
    public DryLoss loss() {
        return loss;
    }

    /**
     * Irrigation maintenance.
     *
     * @return known after the second step
     */
    public LineCare care() {
        return care;
    }
}
