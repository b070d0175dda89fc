package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.countPositive;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sumProduct;
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
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.finance.Returns;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Sheets;

/** What the statements say, in sentences, and coverage of the first years as a chart draws it. */
final class StatementWords {

    private static final Unit PERCENT = Unit.parse("%");
    private static final int DRAWN = 15;

    /** How many years are below the coverage asked for. */
    final Line yearsBelow;

    private final MoneyWords money;
    private final Told told;

    /**
     * Whose figures are told.
     *
     * @param flow the plan's cash before finance
     * @param funds uses and sources
     * @param cash by month and year
     * @param repayment coverage
     * @param sheet balance sheet
     * @param after returns to the owner
     */
    record Told(
            CashFlow flow,
            Funding funds,
            CashPosition cash,
            Repayment repayment,
            BalanceSheet sheet,
            AfterFinance after) {}

    StatementWords(BudgetBuilder b, Told told, Line taxTold) {
        this.told = told;
        money = new MoneyWords(b);
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Statements, in words");
        Repayment r = told.repayment();
        Line covers = s.textLine(
                "coverage_told",
                "How often income covers what falls due",
                when(
                        r.lowest.isPositive(),
                        joined(
                                text(" covers what falls due "),
                                shown(r.lowest, 2),
                                text(" times in year "),
                                r.lowestYear,
                                text(", its lowest; ")),
                        joined(text(" leaves nothing for what falls due in year "), r.lowestYear, text("; "))));
        Line draws = s.textLine(
                "coverage_draw_told",
                "Whether the owner draws",
                when(
                        new Element(told.cash().draw, told.flow().plan.axis, 1).isPositive(),
                        text(""),
                        text(" No draw of the owner is counted.")));
        yearsBelow = s.line(
                "coverage_years_below",
                "Years below what is asked for",
                ONE,
                countPositive(r.belowLimit, r.belowLimit.axes().get(0)));
        Line howMany = s.textLine(
                "coverage_below_told",
                "How many years are below what is asked for",
                when(
                        yearsBelow.isPositive(),
                        joined(
                                shown(yearsBelow, 0),
                                when(
                                        yearsBelow.exceeds(one()),
                                        text(" years of the plan are below it."),
                                        text(" year of the plan is below it."))),
                        text("no year is below it.")));
        Line inShort = s.textLine(
                "coverage_in_short",
                "Whether debt can be paid back, in short",
                when(yearsBelow.isPositive(), text("Not in every year: income"), text("Yes: income")));
        s.textLine(
                "coverage_sentence",
                "Whether debt can be paid back",
                when(
                        r.yearsWithDebt.isPositive(),
                        joined(
                                inShort,
                                covers,
                                text("the bank asks for "),
                                shown(r.limit, 2),
                                text("; "),
                                howMany,
                                draws),
                        text("No debt falls due.")));
        funding(s);
        equity(s);
        worth(s, taxTold);
        chart(b);
    }

    /** For the first page: what the start takes, what is borrowed, and how low cash falls. Empty where nothing is borrowed. */
    private void funding(ScheduleBuilder s) {
        Repayment r = told.repayment();
        s.textLine(
                "answer_funding",
                "What the start takes, and how low cash falls",
                when(
                        r.yearsWithDebt.isPositive(),
                        joined(
                                text("The start takes "),
                                money.whole(told.funds().total),
                                text(", loans bring "),
                                money.whole(told.funds().loansTotal),
                                text("; cash is least at "),
                                money.whole(told.cash().least),
                                text(".")),
                        text("")));
    }

    private void equity(ScheduleBuilder s) {
        BalanceSheet sheet = told.sheet();
        Axis years = told.flow().plan.axis;
        Line last = told.flow().plan.isLast;
        Formula end = sumProduct(sheet.equity, last, years);
        Formula debts = sumProduct(sheet.debts, last, years);
        Line owed = s.textLine(
                "equity_owed_told",
                "What is owed at the end of the plan",
                when(debts.isPositive(), joined(money.whole(debts), text(" are owed.")), text("nothing is owed.")));
        s.textLine(
                "equity_sentence",
                "What is owned and owed",
                joined(
                        text("The owner's equity goes from "),
                        money.whole(new Element(sheet.equity, years, 0)),
                        text(" at the start to "),
                        money.whole(end),
                        text(" at the end of the plan, when "),
                        owed));
    }

    private void worth(ScheduleBuilder s, Line taxTold) {
        Returns before = told.flow().returns;
        Returns after = told.after().returns;
        s.textLine(
                "returns_sentence",
                "What the plan is worth",
                joined(
                        text("Net present value before loans and tax at "),
                        percent(told.flow().discountRate),
                        text(": "),
                        money.whole(before.netPresentValue),
                        text(" (real). To the owner, after loans and "),
                        taxTold,
                        text(": "),
                        money.whole(after.netPresentValue),
                        text(".")));
    }

    private static Formula percent(Formula rate) {
        return joined(shown(rate.counting(ONE).in(PERCENT), 1), text(" %"));
    }

    /** Coverage and the limit of years with debt, nothing in others. */
    private void chart(BudgetBuilder b) {
        Repayment r = told.repayment();
        Axis axis = Axis.periods(
                "covered_year",
                "Year",
                IntStream.rangeClosed(1, Math.min(DRAWN, told.flow().plan.longest()))
                        .mapToObj(Integer::toString)
                        .toList());
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Coverage of the first years, as it is drawn");
        s.line(
                "coverage_drawn",
                "Term-debt coverage",
                ONE,
                rows(axis, year -> withDebt(year, new Element(r.counted, told.flow().plan.axis, year))),
                "nothing where no debt is due");
        s.line("coverage_limit_drawn", "Asked for", ONE, rows(axis, year -> withDebt(year, r.limit)));
    }

    private Formula withDebt(int year, Formula value) {
        Formula due = new Element(told.repayment().payments, told.flow().plan.axis, year);
        return when(due.isPositive(), value, none(ONE));
    }

    private static Formula rows(Axis axis, IntFunction<Formula> each) {
        List<Formula> all = IntStream.rangeClosed(1, axis.size()).mapToObj(each).toList();
        return new Rows(axis, all);
    }
}
