package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.energy.HouseEnergy;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.operations.AllWork;
import org.benchmetre.farm.ownership.BudgetMonths;

/** The months of the calendar turned round: from the month of planting on. Each figure is that of its month; only cash is added up. */
public final class SeasonCash {

    /** Marks the month that is looked for. */
    static final String MARK = "x";

    /** Months that differ by less are alike, as a share: far above rounding, far below any price. */
    private static final double ALIKE = 1e-9;

    private static final String FIRST =
            "the first of those alike within a thousand-millionth, far above rounding; our choice";

    /** The months of the crop year. */
    final CropYear year;
    /** Hours of the month with most labour, h/mo. */
    final Line mostHours;
    /** Marks the first month with most labour. */
    final Line mostHoursMark;
    /** The least cash so far, money. */
    final Line lowest;
    /** Marks the first month with the least cash so far. */
    final Line lowestMark;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param year the months of the crop year
     * @param cash cash by month of the calendar
     * @param labour hours and people
     * @param fruit marketable fruit by month, kg/mo
     * @param energy heat, and how warm it is inside
     */
    public SeasonCash(
            BudgetBuilder b, CropYear year, BudgetMonths cash, AllWork labour, Line fruit, HouseEnergy energy) {
        this.year = year;
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, "Calendar, from the month of planting on");
        turned(s, "season_fruit", "Fruit", fruit);
        Line hours = turned(s, "season_hours", "Labour", labour.hoursInMonth);
        turned(s, "season_people", "People", labour.people);
        turned(s, "season_water", "Water given", cash.waterGiven);
        turned(s, "season_inside", "Inside", energy.inside().mean);
        turned(s, "season_heat", "Heat", energy.heating().heat);
        Line receipts = turned(s, "season_receipts", "Receipts", cash.receipts);
        Line out = turned(s, "season_cash_out", "Cash out", cash.costs);
        Line soFar = s.declare("season_cash_so_far", "Cash so far", MONEY, Kind.NUMBER, List.of(year.axis), "");
        Formula ofMonth = receipts.minus(out).times(number(1, Unit.parse("mo")));
        b.define(soFar, previous(soFar, none(MONEY)).plus(ofMonth));

        ScheduleBuilder peaks = b.schedule(Sheets.CASH_FLOW, "Calendar, most and least");
        mostHours = peaks.line("season_hours_most", "Most labour in a month", hours.unit(), greatest(hours, year.axis));
        lowest = peaks.line("season_cash_lowest", "Least cash so far", MONEY, least(soFar, year.axis));
        mostHoursMark = mark(
                s, "season_hours_mark", "Most labour", mostHours.minus(hours), mostHours.times(number(ALIKE, ONE)));
        Formula near = cash.costsOfYear.times(number(ALIKE, Unit.parse("a")));
        lowestMark = mark(s, "season_cash_mark", "Least cash so far", soFar.minus(lowest), near);
    }

    private Line turned(ScheduleBuilder s, String id, String label, Line byMonth) {
        return s.line(id, label, byMonth.unit(), year.turned(byMonth));
    }

    private static Line mark(ScheduleBuilder s, String id, String label, Formula apart, Formula alike) {
        return s.line(id, label, ONE, when(apart.minus(alike).isPositive(), text(""), text(MARK)), FIRST);
    }
}
