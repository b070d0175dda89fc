package org.benchmetre.farm.whole;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * What a house may cost where a year loses money: recovery, repairs and charges fall with its price in proportion, installing does not.
 *
 * <pre>
 * p = F / A (1 - L / H)
 * p  what the house may cost, money/m2     F  what it costs to build, money     A  floor, m2
 * L  what is missing in a year, money/a    H  what it costs in a year, money/a
 * </pre>
 *
 * Plain algebra.
 */
public final class HouseThatPays {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit PER_AREA = Unit.parse("money/m2");

    /**
     * What the house costs.
     *
     * @param toBuild parts that belong to it, and the house by area, money
     * @param yearly recovery, repairs and charges of these, money/a
     * @param floor floor, m2
     */
    public record House(Formula toBuild, Formula yearly, Line floor) {}

    /**
     * Declares the lines.
     *
     * @param b where a schedule is added
     * @param house what the house costs
     * @param returns what receipts leave above all costs, money/a
     */
    public HouseThatPays(BudgetBuilder b, House house, Line returns) {
        ScheduleBuilder s = b.schedule(Sheets.SUMMARY, "A house with which the year would pay");
        Line toBuild = s.line("house_to_build", "The house, to build", MONEY, house.toBuild());
        Line yearly = s.line("house_yearly", "The house, a year", YEARLY, house.yearly());
        Formula missing = none(YEARLY).minus(returns);
        Line share = s.line(
                "house_share_that_pays",
                "What it may cost against what it costs",
                ONE,
                when(yearly.isPositive(), one().minus(missing.over(yearly)), none(ONE)),
                "what is missing over what the house costs in a year: plain algebra");
        Line most = s.line(
                "house_that_pays",
                "What it may cost",
                PER_AREA,
                when(share.isPositive(), toBuild.times(share).over(house.floor()), none(PER_AREA)));
        String unit = " " + b.structure().currency() + "/m²";
        Line cheaper = s.textLine(
                "house_that_pays_told",
                "What it may cost, in words",
                joined(
                        text("The year would pay with a house whose parts cost at most "),
                        shown(most, 0),
                        text(unit + ", where they cost "),
                        shown(toBuild.over(house.floor()), 0),
                        text(".")));
        s.textLine(
                "house_sentence",
                "What the house may cost",
                when(
                        and(missing.isPositive(), yearly.isPositive()),
                        when(
                                share.isPositive(),
                                cheaper,
                                text("Not even a house for nothing would make the year pay.")),
                        text("")));
    }
}
