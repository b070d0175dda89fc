package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.presentValue;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sum;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Few periods run across a sheet and many run down; a budget knows nothing of it. */
class LongRunsTest {

    private static final Unit MONEY = Unit.MONEY;
    private static final Unit RATE = Unit.parse("real/a");

    private static Budget loans(int months) {
        BudgetBuilder b = new BudgetBuilder("Loans, an invented example", "EUR");
        Axis loan = Axis.rows("loan", "Loan", List.of("house", "tools"), 1);
        Axis month = Axis.periods(
                "month",
                "Month",
                IntStream.rangeClosed(1, months).mapToObj(Integer::toString).toList());
        Line rate = b.schedule("Loans", "Rate").entry("loan_rate", "Rate", RATE).given(Given.number(0.004, RATE));
        Line paid = b.schedule("Loans", "Loans")
                .entry("loan_paid", "Paid a month", MONEY, loan)
                .given(List.of(Given.number(800, MONEY), Given.number(90, MONEY), Given.blank(MONEY)));
        ScheduleBuilder blocks = b.schedule("Months", "Paid so far, by loan");
        Line soFar = blocks.declare("loan_so_far", "Paid so far", MONEY, Kind.NUMBER, List.of(loan, month), "");
        b.define(soFar, previous(soFar, none(MONEY)).plus(paid));
        ScheduleBuilder flow = b.schedule("Months", "All loans");
        Line all = flow.line("loans_so_far", "Paid so far", MONEY, sum(soFar, loan));
        b.schedule("Loans", "Result").line("loans_worth", "Worth", MONEY, presentValue(rate, all, month));
        return b.build();
    }

    @ParameterizedTest
    @ValueSource(ints = {12, 40, 41, 360})
    void a_run_of_any_length_recalculates_to_the_figures_of_the_engine(int months) throws IOException {
        Budget budget = loans(months);
        Line paid = budget.line("loan_paid");
        PoiReferee referee = new PoiReferee(budget).add(Map.of()).add(Map.of(paid, Map.of(2, Given.number(55, MONEY))));
        assertThat(referee.differences()).isEmpty();
        assertThat(Figures.of(budget).number("loans_so_far", "12")).isEqualTo(12 * 890.0);

        WorkbookPlan plan = Written.bare(budget).plan();
        Line all = budget.line("loans_so_far");
        Line soFar = budget.line("loan_so_far");
        Axis month = all.axes().get(0);
        boolean down = months > 40;
        assertThat(plan.place(all).down() == month).isEqualTo(down);
        assertThat(plan.place(soFar).down() == month).isEqualTo(down);
        assertThat(plan.place(soFar).across() == month).isNotEqualTo(down);
    }
}
