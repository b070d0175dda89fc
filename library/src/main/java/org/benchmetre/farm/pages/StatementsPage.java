package org.benchmetre.farm.pages;

import java.util.List;
import java.util.stream.Collectors;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** Income, balance sheet, repayment and ratios by year, and what the plan is worth before and after finance. */
final class StatementsPage {

    private static final List<Integer> LEFT = List.of(26, 14, 10, 11, 10, 10, 10);
    private static final List<Integer> RIGHT = List.of(10, 13, 10, 10, 10);
    private static final int CHART_ROWS = 12;

    private final Budget budget;

    private StatementsPage(Budget budget) {
        this.budget = budget;
    }

    static Page of(Budget budget) {
        return new StatementsPage(budget).page();
    }

    private Page page() {
        return Page.answer("Statements", "What is owned and owed, and can debt be paid back?")
                .head(new Sentences(List.of(
                        sentence("coverage_sentence", Tone.LEAD),
                        sentence("equity_sentence", Tone.PLAIN),
                        sentence("returns_sentence", Tone.PLAIN))))
                .left(LEFT, ratios(), formulas())
                .right(RIGHT, chart())
                .foot(repayment(), income(), balance(), before(), after());
    }

    private Sentence sentence(String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    private Table ratios() {
        Line label = budget.line("ratio_label");
        return Table.of(
                        "Ratios of the Farm Financial Standards",
                        label.axes().get(0),
                        Column.of("Ratio", label),
                        column("Year 1", "ratio_year_1"),
                        column("Year 2", "ratio_year_2"),
                        column("Year 3", "ratio_year_3"),
                        column("Year 5", "ratio_year_5"),
                        column("Strong", "ratio_strong"),
                        column("Weak", "ratio_weak"))
                .ofRatios();
    }

    /** The formula of each ratio, as its line gives it before its source. */
    private FixedWords formulas() {
        String all = budget.line("ratio_label").axes().get(0).keys().stream()
                .map(budget::line)
                .map(ratio -> ratio.label() + ": " + ratio.note().split(": ", 2)[0])
                .collect(Collectors.joining(". ", "", "."));
        return new FixedWords("", all, Tone.FAINT);
    }

    private Chart chart() {
        Line drawn = budget.line("coverage_drawn");
        return new Chart(
                budget.line("coverage_sentence"),
                Chart.Shape.COLUMNS,
                List.of(drawn, budget.line("coverage_limit_drawn")),
                drawn.axes().get(0),
                ChartLook.of(
                        CHART_ROWS,
                        "Term-debt coverage of each year with debt, beside what the bank asks for; no column where no debt is due."));
    }

    private Table repayment() {
        return byYear(
                "Repayment of debt, " + budget.currency(),
                column("Before tax", "income_before_tax"),
                column("Tax", "tax_of_year"),
                column("Draw", "year_draw"),
                column("Capacity", "repayment_capacity"),
                column("Due", "repayment_due"),
                column("Margin", "repayment_margin"),
                column("Coverage", "term_debt_coverage"));
    }

    private Table income() {
        return byYear(
                "Income as it is earned, " + budget.currency(),
                column("Fruit sold", "year_sales"),
                column("Selling", "year_selling"),
                column("Labour", "year_labour"),
                column("Energy", "year_energy"),
                column("Running", "year_running"),
                column("Supplies", "income_used"),
                column("Depreciation", "year_depreciation"),
                column("Interest", "income_interest"),
                column("Before tax", "income_before_tax"),
                column("After tax", "income_after_tax"));
    }

    private Table balance() {
        return byYear(
                "Balance sheet at the end of the year, " + budget.currency(),
                column("Cash", "balance_cash"),
                column("Buyers owe", "year_receivable"),
                column("Crop", "year_inventory"),
                column("Capital", "capital_book"),
                column("Assets", "balance_assets"),
                column("Credit", "balance_credit"),
                column("Interest", "debt_accrued"),
                column("Due in a year", "debt_current"),
                column("Later", "balance_later"),
                column("Debts", "balance_debts"),
                column("Equity", "balance_equity"));
    }

    private Table byYear(String title, Column... columns) {
        Line year = budget.line("year_words");
        Column[] all = new Column[columns.length + 1];
        all[0] = Column.of("Year", year);
        System.arraycopy(columns, 0, all, 1, columns.length);
        Table table = Table.of(title, year.axes().get(0), all);
        return table.rows(table.rows().stream().map(TableRow::ifAny).toList()).ofRatios();
    }

    private FigureList before() {
        return new FigureList(
                "Before loans and tax, today's money",
                List.of(
                        row("Net present value", "net_present_value"),
                        row("Rate of return", "rate_of_return_words"),
                        row("All rates, when written", "rates_of_return"),
                        row("Modified rate of return", "modified_rate_words"),
                        row("Paid back after", "payback_years"),
                        row("With interest, after", "discounted_payback_years"),
                        row("Yearly cost of a metre", "equivalent_cost_per_metre")));
    }

    private FigureList after() {
        return new FigureList(
                "To the owner, after loans and tax, money of each year",
                List.of(
                        row("Net present value", "owner_net_present_value"),
                        row("Rate of return", "owner_rate_of_return_words"),
                        row("All rates, when written", "owner_rates_of_return"),
                        row("Paid back after", "owner_payback_years"),
                        row("With interest, after", "owner_discounted_payback_years")));
    }

    private FigureRow row(String label, String id) {
        return FigureRow.of(label, budget.line(id));
    }

    private Column column(String heading, String id) {
        return Column.of(heading, budget.line(id));
    }
}
