package org.benchmetre.farm.pages;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.Tone;

/** What breaks first: coverage and cash under each change alone and all together, and how large each change may be. */
final class StressPage {

    private static final List<Integer> LEFT = List.of(25, 8, 15);
    private static final List<Integer> RIGHT = List.of(20, 17, 14, 14, 13, 13, 12);
    private static final int CHART_ROWS = 12;

    private final Budget budget;

    private StressPage(Budget budget) {
        this.budget = budget;
    }

    static Page of(Budget budget) {
        return new StressPage(budget).page();
    }

    private Page page() {
        return Page.answer("Stress", "What breaks first?")
                .head(new Sentences(List.of(
                        sentence("stress_first", Tone.LEAD),
                        sentence("stress_changed", Tone.WARNING),
                        sentence("stress_state", Tone.FAINT))))
                .left(LEFT, sizes(), limit(), entered())
                .right(RIGHT, cases(), breaks(), chart());
    }

    private Sentence sentence(String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    private Levers sizes() {
        return new Levers(
                "Sizes looked at",
                List.of(
                        lever("Price of fruit, by", "stress_price"),
                        lever("Fruit, by", "stress_yield"),
                        lever("Wages, by", "stress_wage"),
                        lever("Heat and electricity, by", "stress_energy"),
                        lever("Rates of loans, by", "stress_interest"),
                        lever("First harvest later by", "stress_late"),
                        lever("Crop lost in year", "stress_lost_year")));
    }

    private Levers limit() {
        return new Levers("What the bank asks for", List.of(lever("Coverage, at least", "coverage_limit")));
    }

    private Levers entered() {
        return new Levers(
                "Changes that hold now, on all pages of cash",
                List.of(
                        lever("Price of fruit", "shock_price"),
                        lever("Fruit", "shock_yield"),
                        lever("Wages", "shock_wage"),
                        lever("Heat and electricity", "shock_energy"),
                        lever("Rates of loans", "shock_interest"),
                        lever("First harvest late by", "shock_late"),
                        lever("Crop lost in year (0: none)", "shock_lost_year")));
    }

    private FigureRow lever(String label, String entry) {
        return FigureRow.of(label, budget.line(entry));
    }

    private Table cases() {
        Line label = budget.line("stress_label");
        return Table.of(
                        "Each change alone, then all together",
                        label.axes().get(0),
                        Column.of("Case", label),
                        column("Size", "stress_size"),
                        column("Lowest coverage", "stress_coverage"),
                        column("Change", "stress_coverage_change"),
                        column("Least cash, 24 months", "stress_cash_low"),
                        column("Least cash, all years", "stress_cash_least"),
                        column("What breaks", "stress_outcome"))
                .ofRatios()
                .note("Work and energy are counted in full where there is less fruit, which is the safe side. Live.");
    }

    private Table breaks() {
        Line label = budget.line("break_label");
        return Table.of(
                "How large each change may be, alone",
                label.axes().get(0),
                Column.of("Change", label),
                column("Cash runs out at", "break_cash"),
                column("Coverage too low at", "break_coverage"),
                column("Limit reached at", "break_reached_size"));
    }

    private Column column(String heading, String id) {
        return Column.of(heading, budget.line(id));
    }

    private Chart chart() {
        Line drawn = budget.line("stress_coverage_drawn");
        return new Chart(
                budget.line("stress_chart_sentence"),
                Chart.Shape.COLUMNS,
                List.of(drawn, budget.line("stress_limit_drawn")),
                drawn.axes().get(0),
                ChartLook.of(
                        CHART_ROWS,
                        "Two columns for each case: the lowest coverage of all years, and what the bank asks for. None without debt."));
    }
}
