package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.finance.Shocks;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What breaks first: lowest coverage and least cash under each change alone and all together, live; how large each change may be before
 * coverage falls below what the bank asks for and before cash runs out.
 */
final class Stress {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;
    private static final double NO_DEBT = 1000;

    /**
     * What is under stress.
     *
     * @param repayment coverage
     * @param cash cash by month and year
     * @param sales fruit sold by year
     */
    record Figures(Repayment repayment, CashPosition cash, Line sales) {}

    private final ScheduleBuilder s;
    private final StressCases cases;

    Stress(BudgetBuilder b, FarmEntries entries, CashFlow flow, Figures of) {
        Repayment r = of.repayment();
        CashPosition cash = of.cash();
        StressSizes sizes = new StressSizes(b, entries, flow.plan.axis.size() - 1);
        cases = new StressCases(b, flow.shocks, sizes, List.of(r.lowest, cash.lowest, cash.least));
        s = b.schedule(Sheets.STRESS, "Coverage and cash in each case");
        b.nameRows(
                cases.axis,
                s.textLine("stress_label", "Case", rows("As entered", StressTexts.labels(), "All together")));
        s.textLine("stress_size", "Size", rows("", sizes.words(), "all of these"));
        Line counted = coverage(b, r);
        s.line("stress_cash_low", "Least cash of the first 24 months", NOMINAL, cases.of(cash.lowest));
        Line least = s.line("stress_cash_least", "Least cash of all years", NOMINAL, cases.of(cash.least));
        Formula isShort = none(NOMINAL).exceeds(least);
        s.textLine(
                "stress_outcome",
                "What breaks",
                when(
                        r.limit.exceeds(counted),
                        when(isShort, text("Both"), text("Coverage")),
                        when(isShort, text("Cash"), text("Nothing"))));
        Line changed = changed(b, flow.shocks);
        StressBreaks breaks = new StressBreaks(b, new StressBreaks.Plan(flow.shocks, r, cash));
        new StressFirst(b, breaks, sizes, new StressFirst.Basis(changed, of.sales()));
    }

    private Line coverage(BudgetBuilder b, Repayment r) {
        Line counted = s.line("stress_coverage_counted", "Lowest coverage, 1000 without debt", ONE, cases.of(r.lowest));
        Formula debt = number(NO_DEBT, ONE).exceeds(counted);
        s.line("stress_coverage", "Lowest coverage", ONE, onlyWhen(debt, counted, "no debt"), StressBreaks.NO_DEBT_IS);
        s.line(
                "stress_coverage_change",
                "Change of coverage",
                ONE,
                onlyWhen(debt, counted.minus(r.lowest), "no debt"),
                StressBreaks.NO_DEBT_IS);
        s.line(
                "stress_coverage_drawn",
                "Lowest coverage",
                ONE,
                when(debt, counted, none(ONE)),
                StressBreaks.NO_DEBT_IS);
        s.line("stress_limit_drawn", "Asked for", ONE, when(debt, r.limit, none(ONE)), StressBreaks.NO_DEBT_IS);
        b.schedule(Sheets.STRESS, "Cases, in words")
                .line(
                        "stress_chart_sentence",
                        "What the chart of coverage shows",
                        ONE,
                        when(
                                number(NO_DEBT, ONE).exceeds(r.lowest),
                                joined(
                                        text("Lowest coverage in each case against the "),
                                        shown(r.limit, 2),
                                        text(" that the bank asks for: "),
                                        shown(r.lowest, 2),
                                        text(" as entered, "),
                                        shown(new Element(counted, cases.axis, cases.axis.size() - 1), 2),
                                        text(" all together.")),
                                text("No debt falls due: there is no coverage.")),
                        StressBreaks.NO_DEBT_IS);
        return counted;
    }

    /** All that is shown rests on changes that are entered, which is easily forgotten. */
    private static Line changed(BudgetBuilder b, Shocks shocks) {
        return b.schedule(Sheets.STRESS, "Whether changes are entered")
                .warning(
                        "stress_changed",
                        "Changes to the plan",
                        squares(shocks.all()).isPositive(),
                        "Some are entered on Stress: cash and statements are shown under them.");
    }

    private static Formula squares(List<Line> changes) {
        return changes.stream()
                .map(line -> line.counting(ONE))
                .map(change -> change.times(change))
                .reduce(Formula::plus)
                .orElseThrow();
    }

    private Formula rows(String first, List<Formula> changes, String last) {
        List<Formula> all = new ArrayList<>(List.of(text(first)));
        all.addAll(changes);
        all.add(text(last));
        return new Rows(cases.axis, all);
    }
}
