package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.decision.Standing;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Sheets;

/**
 * The first thing to break, in a sentence: the change that breaks the plan at the smallest share of its listed size. A lost crop is
 * its whole size.
 */
final class StressFirst {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final double FAR = 1e9;
    private static final String SHARE = "smallest share of the listed size: a choice of this project, no source";

    private final StressBreaks breaks;
    private final StressBreaks.Plan plan;
    private final ScheduleBuilder table;
    private final ScheduleBuilder single;
    private final Formula stands;
    private final Formula limit;
    private final MoneyWords money;

    /**
     * What a sentence rests on beside the sizes.
     *
     * @param changed a text where changes are entered
     * @param sales fruit sold by year
     */
    record Basis(Line changed, Line sales) {}

    StressFirst(BudgetBuilder b, StressBreaks breaks, StressSizes sizes, Basis basis) {
        this.breaks = breaks;
        this.plan = breaks.plan;
        table = b.schedule(Sheets.STRESS, "What breaks first");
        single = b.schedule(Sheets.STRESS, "What breaks first, in words");
        stands = when(basis.changed().isFilled(), text(" with the changes entered"), text(" as planned"));
        limit = shown(plan.repayment().limit, 2);
        money = new MoneyWords(b);
        Line ofCoverage = share("coverage", "Coverage: share of the listed size", breaks.coverage, sizes);
        Line ofCash = share("cash", "Cash: share of the listed size", breaks.cash, sizes);
        Line first = single.line(
                "break_first",
                "Smallest share of a listed size",
                ONE,
                lesser(least(ofCoverage, breaks.axis), least(ofCash, breaks.axis)),
                SHARE);
        Line mark = table.textLine(
                "break_mark",
                "First",
                when(lesser(ofCoverage, ofCash).exceeds(first), text(""), text(CashPosition.MARK)));
        Line told = told(ofCoverage, ofCash);
        Line old = stale(b, basis.sales());
        single.textLine(
                "stress_state",
                "Sizes at which the plan breaks",
                when(
                        old.isPositive(),
                        text("Out of date: entries have changed since sizes were searched; write the workbook again."),
                        text(
                                "Sizes are searched, as filled on these entries: each change alone, on top of what is entered.")));
        Line already = already();
        Line none = nothing();
        Line next = single.line(
                "stress_next",
                "What breaks next",
                ONE,
                when(
                        number(FAR, ONE).exceeds(first),
                        joined(
                                when(already.isFilled(), text("Next to break: with "), text("First to break: with ")),
                                lookup(told, mark, text(CashPosition.MARK))),
                        none),
                SHARE);
        single.textLine(
                "stress_first",
                "What breaks first",
                when(
                        old.isPositive(),
                        joined(already, text("What breaks first is out of date: write the workbook again.")),
                        joined(already, next)));
    }

    /** Where no change alone breaks what still holds. */
    private Line nothing() {
        Line holds = single.line(
                "stress_covered",
                "Coverage is no lower than asked for, 1 or 0",
                ONE,
                when(and(plan.hasDebt(), not(plan.isBelow())), one(), none(ONE)),
                StressBreaks.NO_DEBT_IS);
        Formula covered = holds.isPositive();
        Formula coverage = text(" takes coverage below what the bank asks for");
        Formula both = when(plan.isShort(), coverage, joined(coverage, text(" or uses up the cash")));
        return single.textLine(
                "stress_nothing",
                "Where nothing breaks",
                when(
                        or(covered, not(plan.isShort())),
                        joined(
                                text("No change alone, as far as Stress looks,"),
                                when(covered, both, text(" uses up the cash")),
                                text(".")),
                        text("")));
    }

    private Line share(String id, String label, StressBreaks.Break at, StressSizes sizes) {
        List<Line> listed = sizes.all();
        List<Line> entered = plan.shocks().all();
        int lost = listed.size() - 1;
        Formula share = breaks.rows(row -> row == lost
                ? one()
                : ofListed(
                        at.at().minus(entered.get(row).counting(ONE)),
                        listed.get(row).counting(ONE)));
        return table.line("break_" + id + "_share", label, ONE, when(at.isFound(), share, number(FAR, ONE)), SHARE);
    }

    private static Formula ofListed(Formula change, Formula listed) {
        Formula size = greater(listed, none(ONE).minus(listed));
        return when(size.isPositive(), greater(change, none(ONE).minus(change)).over(size), number(FAR, ONE));
    }

    /** What each change breaks first, and what then. */
    private Line told(Line ofCoverage, Line ofCash) {
        Formula subject = new Rows(breaks.axis, StressTexts.within());
        Formula at = new Rows(breaks.axis, StressTexts.at());
        Line coverageFirst = table.textLine(
                "break_coverage_first",
                "Coverage first",
                joined(
                        breaks.coverage.size(),
                        text(", coverage falls below "),
                        limit,
                        text(" in year "),
                        shown(breaks.year, 0),
                        when(
                                breaks.cash.isFound(),
                                joined(text("; cash runs out"), at, breaks.cash.size()),
                                when(plan.isShort(), text(""), text("; cash does not run out by that alone")))));
        Line cashFirst = table.textLine(
                "break_cash_first",
                "Cash first",
                joined(
                        breaks.cash.size(),
                        text(", cash runs out"),
                        when(
                                breaks.coverage.isFound(),
                                joined(text("; coverage falls below "), limit, at, breaks.coverage.size()),
                                text(""))));
        return table.textLine(
                "break_sentence",
                "What breaks",
                joined(subject, when(ofCoverage.exceeds(ofCash), cashFirst, coverageFirst), text(".")));
    }

    /** What is broken as the plan stands. */
    private Line already() {
        Repayment r = plan.repayment();
        Formula byPrice = new Element(breaks.reached.at(), breaks.axis, 0);
        Line it = single.textLine(
                "stress_reached",
                "What would reach the coverage asked for",
                when(
                        or(byPrice.isPositive(), none(ONE).exceeds(byPrice)),
                        joined(
                                text(": it takes fruit prices "),
                                new Element(breaks.reached.size(), breaks.axis, 0),
                                text(" to reach it. ")),
                        text(". ")));
        Line low = single.textLine(
                "stress_below",
                "Coverage below as it stands",
                when(
                        plan.isBelow(),
                        joined(
                                text("Coverage is "),
                                shown(r.lowest, 2),
                                text(" in year "),
                                r.lowestYear,
                                stands,
                                text(", below "),
                                limit,
                                it),
                        text("")));
        return single.textLine(
                "stress_already",
                "What is broken as it stands",
                joined(
                        low,
                        when(
                                plan.isShort(),
                                joined(
                                        text("Cash runs short by "),
                                        money.whole(none(NOMINAL).minus(plan.position().least)),
                                        stands,
                                        text(". ")),
                                text(""))));
    }

    /** Whether entries have changed since the search ran. */
    private Line stale(BudgetBuilder b, Line sales) {
        Axis axis = Axis.rows("break_basis", "What sizes rest on", List.of("coverage", "cash", "limit", "sales"), 0);
        ScheduleBuilder s = b.schedule(Sheets.STRESS, "What the sizes rest on");
        b.nameRows(
                axis,
                s.textLine(
                        "break_basis_label",
                        "What sizes rest on",
                        new Rows(
                                axis,
                                List.of(
                                        text("Lowest coverage"),
                                        text("Least cash"),
                                        text("Coverage asked for"),
                                        text("Fruit sold")))));
        Repayment r = plan.repayment();
        Line now = s.line(
                "break_basis_now",
                "Now",
                ONE,
                new Rows(
                        axis,
                        List.of(
                                r.lowest,
                                plan.position().least.counting(ONE),
                                r.limit,
                                sum(sales, sales.axes().get(0)).counting(ONE))));
        Line then =
                s.solvedNumber("break_basis_filled", "As filled", ONE, "when the search ran", new Standing(now), axis);
        Line moved = s.line(
                "break_basis_moved",
                "Has moved since, 1 or 0",
                ONE,
                when(or(now.exceeds(then), then.exceeds(now)), one(), none(ONE)));
        return single.line("break_is_old", "Entries have changed since, 1 or more", ONE, sum(moved, axis));
    }
}
