package org.benchmetre.farm.pages;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.Months;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** Cash with loans: by month for two years, where it is least, and by year. */
final class CashPage {

    private static final List<Integer> LEFT = List.of(25, 11, 10);
    private static final List<Integer> RIGHT = List.of(9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 10);
    private static final int CHART_ROWS = 12;

    private final Budget budget;

    private CashPage(Budget budget) {
        this.budget = budget;
    }

    static Page of(Budget budget) {
        return new CashPage(budget).page();
    }

    private Page page() {
        return Page.answer("Cash", "Is there always enough cash?")
                .head(new Sentences(List.of(
                        sentence("cash_low_sentence", Tone.LEAD),
                        sentence("cash_years_sentence", Tone.PLAIN),
                        sentence("cash_terms_sentence", Tone.FAINT))))
                .left(LEFT, levers())
                .right(RIGHT, chart())
                .foot(months(1), months(2), years());
    }

    private Sentence sentence(String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    private Levers levers() {
        return new Levers(
                "Change here",
                List.of(
                        lever("Cash begins in", "start_month"),
                        lever("Buyers pay after", "sales_terms"),
                        lever("Owner's draw", "owner_draw"),
                        lever("Inflation", "inflation_rate"),
                        lever("Fruit prices grow beyond it", "fruit_price_growth"),
                        lever("Costs grow beyond it", "cost_growth"),
                        lever("Income tax, share", "tax_rate")));
    }

    private FigureRow lever(String label, String entry) {
        return FigureRow.of(label, budget.line(entry));
    }

    private Chart chart() {
        Line cash = budget.line("month_cash");
        return new Chart(
                budget.line("cash_chart_sentence"),
                Chart.Shape.COLUMNS,
                List.of(cash, budget.line("month_cash_low")),
                cash.axes().get(0),
                ChartLook.of(
                        CHART_ROWS,
                        "Cash at the end of each of the first 24 months; the month in which it is least has a column of its own."));
    }

    /** The months of one of the first two years. */
    private Table months(int year) {
        Line name = budget.line("plan_month_told");
        Table table = Table.of(
                "Year " + year + ", month by month, " + budget.currency(),
                name.axes().get(0),
                columns(
                        Column.of("Month", name),
                        "month_",
                        column("Interest", "debt_interest_in_month"),
                        column("Principal", "debt_principal_in_month"),
                        column("Tax", "month_tax")));
        int first = (year - 1) * Months.IN_A_YEAR;
        return hidden(table.rows(table.rows().subList(first, first + Months.IN_A_YEAR)), "month_running");
    }

    private Table years() {
        Line year = budget.line("year_words");
        Table table = Table.of(
                "Year by year, " + budget.currency(),
                year.axes().get(0),
                columns(
                        Column.of("Year", year),
                        "year_",
                        column("Interest", "debt_interest"),
                        column("Principal", "debt_principal"),
                        column("Tax", "tax_of_year")));
        return hidden(table, "year_running");
    }

    /** Without the rows beyond the plan. */
    private Table hidden(Table table, String running) {
        return table.rows(table.rows().stream().map(TableRow::ifAny).toList()).nothingWithout(budget.line(running));
    }

    private Column[] columns(Column name, String of, Column interest, Column principal, Column tax) {
        return new Column[] {
            name,
            column("From buyers", of + "collected"),
            column("Own", of + "own"),
            column("Selling", of + "selling"),
            column("Labour", of + "labour"),
            column("Energy", of + "energy"),
            column("Running", of + "running"),
            column("Bought", of + "bought"),
            interest,
            principal,
            column("Draw", of + "draw"),
            tax,
            column("Left", of + "net"),
            column("Cash", of + "cash")
        };
    }

    private Column column(String heading, String id) {
        return Column.of(heading, budget.line(id));
    }
}
