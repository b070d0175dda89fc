package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.number;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * All hours of work by month and in a year, and the people it takes in the month with most of it: tasks, picking and packing, and the
 * hours that are paid elsewhere, care of lines and dry plants, installing and taking out. Those cost what their own sections say, and
 * here count as hours alone. Plain sums; people are hours over the hours one person works in a month, common practice, no source.
 */
public final class AllWork {

    private static final Unit HOURS_A_MONTH = Unit.parse("h/mo");
    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");
    private static final Unit PERSON = Unit.parse("person");

    /** Hours in each month, h/mo. */
    public final Line hoursInMonth;
    /** Hours a year, h/a. */
    public final Line hours;
    /** People needed in each month. */
    public final Line people;
    /** People in the month with most work. */
    public final Line peakPeople;

    /**
     * Hours that are paid elsewhere.
     *
     * @param care of lines and dry plants, h/a
     * @param installing installing and taking out, h/a
     */
    public record Elsewhere(Formula care, Formula installing) {}

    /**
     * Declares entry and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param labour tasks, picking and packing
     * @param elsewhere hours that are paid elsewhere
     * @param plantingShare share of the planting that falls in each month
     */
    public AllWork(BudgetBuilder b, FarmEntries entries, Labour labour, Elsewhere elsewhere, Line plantingShare) {
        ScheduleBuilder m = b.shared(Sheets.OPERATIONS, Tables.LABOUR);
        ScheduleBuilder y = b.schedule(Sheets.OPERATIONS, "All work of a year");
        Line care = y.line(
                "care_hours_total", "Hours of irrigation maintenance and replanting", HOURS_A_YEAR, elsewhere.care());
        Line installing = y.line(
                "installing_hours_total", "Hours of installing and taking out", HOURS_A_YEAR, elsewhere.installing());
        hours = y.line(
                "labour_hours_total",
                "Labour hours",
                HOURS_A_YEAR,
                labour.hiredHours.plus(labour.familyHours).plus(care).plus(installing));
        Line careInMonth = y.line(
                "care_hours_a_month",
                "The same in a month",
                HOURS_A_MONTH,
                monthOf(care.over(number(Months.IN_A_YEAR, Unit.ONE))),
                "spread evenly over the twelve months: a choice of this project, no source");
        Line installingInMonth = m.line(
                "installing_hours_in_month",
                "Hours of installing and taking out",
                HOURS_A_MONTH,
                monthOf(plantingShare.times(installing)),
                "in the months of planting: a choice of this project, no source");
        hoursInMonth = m.line(
                "hours_in_month",
                "Labour hours",
                HOURS_A_MONTH,
                labour.tasksInMonth.plus(careInMonth).plus(installingInMonth));
        Line each = entries.add(
                y.entry("hours_per_person_month", "Hours one person works in a month", HOURS_A_MONTH.over(PERSON))
                        .above(0, 744));
        people = m.line(
                "people_in_month",
                "People needed",
                PERSON,
                hoursInMonth.over(each),
                "hours over the hours of one person: common practice, no source");
        peakPeople = y.line(
                "people_at_peak",
                "Peak labour, people in the busiest month",
                PERSON,
                greatest(people, people.axes().get(0)));
        y.line("people_at_peak_whole", "The same in whole people", PERSON, peakPeople.wholeUp());
    }
}
