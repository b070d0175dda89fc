package org.benchmetre.farm;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;

/**
 * Rates that several sections share.
 *
 * @param year the plan's year, which its prices are of
 * @param installWage wage of installation labour, money/h
 */
record Rates(Line year, Line installWage) {

    /** Declares the entries. */
    static Rates declare(ScheduleBuilder s, FarmEntries entries) {
        Line year = entries.add(
                s.entry("plan_year", "Year of the plan", ONE).from(1990, 2100).whole());
        Line wage = entries.add(
                s.entry("install_wage", "Installing and care of lines, wage with on-costs", Unit.parse("money/h"))
                        .from(0, 1_000_000));
        return new Rates(year, wage);
    }
}
