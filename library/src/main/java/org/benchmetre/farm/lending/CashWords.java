package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Sheets;

/** What the cash of the first two years and of later ones says, in sentences. Money is shown in whole units. */
final class CashWords {

    private static final Unit NOMINAL = Unit.MONEY_NOMINAL;

    private final MoneyWords money;

    CashWords(BudgetBuilder b, Funding funds, CashPosition cash, YearOperations y, Line taxTold) {
        money = new MoneyWords(b);
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "Cash, in words");
        Formula lacks = none(NOMINAL).minus(cash.least);
        Line then = s.textLine(
                "cash_least_when",
                "When cash is least",
                when(
                        cash.lowest.exceeds(cash.least),
                        text("at the end of a later year"),
                        joined(text("at the end of "), cash.lowestMonth)));
        Line isShort = s.textLine(
                "cash_short_told",
                "What is missing where cash is least",
                joined(
                        text("Cash runs short by up to "),
                        money.whole(lacks),
                        text(", "),
                        then,
                        text(": ask for a line of credit of that size, or keep as much more at the start.")));
        s.textLine(
                "cash_low_sentence",
                "Where cash is least",
                joined(
                        when(
                                lacks.isPositive(),
                                isShort,
                                joined(
                                        text("Cash is least "),
                                        then,
                                        text(": "),
                                        money.whole(cash.least),
                                        text("; no line of credit is needed."))),
                        text(" The start keeps "),
                        money.whole(funds.workingCapital),
                        text(" for the first months.")));
        Line later = b.schedule(Sheets.LENDING, "Cash of the years after the first two")
                .line("cash_least_year", "Least cash at the end of a year", NOMINAL, least(cash.cash, y.axis));
        Formula shortLater = none(NOMINAL).minus(later);
        Line early = s.textLine(
                "cash_early_told",
                "What the first years leave",
                joined(
                        text("The first year leaves "),
                        money.whole(new Element(cash.net, y.axis, 1)),
                        text(" after loans"),
                        further(y, cash, 2, ", the second "),
                        further(y, cash, 3, ", the third ")));
        s.textLine(
                "cash_years_sentence",
                "Cash of the years",
                joined(
                        early,
                        when(
                                shortLater.isPositive(),
                                joined(
                                        text("; in its worst year the plan ends "),
                                        money.whole(shortLater),
                                        text(" short.")),
                                text("; no year ends short of cash."))));
        s.textLine(
                "cash_chart_sentence",
                "What the chart of cash shows",
                joined(
                        text("Cash at the end of each month; least in "),
                        cash.lowestMonth,
                        text(": "),
                        money.whole(cash.lowest),
                        text(".")));
        s.textLine(
                "cash_terms_sentence",
                "What the cash stands on",
                joined(
                        text("What is bought again and income tax are paid in the last month of a year. Figures are "),
                        taxTold,
                        text(", before any line of credit, in money of each year.")));
    }

    /** What a year leaves, where the plan lasts as long. */
    private Formula further(YearOperations y, CashPosition cash, int year, String words) {
        Formula isInPlan = new Element(y.flow.plan.inPlan, y.axis, year).isPositive();
        return when(isInPlan, joined(text(words), money.whole(new Element(cash.net, y.axis, year))), text(""));
    }
}
