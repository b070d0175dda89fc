package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.EntryRun;
import org.benchmetre.scenario.RunLength;

/** The years of the plan, from the start on: as many as the plan asks for and one beyond, in which what is due after its last year falls. */
public final class PlanYears {

    /** Longest plan, in years. */
    public static final int LIMIT = 30;

    private static final Unit YEAR = Unit.parse("a");
    private static final int SPARE = 1;
    private static final String LENGTH = "plan_years";
    private static final int LEAST = 6;

    /** How many years a structure has room for. */
    public static final EntryRun RUN = new EntryRun(new RunLength.Factor(LENGTH, YEAR, 0), SPARE, LEAST, LIMIT);

    /** The years; the first is the start. */
    public final Axis axis;
    /** Length of the plan, a. */
    public final Line horizon;
    /** Number of each year, a; 0 is the start. */
    public final Line number;
    /** 1 in the years of the plan and at the start, 0 after them. */
    public final Line inPlan;
    /** 1 between the start and the last year, else 0. */
    final Line goesOn;
    /** 1 in the last year, else 0. */
    public final Line isLast;

    /**
     * Declares entry and lines.
     *
     * @param b where schedules are added
     * @param entries gives the entry its value
     */
    PlanYears(BudgetBuilder b, FarmEntries entries) {
        int room = room(b.structure(), entries);
        axis = Axis.periods(
                "year",
                "Year",
                IntStream.rangeClosed(0, room).mapToObj(Integer::toString).toList(),
                IntStream.rangeClosed(0, room).mapToObj(n -> "Year " + n).toList());
        horizon = entries.add(b.schedule(Sheets.CASH_FLOW, "Length of the plan")
                .entry(LENGTH, "Years of the plan", YEAR)
                .from(1, room)
                .whole());
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, "Years of the plan");
        number = s.declare("year_number", "Year", YEAR, Kind.NUMBER, List.of(axis), "year 0 is the start");
        b.define(number, previous(number, number(-1, YEAR)).plus(number(1, YEAR)));
        inPlan = s.line("year_in_plan", "In the plan, 1 or 0", ONE, when(number.exceeds(horizon), none(ONE), one()));
        Formula between = and(number.isPositive(), horizon.exceeds(number));
        goesOn = s.line("year_goes_on", "Between start and last year, 1 or 0", ONE, when(between, one(), none(ONE)));
        isLast = s.line("year_is_last", "Last year, 1 or 0", ONE, when(is(horizon), one(), none(ONE)));
    }

    /** As the scenario says, else as is documented of the crop. */
    private static int room(Structure structure, FarmEntries entries) {
        List<String> asked = structure.keys(EntryRun.lengthOf(LENGTH)).keys();
        double usual = entries.profile().needed(LENGTH).in(YEAR).typical();
        return asked.isEmpty() ? RUN.keys(usual).size() : asked.size();
    }

    /** How many years there are after the start. */
    int room() {
        return axis.size() - 1;
    }

    /**
     * The longest plan that there is room for.
     *
     * @return years; one less than there are, since what is due after the last one needs a year
     */
    public int longest() {
        return Math.max(1, room() - SPARE);
    }

    /** Whether a year is the one of that number. */
    Formula is(Formula wanted) {
        return and(not(number.exceeds(wanted)), not(wanted.exceeds(number)));
    }

    /** An amount in the years of the plan, nothing at the start and after its end. */
    Formula earning(Formula money) {
        return when(and(number.isPositive(), inPlan.isPositive()), money, none(MONEY));
    }
}
