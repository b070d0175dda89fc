package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.CropPlants;
import org.benchmetre.farm.crop.Crops;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * The work of setting plants again: those lost before they are established and those replaced later, crown too deep or too high,
 * roots bent. How many fail, and what new ones cost, stands with the plant stock.
 */
public final class Replanting {

    private static final Unit KG_A_YEAR = Unit.parse("kg/a");

    /** Plants to set again, a crop. */
    public final Line plants;

    /**
     * Declares entries and lines.
     *
     * @param b where schedule and caution are added
     * @param entries gives entries their values
     * @param plantCount plants that stand
     * @param grown the plants of the crops
     * @param picked fruit picked in a year
     */
    public Replanting(BudgetBuilder b, FarmEntries entries, Line plantCount, CropPlants grown, Line picked) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Planting and replanting");
        s.note(
                "Set the crown level with the surface and the roots straight down. The plants to replant are a driver that a "
                        + "task may name; what share fails, and what new plants cost, stands with the plant stock.");
        Line loss = entries.add(s.entry("bent_root_loss", "Yield a plant with bent roots loses, share", ONE)
                .from(0, 1));
        Crops crops = grown.crops();
        Line byCrop = b.shared(Sheets.CROP, Tables.CROPS)
                .line(
                        "crop_plants_set_out",
                        "Plants to set out",
                        PLANT,
                        crops.newShare.times(crops.ofKind(grown.stock().setOut)));
        Line set = s.line(
                "plants_set_out",
                "Plants to set out on all benches",
                PLANT,
                when(crops.allNew.isPositive(), sum(byCrop, crops.axis).over(crops.allNew), plantCount),
                "average over the crops with new plants");
        plants = s.line("replanted_plants", "Plants to replant", PLANT, set.minus(plantCount));
        s.line(
                "bent_root_fruit",
                "Fruit lost a year if as many kept bent roots",
                KG_A_YEAR,
                when(plantCount.isPositive(), picked.times(loss).times(plants.over(plantCount)), none(KG_A_YEAR)),
                "for comparison only: it is not taken from the yield");
        b.caution(
                "Planting",
                "A crown set too deep rots and one set too high dries out; roots bent upwards at planting cost yield for the "
                        + "whole crop. Check the first bench before the rest is planted.");
    }
}
