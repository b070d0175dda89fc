package org.benchmetre.farm.input;

import static org.benchmetre.budget.Formulas.number;

import java.util.List;
import java.util.stream.DoubleStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.DocumentedMonths;

/**
 * The months of a year, and {@code months.csv}: up to twelve rows, {@code jan} to {@code dec}, one column for each figure that goes
 * by month. A column or month that is left out takes the documented default, or is blank where there is none. February has 28.25
 * days, so that a year has 365.25.
 */
public final class Months {

    /** The file. */
    public static final String FILE = "months.csv";

    /** Name of the axis. */
    public static final String AXIS = "month";

    /** Keys, in order of the calendar. */
    public static final List<String> KEYS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    /** How many there are. */
    public static final int IN_A_YEAR = KEYS.size();

    /** Source of what goes round the year. */
    public static final String COUNTING = IN_A_YEAR + " months a year: plain counting";

    /** Names, Jan to Dec, in order of the calendar. */
    public static final List<String> NAMES =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private static final double[] DAYS = {31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final Unit DAYS_A_MONTH = Unit.parse("d/mo");

    private final CropProfile profile;

    /** One period for each month. */
    public final Axis axis = Axis.periods(AXIS, "Month", KEYS, NAMES);
    /** Days in each month, d/mo. */
    public final Line days;

    /**
     * Declares the days.
     *
     * @param b where the schedule of days is added
     * @param profile what is documented of the crop, by month
     */
    public Months(BudgetBuilder b, CropProfile profile) {
        this.profile = profile;
        Formula each = new Rows(
                axis,
                DoubleStream.of(DAYS)
                        .mapToObj(value -> number(value, DAYS_A_MONTH))
                        .toList());
        days = b.shared(Sheets.OPERATIONS, Tables.MONTHS)
                .line(
                        "days_in_month",
                        "Days",
                        DAYS_A_MONTH,
                        each,
                        "calendar; February has 28.25, so that a year has 365.25");
    }

    /**
     * A column of numbers; what is left out takes its documented default.
     *
     * @param s where the entries are added; all its lines go by month
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds hard bounds
     * @return the line
     * @throws IllegalStateException when no default is documented
     */
    public Line numbers(ScheduleBuilder s, String column, String id, String label, Unit unit, Bounds bounds) {
        return s.entry(id, label, unit, axis)
                .within(bounds)
                .keptAt(Home.of(FILE, AXIS, column))
                .whenBlank(Blank.DEFAULT)
                .given(usual(id, unit));
    }

    /**
     * A column of numbers without a default: what is left out is blank and counts as nothing.
     *
     * @param s where the entries are added; all its lines go by month
     * @param column name in the file
     * @param id identifier
     * @param label heading
     * @param unit unit of the column
     * @param bounds hard bounds
     * @return the line
     */
    public Line numbersOrBlank(ScheduleBuilder s, String column, String id, String label, Unit unit, Bounds bounds) {
        return s.entry(id, label, unit, axis)
                .within(bounds)
                .keptAt(Home.of(FILE, AXIS, column))
                .given(List.of());
    }

    /**
     * Twelve documented values.
     *
     * @param id the line they are documented for
     * @param unit unit of the column
     * @return one value a month
     * @throws IllegalStateException when none are documented
     */
    public List<Given> usual(String id, Unit unit) {
        DocumentedMonths known = profile.months(id);
        return known.values().stream()
                .map(value -> Given.number(value, unit).from(known.source()))
                .toList();
    }
}
