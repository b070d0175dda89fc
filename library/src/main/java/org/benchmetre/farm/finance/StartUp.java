package org.benchmetre.farm.finance;

import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.takeoff.FirstCost;

/** What the start takes in cash: parts in whole packs, installing them, whole plants. Plain sums. */
public final class StartUp {

    /** Installation labour for the chosen way, money. */
    public final Line labour;
    /** All of it, money. */
    public final Line cash;

    StartUp(ScheduleBuilder s, FirstCost first) {
        labour = s.line("startup_labour", "Installation labour", MONEY, first.ofWay(first.wayLabour));
        cash = s.line(
                "startup_cash",
                "Start-up: parts in whole packs, installation, whole plants",
                MONEY,
                first.parts.takeOff().purchase.plus(labour).plus(first.order.cost));
    }
}
