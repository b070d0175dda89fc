package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * What parts can carry against what there is to carry: a pump of 3,000 L/h against the flow of the largest zone. A capacity without a
 * unit, or in one of its driver's measure, is held against the part's own driver; in any other it is held against the driver that stands
 * for its measure, so that a part counted once for the house has a capacity too. Plain counting.
 */
final class PartCapacity {

    private final Materials m;
    private final Drivers drivers;

    /** Declares the lines. */
    PartCapacity(BudgetBuilder b, Materials m, Drivers drivers, Line quantity) {
        this.m = m;
        this.drivers = drivers;
        ScheduleBuilder s = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        Line served = s.textLine(
                "material_serves_driver", "Its capacity is held against", when(isUsed(), served(), text("")));
        Line load = s.line(
                "material_load",
                "What there is to carry, in units of its capacity",
                ONE,
                when(
                        isUsed(),
                        lookup(drivers.amount, drivers.key, served)
                                .counting(ONE)
                                .times(factor()),
                        none(ONE)));
        Line needed = s.line(
                "material_units_needed",
                "Units it takes to carry it",
                ITEM,
                when(isUsed(), load.over(m.serves), none(ONE)).counting(ITEM));
        Line words = s.textLine(
                "material_load_words",
                "What there is to carry, in words",
                when(
                        isUsed(),
                        joined(
                                shown(load, 0),
                                text(" "),
                                unit(served),
                                text(" ("),
                                lookup(drivers.label, drivers.key, served),
                                text(")")),
                        text("")));
        s.warning(
                "material_capacity_warning",
                "Capacity of a part",
                and(quantity.isPositive(), needed.exceeds(quantity.wholeUp())),
                joined(
                        shown(quantity.wholeUp(), 0),
                        text(" counted, but it takes "),
                        shown(needed.wholeUp(), 0),
                        text(" to carry "),
                        words,
                        text(". Raise its rate.")));
    }

    private Formula isUsed() {
        return and(m.driver.isFilled(), m.serves.isPositive());
    }

    private Formula served() {
        Formula measure = lookup(drivers.measure, drivers.key, m.driver);
        Formula own = drivers.units.perDriverOf(PartUnits.key(measure, m.servesUnit));
        return when(and(m.servesUnit.isFilled(), not(own.isPositive())), drivers.units.served(m.servesUnit), m.driver);
    }

    private Formula factor() {
        return when(m.servesUnit.isFilled(), drivers.units.perDriver(m.servesUnit), number(1, ONE));
    }

    private Formula unit(Line served) {
        return when(m.servesUnit.isFilled(), m.servesUnit, lookup(drivers.unit, drivers.key, served));
    }
}
