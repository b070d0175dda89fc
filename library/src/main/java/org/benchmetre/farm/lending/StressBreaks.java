package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.decision.HowFar;
import org.benchmetre.farm.finance.Shocks;
import org.benchmetre.farm.input.Sheets;

/**
 * How large each change may be, alone and from what is entered on, before coverage falls below what the bank asks for and before cash
 * runs out. No formula gives it: it is searched when a workbook is written. {@link StressFirst} tells when entries have changed since.
 */
final class StressBreaks {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final double NO_DEBT = 1000;
    /** What stands for no debt. */
    static final String NO_DEBT_IS = "coverage of 1000 stands for no debt";

    private static final double HIGHEST_RATE = 0.5;
    private static final double MOST = 10;
    private static final double LONGEST_DELAY = 11;
    private static final String SEARCHED =
            "searched when the workbook is written, each change alone, from what is entered to its last value; in the unit of the change";

    /** The changes. */
    final Axis axis = Axis.rows("stress_break", "Change", StressTexts.KEYS, 0);

    /** Where coverage falls to the limit. */
    final Break coverage;
    /** Where cash is used up. */
    final Break cash;
    /** Where coverage that is too low comes up to the limit. */
    final Break reached;
    /** Year of the lowest coverage where it falls to the limit, along the changes. */
    final Formula year;
    /** What is looked at. */
    final Plan plan;

    private final Axis told =
            Axis.rows("break_of", "What is found", List.of("coverage", "cash", "coverage_year", "coverage_reached"), 0);
    private final ScheduleBuilder s;
    private final Line found;

    /**
     * What is looked at.
     *
     * @param shocks changes that are entered
     * @param repayment coverage
     * @param position cash
     */
    record Plan(Shocks shocks, Repayment repayment, CashPosition position) {

        /** Coverage below the limit as the plan stands. */
        Formula isBelow() {
            return repayment.limit.exceeds(repayment.lowest);
        }

        /** Cash below zero as the plan stands. */
        Formula isShort() {
            return none(NOMINAL).exceeds(position.least);
        }

        /** Whether any debt falls due. */
        Formula hasDebt() {
            return number(NO_DEBT, ONE).exceeds(repayment.lowest);
        }
    }

    /**
     * Where something breaks, along the changes.
     *
     * @param isFound a truth
     * @param at the change, 0 where nothing is found
     * @param size the same in words
     */
    record Break(Formula isFound, Line at, Line size) {}

    StressBreaks(BudgetBuilder b, Plan plan) {
        this.plan = plan;
        Repayment r = plan.repayment();
        s = b.schedule(Sheets.STRESS, "How large each change may be");
        b.nameRows(axis, s.textLine("break_label", "Change", new Rows(axis, StressTexts.labels())));
        ScheduleBuilder block = b.schedule(Sheets.STRESS, "How large each change may be, as found");
        b.nameRows(
                told,
                b.schedule(Sheets.STRESS, "What is found of each change")
                        .textLine(
                                "break_told",
                                "What is found",
                                new Rows(
                                        told,
                                        List.of(
                                                text("Coverage down to the limit at"),
                                                text("Cash used up at"),
                                                text("Year of the lowest coverage then"),
                                                text("Coverage up to the limit at")))));
        found = block.solved(
                "break_found",
                "Where it breaks",
                ONE,
                SEARCHED,
                new HowFar(moves(plan.shocks()), r.counted, r.lowest, r.limit, plan.position().least),
                axis,
                told);
        coverage = at("coverage", "Coverage too low", 0);
        cash = at("cash", "Cash runs out", 1);
        year = new Element(found, told, 2).numberOr(none(ONE));
        reached = at("reached", "Coverage reached again", 3);
        Formula never = new Rows(axis, StressTexts.never());
        s.line(
                "break_coverage",
                "Coverage too low at",
                ONE,
                when(
                        coverage.isFound,
                        coverage.size,
                        when(plan.hasDebt(), when(plan.isBelow(), text("already below"), never), text("no debt"))),
                NO_DEBT_IS);
        s.textLine(
                "break_cash",
                "Cash runs out at",
                when(cash.isFound, cash.size, when(plan.isShort(), text("already short"), never)));
    }

    private Break at(String id, String label, int which) {
        Formula cell = new Element(found, told, which);
        Line at = s.line("break_" + id + "_at", label + " at, 0 where it is not found", ONE, cell.numberOr(none(ONE)));
        Line size = s.textLine(
                "break_" + id + "_size",
                label + " at, in words, empty where it is not found",
                when(cell.hasNumber(), rows(row -> StressTexts.size(row, at)), text("")));
        return new Break(cell.hasNumber(), at, size);
    }

    /** A formula for each change. */
    Formula rows(IntFunction<Formula> each) {
        return new Rows(axis, IntStream.range(0, axis.size()).mapToObj(each).toList());
    }

    private static List<HowFar.Move> moves(Shocks shocks) {
        return List.of(
                move(shocks.price, -1, MOST),
                move(shocks.yield, -1, MOST),
                move(shocks.wage, MOST, -1),
                move(shocks.energy, MOST, -1),
                move(shocks.interest, HIGHEST_RATE, -HIGHEST_RATE),
                new HowFar.Move(shocks.late, LONGEST_DELAY, 0, true, false),
                new HowFar.Move(shocks.lost, shocks.years, 0, true, true));
    }

    private static HowFar.Move move(Line shock, double worst, double best) {
        return new HowFar.Move(shock, worst, best, false, false);
    }
}
