package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * How much of a part one unit of its driver takes. In a unit of the driver's measure a rate is as much of the part as of the driver, and
 * converts: a rate of 1 in feet takes 3.28 ft for each metre. In any other unit it is so many of the part's own unit for each unit of the
 * driver: 0.02 kg, or 2 pieces, for each metre. A rate of exactly 1 is what one writes for as much as the driver, so that it is told where
 * the unit measures something else.
 */
final class PartRates {

    /** Units of the part for each unit of its driver, item/driver. */
    final Line rate;

    private final Materials m;
    private final Drivers drivers;

    /** Declares the lines. */
    PartRates(BudgetBuilder b, Materials m, Drivers drivers) {
        this.m = m;
        this.drivers = drivers;
        ScheduleBuilder list = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        list.textLine(
                "material_unit_counted",
                "Unit counted",
                when(m.unit.isFilled(), m.unit, ofDriver(drivers.usualUnit, text(""))));
        Line measure =
                list.textLine("material_driver_measure", "Its driver measures", ofDriver(drivers.measure, text("")));
        Line key = list.textLine(
                "material_unit_key",
                "Measure and unit",
                when(and(measure.isFilled(), m.unit.isFilled()), PartUnits.key(measure, m.unit), text("")));
        Line factor = list.line(
                "material_unit_factor",
                "Units in one of its driver's",
                ONE,
                when(key.isFilled(), drivers.units.perDriverOf(key), none(ONE)),
                "0 where the unit is not of its driver's measure");
        Unit itemPerDriver = ITEM.over(Unit.parse("driver"));
        rate = list.line(
                "material_rate_counted",
                "Units a driver, without waste",
                itemPerDriver,
                when(factor.isPositive(), m.rate.times(factor), m.rate),
                "a rate in a unit of its driver's measure converts");
        list.warning(
                "material_unit_warning",
                "Unit of a part against its driver",
                and(
                        key.isFilled(),
                        not(factor.isPositive()),
                        isOne(m.rate.counting(ONE)),
                        or(drivers.units.perDriver(m.unit).isPositive(), measure.is(PartMeasure.VOLUME.word()))),
                joined(
                        text("A rate of 1 takes 1 "),
                        m.unit,
                        text(" for each unit of its driver: check its unit, its rate and its pack.")));
    }

    private Formula ofDriver(Line column, Formula otherwise) {
        return when(m.driver.isFilled(), lookup(column, drivers.key, m.driver), otherwise);
    }

    private static Formula isOne(Formula number) {
        return not(or(number.exceeds(one()), one().exceeds(number)));
    }
}
