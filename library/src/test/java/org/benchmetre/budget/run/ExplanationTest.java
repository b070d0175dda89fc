package org.benchmetre.budget.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.sum;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

class ExplanationTest {

    private static Figures figures() {
        BudgetBuilder b = new BudgetBuilder("Parts", "EUR");
        Axis part = Axis.rows("part", "Part", List.of("pump", "clip", "tank"), 1);
        ScheduleBuilder parts = b.schedule("Parts", "Parts");
        Line price = parts.entry("part_price", "Price", Unit.MONEY, part)
                .given(List.of(
                        Given.number(340, Unit.MONEY).from("quotation").at(new Origin.File("parts.csv", 2, "price")),
                        Given.blank(Unit.MONEY),
                        Given.number(60, Unit.MONEY)));
        ScheduleBuilder totals = b.schedule("Totals", "Totals");
        Line total = totals.line("part_total", "All parts", Unit.MONEY, sum(price, part));
        totals.line("part_twice", "Twice all parts", Unit.MONEY, total.plus(total), "for the sake of it");
        Line length =
                totals.entry("bench_length", "Length", Unit.METRE).given(Given.typed(10, Unit.parse("ft"), Unit.METRE));
        totals.line("cost_per_metre", "Per metre", Unit.MONEY.over(Unit.METRE), total.over(length));
        totals.line("total_share", "Share", Unit.ONE, total.plus(total).over(total));
        return Figures.of(b.build());
    }

    private static List<String> explained(String id) {
        Figures figures = figures();
        return Explanation.of(figures, figures.budget().line(id), 0)
                .toString()
                .lines()
                .toList();
    }

    @Test
    void a_sum_names_its_rows_and_counts_those_that_are_zero() {
        assertThat(explained("part_total"))
                .containsExactly(
                        "All parts (part_total) = 400 EUR",
                        "  = sum_of_part(part_price)",
                        "  Price (part_price[pump]) = 340 EUR",
                        "    entry, parts.csv, row 2, column price; source: quotation",
                        "  Price (part_price[tank]) = 60 EUR",
                        "    entry",
                        "  (2 more rows add nothing)");
    }

    @Test
    void an_entry_says_what_was_typed_and_a_formula_its_note() {
        assertThat(explained("cost_per_metre"))
                .startsWith("Per metre (cost_per_metre) = 131.2335958 EUR/m")
                .contains("    entry, default, given as 10 ft");
        assertThat(explained("part_twice")).contains("  note: for the sake of it");
    }

    @Test
    void a_figure_that_is_read_by_two_others_is_explained_once() {
        BudgetBuilder b = new BudgetBuilder("Twice", "EUR");
        ScheduleBuilder s = b.schedule("Sheet", "Table");
        Line side = s.entry("side_length", "Side", Unit.METRE).given(Given.number(3, Unit.METRE));
        Line area = s.line("square_area", "Area", Unit.SQUARE_METRE, side.times(side));
        s.line("square_mean", "Mean", Unit.METRE, area.over(side));
        Figures figures = Figures.of(b.build());

        assertThat(Explanation.of(figures, figures.budget().line("square_mean"), 0))
                .hasToString("Mean (square_mean) = 3 m\n  = square_area/side_length\n  Area (square_area) = 9 m²\n"
                        + "    = side_length*side_length\n    Side (side_length) = 3 m\n      entry, default\n"
                        + "  Side (side_length) = 3 m (see above)\n");
    }
}
