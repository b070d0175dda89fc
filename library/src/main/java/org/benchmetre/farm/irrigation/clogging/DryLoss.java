package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.number;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.House;

/**
 * What dry plants cost: the fruit they would have borne, at what a kilogram leaves after all that moves with yield, and planting
 * again. Plain products.
 */
public final class DryLoss {

    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");
    private static final Unit MONEY_A_METRE = Unit.parse("money/(m a)");

    /** Value of the fruit lost, money/a, by way. */
    public final Line fruitLostValue;
    /** Fruit and replanting, money/a, by way. */
    public final Line loss;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param dry plants that fall dry
     * @param plantCount plants in the house
     * @param netPerKg what a kilogram leaves after all that moves with yield
     * @param house benches
     */
    public DryLoss(BudgetBuilder b, DryPlants dry, Line plantCount, Line netPerKg, House house) {
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.DRY_PLANTS);
        s.note(
                "Fruit lost is worth what a kilogram leaves after all that moves with yield; below zero when it leaves less "
                        + "than nothing.");
        fruitLostValue =
                s.line("way_fruit_lost_value", "Value of the fruit lost", MONEY_A_YEAR, dry.fruitLost.times(netPerKg));
        loss = s.line("way_dry_loss", "Loss by dry plants", MONEY_A_YEAR, fruitLostValue.plus(dry.replanting));
        s.line(
                "way_loss_per_percent",
                "Loss per metre for each 1 % of plants dry in a year",
                MONEY_A_METRE,
                dry.fruitOfOne
                        .times(netPerKg)
                        .plus(dry.replantOfOne)
                        .times(number(0.01, Unit.parse("1/a")))
                        .times(plantCount)
                        .over(house.benchMetres),
                "one of a hundred plants: fruit and replanting of one, times plants");
    }
}
