package org.benchmetre.farm.finance;

import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Paid;
import org.benchmetre.farm.takeoff.FirstCost;

/** What the start takes in cash: parts in whole packs, installing them, whole plants, house by area, contingency. Plain sums. */
public final class StartUp {

    /** Installation labour for the chosen way, money. */
    public final Line labour;
    /** Plants, money. */
    public final Line plants;
    /** House by area and contingency, money. */
    public final Line lumps;
    /** All of it, money. */
    public final Line cash;

    StartUp(BudgetBuilder b, ScheduleBuilder s, FirstCost first, Line house, Line contingency) {
        Paid paid = new Paid(b);
        plants = first.order.cost;
        labour = s.line(
                "startup_labour", "Installation labour", MONEY, paid.of(first.ofWay(first.wayLabour)), Paid.SOURCE);
        lumps = s.line(
                "startup_lumps", "House by area, contingency", MONEY, paid.of(house.plus(contingency)), Paid.SOURCE);
        cash = s.line(
                "startup_cash",
                "Start-up: parts in whole packs, installation, whole plants, house by area, contingency",
                MONEY,
                first.parts
                        .takeOff()
                        .purchase
                        .plus(labour)
                        .plus(first.order.cost)
                        .plus(lumps));
        s.line(
                "startup_left",
                "Left over of whole packs and plants, rounded up to what is paid",
                MONEY,
                cash.minus(first.total));
    }
}
