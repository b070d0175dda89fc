package org.benchmetre.farm.finance;

import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.takeoff.FirstCost;

/** What the start takes in cash: parts in whole packs, installing them, whole plants, house by area, contingency. Plain sums. */
public final class StartUp {

    /** Installation labour for the chosen way, money. */
    public final Line labour;
    /** House by area and contingency, money. */
    public final Line lumps;
    /** All of it, money. */
    public final Line cash;

    StartUp(ScheduleBuilder s, FirstCost first, Line house, Line contingency) {
        labour = s.line("startup_labour", "Installation labour", MONEY, first.ofWay(first.wayLabour));
        lumps = s.line("startup_lumps", "House by area, contingency", MONEY, house.plus(contingency));
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
    }
}
