package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * The house by its floor: so much a square metre, recovered over its life, with insurance and property tax as on parts. It counts only
 * where no part belongs to the house and no charge is made by bench and week, so that the house is counted once.
 */
public final class HouseByArea {

    /** What the house costs, money; 0 where it is counted otherwise. */
    public final Line cost;
    /** Life, a. */
    public final Line life;
    /** Share of its unexpired cost that a sale would bring. */
    public final Line resale;
    /** Floor of the house, m2. */
    public final Line floor;
    /** Capital recovery, money/a. */
    public final Line recovery;
    /** Insurance and property tax, money/a. */
    public final Line charges;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param rates rates and rules of ownership
     * @param floor of the house, m2
     * @param parts cost of the parts that belong to the house, money
     * @param benchWeeks charge for the house by bench and week, money/a
     */
    public HouseByArea(
            BudgetBuilder b, FarmEntries entries, OwnershipRates rates, Line floor, Line parts, Line benchWeeks) {
        this.floor = floor;
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "House, by area");
        Line price = entries.add(s.entry("house_cost_per_area", "House, by area", Unit.parse("money/m2"))
                .from(0, 1e6));
        life = entries.add(s.entry("house_life", "Life of the house, by area", Unit.parse("a"))
                .above(0, 200));
        resale = entries.add(s.entry("house_resale", "House by area, share of unexpired cost a sale brings", ONE)
                .from(0, 1));
        Formula otherwise = or(parts.isPositive(), benchWeeks.isPositive());
        cost = s.line("house_by_area_cost", "House, by area", MONEY, when(otherwise, none(MONEY), price.times(floor)));
        recovery = s.line(
                "house_by_area_recovery",
                "House by area, recovered over its life",
                Unit.parse("money/a"),
                cost.times(rates.ofCost(life)),
                OwnershipRates.RECOVERED);
        charges = s.line(
                "house_by_area_charges",
                "House by area, insurance and property tax",
                Unit.parse("money/a"),
                rates.charges(cost, none(MONEY)),
                OwnershipRates.CHARGED);
        s.warning(
                "house_by_area_warning",
                "House counted once",
                and(price.isPositive(), otherwise),
                "The house is counted by its parts or by bench and week, so its cost by area counts nothing: set that cost to 0, "
                        + "or write none as the block of parts that are no house.");
    }
}
