package org.benchmetre.farm.levers;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.WhatIf;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.farm.input.Sheets;

/**
 * Returns of a square metre over steps of two entries: fruit per plant and price, and any two levers. The first takes shares of both
 * entries, which a reader may change; the second goes from end to end of both usual ranges, by half of the way to the plan.
 */
public final class WhatIfTables {

    private static final double[] FRUIT = {0.7, 0.85, 1, 1.15, 1.3};
    private static final double[] PRICE = {0.8, 0.9, 1, 1.1, 1.2};
    private static final int STEPS = 5;

    private final BudgetBuilder b;
    private final Line target;

    /**
     * Declares both tables.
     *
     * @param b where schedules are added; the figure and all it is made of are defined already
     * @param levers entries of the second table
     * @param target returns of a square metre, money/(m2 a)
     */
    public WhatIfTables(BudgetBuilder b, LeverList levers, Line target) {
        this.b = b;
        this.target = target;
        second(levers);
    }

    /**
     * Adds the first table.
     *
     * @param fruit the entry that moves the fruit of all crops
     * @param level level of fruit prices, an entry
     * @param grams fruit per plant and crop, a single figure that it alone moves
     * @param price average price of fruit of the plan, which moves with the level in proportion
     */
    public void first(Line fruit, Line level, Line grams, Line price) {
        ScheduleBuilder result = b.schedule(Sheets.WHAT_IF, "Returns over fruit per plant and price");
        result.note("The steps are shares of what is entered; change them as you like.");
        Line fruitShare = shares("whatif_yield", "Fruit per plant, steps", FRUIT);
        Line priceShare = shares("whatif_price_level", "Price of fruit, steps", PRICE);
        WhatIf.Steps down = steps("yield", "whatif_yield", fruitShare, fruit);
        WhatIf.Steps across = steps("price", "whatif_price_level", priceShare, level);
        Formula table = WhatIf.table(b, Sheets.CASES, target, down, across);
        b.schedule(Sheets.WHAT_IF, "Fruit per plant at each step")
                .line("whatif_grams", grams.label(), grams.unit(), fruitShare.times(grams));
        b.schedule(Sheets.WHAT_IF, "Price of fruit at each step")
                .line("whatif_price", "Average price of fruit", price.unit(), priceShare.times(price));
        result.line("whatif_returns", target.label(), target.unit(), table);
    }

    private Line shares(String id, String title, double... shares) {
        List<Given> given = new ArrayList<>();
        for (double share : shares) {
            given.add(Given.number(share, ONE).from("a step of the table; change it as you like"));
        }
        return b.schedule(Sheets.WHAT_IF, title)
                .entry(id + "_share", "Share of what is entered", ONE, steps(id, title))
                .from(0, 100)
                .given(given);
    }

    private WhatIf.Steps steps(String name, String id, Line share, Line entry) {
        ScheduleBuilder s = b.schedule(Sheets.WHAT_IF, entry.label() + " at each step");
        return new WhatIf.Steps(
                entry, name, share.axes().get(0), s.line(id, entry.label(), entry.unit(), share.times(entry)));
    }

    private void second(LeverList levers) {
        Lever down = levers.named(b.structure().choices().getOrDefault(LeverList.DOWN, LeverList.USUAL_DOWN));
        Lever across = levers.named(b.structure().choices().getOrDefault(LeverList.ACROSS, LeverList.USUAL_ACROSS));
        ScheduleBuilder result =
                b.schedule(Sheets.WHAT_IF, "Returns over two levers: " + down.label() + " and " + across.label());
        Formula table = WhatIf.table(b, Sheets.CASES, target, range("down", down), range("across", across));
        result.line("second_returns", target.label(), target.unit(), table);
    }

    private WhatIf.Steps range(String name, Lever lever) {
        String id = "second_" + name;
        Axis axis = steps(id, lever.label() + ", steps");
        Line entry = lever.entry();
        List<Formula> values =
                List.of(lever.low(), between(lever.low(), entry), entry, between(entry, lever.high()), lever.high());
        Line value = b.schedule(Sheets.WHAT_IF, lever.label() + ", steps")
                .line(
                        id + "_value",
                        lever.label(),
                        entry.unit(),
                        new Rows(axis, values),
                        "ends of the usual range, the plan, and halfway: a choice of this table");
        return new WhatIf.Steps(entry, name, axis, value);
    }

    private static Formula between(Formula low, Formula high) {
        return low.plus(high).times(number(0.5, ONE));
    }

    private static Axis steps(String id, String title) {
        return Axis.rows(
                id + "_step",
                title,
                IntStream.rangeClosed(1, STEPS).mapToObj(i -> "step_" + i).toList(),
                0);
    }
}
