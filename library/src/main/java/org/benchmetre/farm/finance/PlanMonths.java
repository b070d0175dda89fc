package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/** The first months of the plan, from the calendar month in which its cash begins. Before the month of planting nothing grows. */
public final class PlanMonths {

    /** How many there are: two years. */
    public static final int COUNT = 24;

    private static final String WITH_PLANTING = "planting";

    /** One period for each month. */
    public final Axis axis = Axis.periods(
            "plan_month",
            "Month of the plan",
            IntStream.rangeClosed(1, COUNT).mapToObj(Integer::toString).toList(),
            IntStream.rangeClosed(1, COUNT).mapToObj(n -> "Month " + n).toList());

    /** Number of the month, 1 to 24. */
    public final Line number;
    /** Name of the month of the calendar. */
    public final Line name;
    /** Month and year of the plan, such as {@code Mar of year 1}. */
    public final Line told;
    /** Number of the month of the calendar, 1 to 12. */
    final Line inCalendar;
    /** Months before the first planting, 0 to 11. */
    public final Line wait;
    /** Which year of the plan each lies in, as a text to sum by. */
    public final Line yearTag;

    private final ScheduleBuilder table;
    private final CropYear crop;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param crop the months of the crop year
     */
    public PlanMonths(BudgetBuilder b, FarmEntries entries, CropYear crop) {
        this.crop = crop;
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, "Where the cash of the plan begins");
        table = b.schedule(Sheets.CASH_FLOW, "Months of the plan, at today's prices");
        List<String> words = new ArrayList<>(List.of(WITH_PLANTING));
        words.addAll(Months.KEYS);
        Line start =
                entries.add(s.textEntry("start_month", "Cash begins in").words(TextForm.oneOf(List.copyOf(words))));
        Line first = s.line(
                "start_month_number",
                "Month in which cash begins, its number",
                ONE,
                when(start.is(WITH_PLANTING), crop.plantingNumber, crop.numberOf(start)));
        Formula gap = crop.plantingNumber.minus(first);
        wait = s.line(
                "planting_wait",
                "Months before the first planting",
                ONE,
                when(none(ONE).minus(gap).isPositive(), gap.plus(year()), gap),
                Months.COUNTING);
        number = table.line(
                "plan_month_number", "Month", ONE, rows(month -> number(month, ONE)), "counted from the start");
        inCalendar = table.declare(
                "plan_month_calendar", "Number in the calendar", ONE, Kind.NUMBER, List.of(axis), Months.COUNTING);
        Formula before = previous(inCalendar, first.minus(one()));
        Formula over = before.minus(number(Months.IN_A_YEAR - 1, ONE));
        b.define(inCalendar, when(over.isPositive(), over, before.plus(one())));
        name = table.textLine("plan_month_name", "Month", crop.named(inCalendar));
        b.nameRows(axis, name);
        yearTag = table.textLine("plan_month_year", "Year of the plan", rows(month -> text("" + yearOf(month))));
        told = table.textLine("plan_month_told", "Month, in words", joined(name, text(" of year "), yearTag));
    }

    static Formula year() {
        return number(Months.IN_A_YEAR, ONE);
    }

    /** A line of the months. */
    ScheduleBuilder table() {
        return table;
    }

    /** What each month has, by its number from 1 on. */
    Formula rows(IntFunction<Formula> each) {
        return new Rows(axis, IntStream.rangeClosed(1, COUNT).mapToObj(each).toList());
    }

    /**
     * The year of the plan that a month lies in.
     *
     * @param month its number, from 1 on
     * @return 1 or 2
     */
    public static int yearOf(int month) {
        return (month - 1) / Months.IN_A_YEAR + 1;
    }

    /** What falls in the calendar month of each. */
    Formula turned(Line byMonth) {
        return lookup(byMonth, crop.monthName, name);
    }

    /** What falls in the calendar month that is named. */
    Formula turned(Line byMonth, Line monthName) {
        return lookup(byMonth, crop.monthName, monthName);
    }

    /** Name of a month of the calendar, the twelve before the first named like those after it. */
    Formula named(Formula calendar) {
        return crop.named(when(calendar.isPositive(), calendar, calendar.plus(year())));
    }
}
