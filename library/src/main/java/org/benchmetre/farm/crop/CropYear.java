package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;

/**
 * Twelve months from the one of planting on, and the month and year of the calendar of each. What has a month is counted by the
 * calendar; here it is only turned round.
 */
public final class CropYear {

    /** Name of the axis. */
    public static final String AXIS = "season_month";

    /** A month of the calendar, by its key or name. */
    static final TextForm MONTH = TextForm.oneOf(Months.KEYS, Months.NAMES);

    /** One period for each month of the crop year; the first is the month of planting. */
    public final Axis axis = Axis.periods(
            AXIS,
            "Month of the crop year",
            IntStream.rangeClosed(1, Months.IN_A_YEAR)
                    .mapToObj(Integer::toString)
                    .toList());
    /** Month of planting, by its key. */
    public final Line planting;
    /** Number of the month of planting in the calendar, 1 to 12. */
    public final Line plantingNumber;
    /** Name of the month of planting. */
    public final Line plantingName;
    /** Name of each month of the crop year, Jan to Dec. */
    public final Line name;
    /** Calendar year of each month of the crop year. */
    public final Line year;
    /** Months of the calendar by name, Jan to Dec. */
    public final Line monthName;
    /** Year of the plan. */
    public final Line planYear;

    /** Number of each month of the calendar, 1 to 12. */
    public final Line monthNumber;

    private final Line monthKey;

    /**
     * Declares entry and lines.
     *
     * @param b where the schedules are added
     * @param entries gives entries their values
     * @param months months of the calendar
     * @param planYear year of the plan, in which the crop is planted
     */
    public CropYear(BudgetBuilder b, FarmEntries entries, Months months, Line planYear) {
        this.planYear = planYear;
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Crop year: planting");
        ScheduleBuilder calendar = b.schedule(Sheets.CROP, "Months of the calendar");
        ScheduleBuilder season = b.schedule(Sheets.CROP, "Months of the crop year");
        monthName = calendar.textLine(
                "month_name",
                "Month",
                new Rows(
                        months.axis,
                        Months.NAMES.stream().map(each -> text(each)).toList()));
        monthNumber = calendar.line(
                "month_number",
                "Number",
                ONE,
                new Rows(
                        months.axis,
                        IntStream.rangeClosed(1, Months.NAMES.size())
                                .<Formula>mapToObj(each -> number(each, ONE))
                                .toList()),
                "calendar");
        monthKey = calendar.textLine("month_number_text", "Number, as a text", shown(monthNumber, 0));
        planting = entries.add(s.textEntry("planting_month", "Planting month").words(MONTH));
        plantingNumber = s.line("planting_month_number", "Planting month, its number", ONE, numberOf(planting));
        plantingName = s.textLine("planting_month_name", "Planting month, its name", named(plantingNumber));
        Line here = season.declare(
                "season_month_number",
                "Number in the calendar",
                ONE,
                Kind.NUMBER,
                List.of(axis),
                "calendar: after the twelfth comes the first");
        Formula before = previous(here, plantingNumber.minus(one()));
        Formula over = before.minus(number(Months.IN_A_YEAR - 1, ONE));
        b.define(here, when(over.isPositive(), over, before.plus(one())));
        name = season.textLine("season_month_name", "Month", named(here));
        b.nameRows(axis, name);
        year = season.declare(
                "season_year", "Calendar year", ONE, Kind.NUMBER, List.of(axis), "planted in the year of the plan");
        Formula beforeFirst = planYear.minus(when(plantingNumber.exceeds(one()), none(ONE), one()));
        b.define(year, previous(year, beforeFirst).plus(when(here.exceeds(one()), none(ONE), one())));
    }

    /**
     * The name of a month.
     *
     * @param number in the calendar, 1 to 12
     * @return Jan to Dec
     */
    public Formula named(Formula number) {
        return lookup(monthName, monthKey, shown(number, 0));
    }

    /**
     * The number of a month.
     *
     * @param month its name or key; guard an empty one
     * @return in the calendar, 1 to 12
     */
    public Formula numberOf(Formula month) {
        return lookup(monthNumber, monthName, month);
    }

    /**
     * A figure by month of the calendar, turned round.
     *
     * @param byMonth along the months of the calendar
     * @return the same along the months of the crop year
     */
    public Formula turned(Line byMonth) {
        return lookup(byMonth, monthName, name);
    }

    /**
     * Whether all months of the crop year lie in one year of the calendar.
     *
     * @return true where planting is in January
     */
    public Formula isOneYear() {
        return not(plantingNumber.exceeds(one()));
    }
}
