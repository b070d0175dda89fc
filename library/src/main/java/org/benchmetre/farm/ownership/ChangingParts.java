package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * Hours in which parts are installed and taken out, on average of a year of their life: people's time, without the interest that
 * capital recovery puts on its cost. Plain arithmetic.
 */
public final class ChangingParts {

    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");

    /** Hours a year, h/a. */
    public final Line hours;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param m parts as entered
     * @param t their quantities
     * @param life life of each part, a
     */
    public ChangingParts(BudgetBuilder b, Materials m, TakeOff t, Line life) {
        Unit each = HOURS_A_YEAR.over(DRIVER);
        Line byPart = b.shared(Sheets.MATERIALS, Tables.PARTS_YEARLY)
                .line(
                        "material_change_hours",
                        "Installing and taking out, a driver, hours on average of a year",
                        each,
                        when(
                                life.isPositive(),
                                t.rate.times(m.installHours.plus(m.removeHours)).over(life),
                                none(each)),
                        "hours over life, without interest");
        hours = b.schedule(Sheets.MATERIALS, "Hours of installing and taking out, a year of the life of parts")
                .line(
                        "parts_change_hours",
                        "Installing and taking out, hours on average of a year",
                        HOURS_A_YEAR,
                        sumProduct(t.amount, byPart, m.axis));
    }
}
