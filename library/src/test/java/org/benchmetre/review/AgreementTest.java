package org.benchmetre.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.number;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

class AgreementTest {

    private static Figures figures(double total, double leftover) {
        BudgetBuilder b = new BudgetBuilder("Sums", "USD");
        Axis axis = Axis.rows("group", "Group", List.of("one", "two"), 0);
        ScheduleBuilder groups = b.schedule("Groups", "Groups");
        for (String id : List.of("group_first_cost_per_metre", "group_first_cost", "group_yearly_cost")) {
            groups.line(id, id, Unit.ONE, new Rows(axis, List.of(number(1, Unit.ONE), number(2, Unit.ONE))));
        }
        ScheduleBuilder single = b.schedule("Totals", "Totals");
        for (String id : List.of("first_cost_per_metre", "first_cost_total")) {
            single.line(id, id, Unit.ONE, number(total, Unit.ONE));
        }
        single.line("yearly_cost_total", "Yearly", Unit.ONE, number(total, Unit.ONE));
        single.line("receipts_total", "Receipts", Unit.ONE, number(5, Unit.ONE));
        single.line("returns_above_total", "Returns", Unit.ONE, number(2, Unit.ONE));
        single.line("exact_cost", "Exact", Unit.ONE, number(7, Unit.ONE));
        single.line("leftover_value", "Left", Unit.ONE, number(leftover, Unit.ONE));
        single.line("purchase_cost", "Bought", Unit.ONE, number(9, Unit.ONE));
        groups.line("season_receipts", "By month", Unit.ONE, rows(axis, 2, total));
        groups.line("budget_month_costs", "By month", Unit.ONE, rows(axis, 2, 4));
        for (String id :
                List.of("yield_costs_total", "running_cash", "parts_repairs_total", "charges_cash", "used_up_cash")) {
            single.line(id, id, Unit.ONE, number(1, Unit.ONE));
        }
        single.line("plants_cash_year", "Plants", Unit.ONE, number(leftover - 1, Unit.ONE));
        return Figures.of(b.build());
    }

    private static Rows rows(Axis axis, double one, double two) {
        return new Rows(axis, List.of(number(one, Unit.ONE), number(two, Unit.ONE)));
    }

    @Test
    void parts_that_sum_to_their_wholes_agree() {
        assertThat(Agreement.disagreements(figures(1 + 2, 2))).isEmpty();
    }

    @Test
    void each_sum_that_differs_is_told() {
        assertThat(Agreement.disagreements(figures(4, 3)))
                .containsExactly(
                        "The sum of the groups of first cost per metre is 3.0, but first_cost_per_metre is 4.0.",
                        "The sum of the groups of first cost is 3.0, but first_cost_total is 4.0.",
                        "The sum of the groups of yearly cost is 3.0, but yearly_cost_total is 4.0.",
                        "The sum of receipts_total less yearly_cost_total is 1.0, but returns_above_total is 2.0.",
                        "The sum of exact_cost and leftover_value is 10.0, but purchase_cost is 9.0.",
                        "The sum of selling, running_cash, repairs, charges_cash, used_up_cash and plants_cash_year is "
                                + "7.0, but budget_month_costs over the year is 6.0.",
                        "The sum of the months of receipts from planting on is 6.0, but receipts_total is 5.0.");
    }
}
