package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * The block of a whole budget that each part belongs to, as its row says. A part without a word that is counted by the floor of the house
 * is taken for a part of the house; one that is not says {@code none}.
 */
public final class PartBlocks {

    /** The structure with its cover. */
    public static final String HOUSE = "house";
    /** Boiler or heaters, fuel store, pipes. */
    public static final String HEATING_PLANT = "heating_plant";
    /** Vents and their motors, fans, pads, shade. */
    public static final String COOLING = "cooling";
    /** Supply, panels, wiring. */
    public static final String ELECTRICAL = "electrical";
    /** Where fruit is cooled and kept. */
    public static final String COLD_ROOM = "cold_room";
    /** Where fruit is graded, packed and weighed, with its fittings. */
    public static final String PACKING_PLACE = "packing_place";
    /** What carries people, inputs and fruit. */
    public static final String VEHICLES = "vehicles";

    private static final String NONE = "none";
    private static final String FLOOR = "house_area";

    /** The words a row may say. */
    static final List<String> WORDS =
            List.of(HOUSE, HEATING_PLANT, COOLING, ELECTRICAL, COLD_ROOM, PACKING_PLACE, VEHICLES, NONE);

    /** What the parts of the house cost, money. */
    public final Line house;

    private final Line cost;
    private final Line counted;
    private final Line driver;

    /**
     * Declares the lines.
     *
     * @param b where a schedule is added
     * @param m parts as entered
     * @param cost cost of each part, money
     */
    public PartBlocks(BudgetBuilder b, Materials m, Line cost) {
        this.cost = cost;
        driver = m.driver;
        Formula unsaid = when(m.driver.is(FLOOR), text(HOUSE), text(""));
        counted = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT)
                .textLine(
                        "material_block_counted",
                        "Block counted",
                        when(m.driver.isFilled(), when(m.block.isFilled(), m.block, unsaid), text("")));
        house = b.schedule(Sheets.MATERIALS, "Parts of the house")
                .line("house_parts_cost", "Parts that belong to the house", MONEY, cost(HOUSE));
    }

    /**
     * What the parts of the house take of a figure.
     *
     * @param b where a line is added
     * @param byPart along the parts, money/a
     * @return money/a
     */
    public Formula yearOfHouse(BudgetBuilder b, Formula byPart) {
        Line ofHouse = b.shared(Sheets.MATERIALS, Tables.PARTS_YEARLY)
                .line(
                        "material_house_yearly",
                        "The house: recovery with contingency, repairs, charges",
                        byPart.unit(),
                        when(counted.is(HOUSE), byPart, none(byPart.unit())));
        return sum(ofHouse, counted.axes().get(0));
    }

    /**
     * What the parts of a block cost.
     *
     * @param block one of the words
     * @return money; above zero where a part has a quantity and a price
     */
    public Formula cost(String block) {
        return sumWhere(cost, counted, text(block), counted.axes().get(0));
    }

    /**
     * What a lender calls the kind of a part: {@code house}, {@code equipment}, or {@code growing} for what plants grow in.
     *
     * @return a text along the parts, empty for an empty row
     */
    public Formula kindOfUse() {
        Formula growing = or(counted.is(NONE), not(counted.isFilled()));
        Formula kind = when(
                counted.is(HOUSE),
                text(FundKind.HOUSE.key()),
                when(growing, text(FundKind.GROWING.key()), text(FundKind.EQUIPMENT.key())));
        return when(driver.isFilled(), kind, text(""));
    }
}
