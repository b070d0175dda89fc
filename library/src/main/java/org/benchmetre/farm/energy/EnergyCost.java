package org.benchmetre.farm.energy;

import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_MONTH;
import static org.benchmetre.farm.energy.EnergyUnits.MONEY_A_YEAR;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** Fuel and electricity together, by month and in a year, in all and per m² of floor. Pumps are not here. Sums. */
public final class EnergyCost {

    /** Fuel and electricity, money/mo, by month. */
    public final Line byMonth;
    /** Fuel and electricity in a year, money/a. */
    public final Line total;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param heating fuel
     * @param electricity without pumps
     * @param floor of the house
     */
    public EnergyCost(BudgetBuilder b, Heating heating, Electricity electricity, Line floor) {
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.ENERGY);
        byMonth = s.line(
                "energy_cost",
                "Fuel and electricity, without pumps",
                MONEY_A_MONTH,
                heating.cost.plus(electricity.cost));
        s.line("energy_cost_month_area", "Per m² of floor", Unit.parse("money/(m2 mo)"), byMonth.over(floor));
        ScheduleBuilder year = b.schedule(Sheets.OPERATIONS, "Cost of energy in a year");
        total = year.line(
                "energy_cost_total",
                "Fuel and electricity, without pumps",
                MONEY_A_YEAR,
                heating.costOfYear.plus(electricity.costOfYear));
        year.line("energy_cost_per_area", "Per m² of floor", Unit.parse("money/(m2 a)"), total.over(floor));
    }
}
