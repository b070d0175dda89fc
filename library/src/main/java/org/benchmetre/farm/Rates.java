package org.benchmetre.farm;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;

/** Rates that several sections share. */
final class Rates {

    private Rates() {}

    /** Declares the rates and answers the wage of installation labour. */
    static Line declare(ScheduleBuilder s, FarmEntries entries) {
        entries.add(
                s.entry("plan_year", "Year of the plan", ONE).from(1990, 2100).whole());
        return entries.add(s.entry(
                        "install_wage",
                        "Installing and irrigation maintenance, wage with on-costs",
                        Unit.parse("money/h"))
                .from(0, 1_000_000));
    }
}
