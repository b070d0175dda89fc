package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.HOUR;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * What the line itself costs, apart from all that is the same whichever way is chosen: the parts that carry the key of a way. Plain
 * sums over those parts.
 */
public final class LineShare {

    private static final Unit YEARLY = Unit.parse("money/a");

    /** First cost of the line, installed, by way. */
    final Line first;
    /** Its parts a year, recovered or used up, and repairs, by way. */
    final Line parts;
    /** Installing and taking out a year, by way. */
    final Line labour;
    /** Insurance, property tax and contingency a year, by way. */
    final Line charges;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param m parts as entered
     * @param t their quantities and costs
     * @param owned what parts cost in a year
     * @param wage wage of installation labour
     * @param contingency share of what parts cost in a year that is set aside on top
     */
    public LineShare(BudgetBuilder b, Materials m, TakeOff t, PartsYearly owned, Line wage, Line contingency) {
        ScheduleBuilder tags = b.shared(Sheets.MATERIALS, Tables.PARTS_YEARLY);
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.SYSTEM_SLOPES);
        Line tagged = tags.line(
                "material_of_way",
                "Part of an irrigation system, 1 or 0",
                ONE,
                when(m.option.isFilled(), one(), none(ONE)));
        Unit hoursPerDriver = HOUR.over(Unit.parse("driver"));
        Line hours = tags.line(
                "material_of_way_hours",
                "Hours a driver, of these",
                hoursPerDriver,
                tagged.times(t.rate.times(m.installHours)));
        Line installing = tags.line(
                "material_of_way_yearly_hours",
                "Installing and taking out a driver, hours a year, of these",
                owned.driverHours.unit(),
                tagged.times(owned.driverHours));
        Line owning = tags.line(
                "material_of_way_charges",
                "Charges and contingency a driver, of these",
                owned.driverCharges.unit(),
                tagged.times(owned.driverCharges.plus(owned.driverYearly.times(contingency))));
        Line price = s.line("way_line_parts_first", "Parts of the line", MONEY, sumProduct(t.wayCost, tagged, m.axis));
        Line time = s.line("way_line_hours", "Hours to install the line", HOUR, sumProduct(t.wayAmount, hours, m.axis));
        first = s.line("way_line_first_cost", "First cost of the line", MONEY, price.plus(time.times(wage)));
        parts = s.line("way_line_parts_yearly", "Parts a year", YEARLY, sumProduct(owned.wayParts, tagged, m.axis));
        labour = s.line(
                "way_line_labour_yearly",
                "Installing and taking out a year",
                YEARLY,
                sumProduct(t.wayAmount, installing, m.axis).times(wage).in(YEARLY));
        charges = s.line(
                "way_line_charges_yearly",
                "Insurance, tax and contingency a year",
                YEARLY,
                sumProduct(t.wayAmount, owning, m.axis));
    }
}
