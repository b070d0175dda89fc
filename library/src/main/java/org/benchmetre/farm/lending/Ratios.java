package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;

/** Ratios of the Farm Financial Standards by year, off the statements. A ratio over nothing has a reason instead of a number. */
final class Ratios {

    private static final double HALF = 0.5;
    private static final String STANDARDS =
            ": Farm Financial Standards Council, Financial Guidelines for Agricultural Producers";

    /** Statements that ratios are made of. */
    record Statements(YearOperations year, Income income, CashPosition cash, BalanceSheet balance) {}

    /** All of them, coverage first. */
    final List<Line> all = new ArrayList<>();

    private final ScheduleBuilder s;

    Ratios(BudgetBuilder b, Statements of, Line coverage) {
        all.add(coverage);
        s = b.schedule(Sheets.LENDING, "Ratios by year");
        BalanceSheet sheet = of.balance();
        Line gross = of.year().sales;
        Formula working = sheet.currentAssets.minus(sheet.currentDebts);
        Formula beforeInterest =
                of.income().beforeTax.plus(of.income().interest).minus(of.cash().draw);
        Line averageAssets = average("average_assets", "Average assets", sheet.assets, of);
        Line averageEquity = average("average_equity", "Average equity", sheet.equity, of);
        ratio(
                "current_ratio",
                "Current ratio",
                sheet.currentAssets,
                sheet.currentDebts,
                "current assets / current debts");
        ratio(
                "working_capital_to_gross",
                "Working capital to gross",
                of.year().afterStart(working),
                gross,
                "(current assets - current debts) / fruit sold");
        ratio("debt_to_asset", "Debt to asset", sheet.debts, sheet.assets, "debts / assets, below is better");
        ratio(
                "operating_profit_margin",
                "Operating profit margin",
                beforeInterest,
                gross,
                "(net farm income + interest - owner's draw) / fruit sold");
        ratio("asset_turnover", "Asset turnover", gross, averageAssets, "fruit sold / average assets");
        ratio(
                "return_on_assets",
                "Rate of return on assets",
                beforeInterest,
                averageAssets,
                "(net farm income + interest - owner's draw) / average assets");
        ratio(
                "return_on_equity",
                "Rate of return on equity",
                of.income().beforeTax.minus(of.cash().draw),
                averageEquity,
                "(net farm income - owner's draw) / average equity");
        ratio(
                "operating_expense_ratio",
                "Operating expense ratio",
                of.income().expense,
                gross,
                "expense without interest and depreciation / fruit sold, below is better");
    }

    private void ratio(String id, String label, Formula over, Line under, String words) {
        Line line = s.line(
                id,
                label,
                ONE,
                onlyWhen(under.exceeds(none(under.unit())), over.over(under), "none"),
                words + STANDARDS);
        all.add(line);
    }

    private Line average(String id, String label, Line line, Statements of) {
        Formula both = line.plus(previous(line, none(line.unit())));
        return s.line(
                id,
                label,
                line.unit(),
                of.year().afterStart(both.times(number(HALF, ONE))),
                "half of what stood at the start and at the end of the year: Farm Financial Standards");
    }
}
