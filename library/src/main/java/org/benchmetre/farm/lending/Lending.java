package org.benchmetre.farm.lending;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.finance.CashFlow;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.loans.LoanSchedule;
import org.benchmetre.farm.loans.Loans;
import org.benchmetre.farm.loans.OwnFlows;
import org.benchmetre.farm.loans.SecurityKinds;
import org.benchmetre.farm.loans.Uses;
import org.benchmetre.farm.ownership.YearlyCost;
import org.benchmetre.farm.takeoff.FirstCost;
import org.benchmetre.farm.takeoff.PartBlocks;

/** The lender's review, put together: funds, loans, cash, statements, ratios and returns. Nothing of the enterprise budget reads it. */
public final class Lending {

    /** Uses and sources of funds. */
    final Funding funds;
    /** Cash by month and year. */
    final CashPosition cash;
    /** Repayment. */
    final Repayment repayment;
    /** Returns to the owner. */
    final AfterFinance after;
    /** Loans. */
    final Loans loans;
    /** What the farm brings and takes by year. */
    final YearOperations years;
    /** Income tax, share of taxable income. */
    final Line taxRate;

    /** That loans are above what security carries; empty where they are not. */
    final Line isAboveSecurity;
    /** How many years are below the coverage asked for. */
    final Line yearsBelow;

    /**
     * What the farm brings to it.
     *
     * @param flow its cash before finance
     * @param first first cost
     * @param yearly yearly cost
     * @param blocks which parts are of the house, which are equipment
     * @param uses what the start takes beside parts, plants and installing
     */
    public record Farm(CashFlow flow, FirstCost first, YearlyCost yearly, PartBlocks blocks, Uses uses) {}

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param farm the farm
     */
    public Lending(BudgetBuilder b, FarmEntries entries, Farm farm) {
        CashFlow flow = farm.flow();
        SecurityKinds kinds = new SecurityKinds(b, entries);
        loans = new Loans(b, kinds);
        Uses uses = farm.uses();
        OwnFlows flows = new OwnFlows(b);
        FirstCost.Parts p = farm.first().parts;
        PartsByKind parts = new PartsByKind(b, p.materials(), p.takeOff(), farm.blocks());
        Funding.Start start =
                new Funding.Start(flow.startUp, farm.yearly().house.cost, parts, uses, farm.yearly().owned.rates);
        funds = new Funding(b, entries, loans, start);
        Security security = new Security(b, kinds, loans, funds, start);
        new PartsPaid(b, parts, kinds, loans, farm.yearly().owned.life);
        LendingWords words = new LendingWords(b, entries, loans, funds, security);
        LoanSchedule schedule =
                new LoanSchedule(b, entries, loans, funds.loanAmount, flow.months.months.number, flow.plan.number);
        SalesTerms terms = new SalesTerms(b, entries);
        MonthOperations months = new MonthOperations(b, flow, terms, flows);
        years = new YearOperations(b, flow, months, terms, flows);
        DebtService debt = new DebtService(b, schedule, months, years);
        BookValue book =
                new BookValue(b, years, funds, farm.yearly(), p.takeOff(), parts.usedUp(farm.yearly().owned.isUsedUp));
        Income income = new Income(b, years, book, debt);
        TaxDepreciation wear =
                new TaxDepreciation(b, entries, flow.plan.axis, flow.plan.number, kinds.axis, security.paid);
        taxRate = wear.rate;
        IncomeTax tax =
                new IncomeTax(b, wear, flow.plan.axis, flow.plan.number, income.taxedBefore, book.lastingBought);
        cash = new CashPosition(b, entries, new CashPosition.Moves(months, years, debt, tax), funds.workingCapital);
        BalanceSheet sheet = new BalanceSheet(b, years, book, debt, cash);
        repayment = new Repayment(b, entries, income, debt, cash, tax.due);
        Ratios ratios = new Ratios(b, new Ratios.Statements(years, income, cash, sheet), repayment.coverage);
        new Bands(b, entries, flow.plan.axis, ratios.all);
        new LoanWords(b, loans, schedule, new LoanWords.Told(funds, repayment, debt.debt, cash.cash, flow));
        after = new AfterFinance(b, entries, years, funds, debt, cash);
        new CashWords(b, funds, cash, years, tax.told);
        new Stress(b, entries, flow, new Stress.Figures(repayment, cash, years.sales));
        StatementWords told =
                new StatementWords(b, new StatementWords.Told(flow, funds, cash, repayment, sheet, after), tax.told);
        isAboveSecurity = words.limitTold;
        yearsBelow = told.yearsBelow;
    }
}
