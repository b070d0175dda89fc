package org.benchmetre.farm;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;

/**
 * Rates that several sections share.
 *
 * @param planYear year of the plan
 * @param installWage wage of installing and irrigation maintenance as entered, money/h
 * @param install what an hour of it costs, at the level of all wages, money/h
 */
record Rates(Line planYear, Line installWage, Line install) {

    private static final Unit MONEY_AN_HOUR = Unit.parse("money/h");

    /** Declares entries and lines. */
    static Rates declare(ScheduleBuilder s, FarmEntries entries, Line wageLevel) {
        Line planYear = entries.add(
                s.entry("plan_year", "Year of the plan", ONE).from(1990, 2100).whole());
        entries.add(s.textEntry("plan_paper", "Paper to print on").oneOf(List.of("a4", "letter")));
        entries.add(s.textEntry("plan_units", "Units that lead").oneOf(List.of("metric", "us")));
        Line wage = entries.add(s.entry("install_wage", "Wage of installing, with on-costs", MONEY_AN_HOUR)
                .from(0, 1_000_000));
        return new Rates(
                planYear,
                wage,
                s.line(
                        "install_rate",
                        "An hour of installing and irrigation maintenance, at the level of wages",
                        MONEY_AN_HOUR,
                        wage.times(wageLevel)));
    }
}
