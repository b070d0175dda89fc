package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Cases;
import org.benchmetre.budget.run.Explanation;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** Lines that a search fills. */
class SolvedLinesTest {

    private static final Unit MONEY = Unit.MONEY;

    private final BudgetBuilder b = new BudgetBuilder("Test", "EUR");
    private final ScheduleBuilder s = b.schedule("Sheet", "Table");
    private final Line price = s.entry("the_price", "Price", MONEY).given(Given.number(7, MONEY));
    private final Line flip = s.solved("flip_price", "Flip", MONEY, "where both cost the same");
    private final Line cost = s.solvedNumber("flip_cost", "Cost there", MONEY, "");
    private final Line state = s.textLine(
            "flip_state",
            "State",
            when(
                    flip.hasNumber(),
                    when(price.exceeds(flip.numberOr(none(MONEY))), text("dear"), text("cheap")),
                    text("never")));
    private final Line moved = s.line("cost_moved", "Moved", Unit.ONE, price.exceeds(cost));
    private final Budget empty = b.build();

    private Budget filled(Solved found, double costThere) {
        return empty.filled(Map.of(flip, List.of(found), cost, List.of(Solved.number(costThere))));
    }

    private Budget priced(Budget budget, double number) {
        return budget.with(Map.of(price, Map.of(0, Given.number(number, MONEY))));
    }

    @Test
    void before_a_search_there_is_no_number() {
        Figures figures = Figures.of(empty);
        assertThat(figures.text("flip_price")).isEqualTo("not searched");
        assertThat(figures.hasReason(flip, 0)).isTrue();
        assertThat(figures.number("flip_cost")).isEqualTo(0);
        assertThat(figures.text("flip_state")).isEqualTo("never");
        assertThat(empty.filledOn(flip)).isEqualTo("not searched yet");
        assertThat(priced(empty, 1).filledOn(flip)).isEqualTo("not searched yet");
        assertThat(empty.solved()).containsExactly(flip, cost);
        assertThat(figures.troubles()).isEmpty();
    }

    @Test
    void formulas_compare_with_what_was_found() {
        Figures figures = Figures.of(filled(Solved.number(5), 8));
        assertThat(figures.number("flip_price")).isEqualTo(5);
        assertThat(figures.text("flip_state")).isEqualTo("dear");
        assertThat(figures.number("cost_moved")).isEqualTo(0);
        Figures after = Figures.of(priced(filled(Solved.number(5), 8), 4));
        assertThat(after.text("flip_state")).isEqualTo("cheap");
        Figures without = Figures.of(filled(Solved.none("none in range"), 6));
        assertThat(without.text("flip_price")).isEqualTo("none in range");
        assertThat(without.text("flip_state")).isEqualTo("never");
        assertThat(without.number("cost_moved")).isEqualTo(1);
    }

    @Test
    void what_was_found_is_kept_and_called_old_when_an_entry_changes() {
        Budget budget = filled(Solved.number(5), 8);
        assertThat(budget.filledOn(flip)).isEqualTo("as filled on these entries");
        Budget changed = priced(budget, 9);
        assertThat(changed.solved(flip)).containsExactly(Solved.number(5));
        assertThat(changed.filledOn(flip)).isEqualTo("as filled on other entries");
        Budget again = changed.filled(Map.of(flip, List.of(Solved.number(6))));
        assertThat(again.filledOn(flip)).isEqualTo("as filled on these entries");
        assertThat(again.filledOn(cost)).isEqualTo("as filled on other entries");
        assertThat(budget.solved(flip)).containsExactly(Solved.number(5));
        assertThat(empty.solved(flip)).containsExactly(Solved.none("not searched"));
    }

    @Test
    void blocks_of_cases_read_it_as_it_stands() {
        List<CellRef> varying = List.of(new CellRef(price, 0));
        Cases.Run run =
                Cases.of(filled(Solved.number(5), 8), varying, List.of(state)).start();
        double[] codes = run.blocks(new double[][] {{4, 6}}, state, 0);
        assertThat(run.text(codes[0])).isEqualTo("cheap");
        assertThat(run.text(codes[1])).isEqualTo("dear");
        Cases.Run given =
                Cases.of(empty, List.of(new CellRef(flip, 0)), List.of(state)).start();
        double[] states = given.blocks(new double[][] {{1, 100}}, state, 0);
        assertThat(given.text(states[0])).isEqualTo("dear");
        assertThat(given.text(states[1])).isEqualTo("cheap");
    }

    @Test
    void it_is_explained_without_a_formula() {
        Figures figures = Figures.of(priced(filled(Solved.number(5), 8), 9));
        assertThat(Explanation.of(figures, flip, 0))
                .hasToString("Flip (flip_price) = 5 EUR\n  found by a search, as filled on other entries\n"
                        + "  note: where both cost the same\n");
        assertThat(Explanation.of(Figures.of(empty), flip, 0).toString())
                .startsWith("Flip (flip_price) = not searched");
    }

    @Test
    void it_survives_a_copy() throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(filled(Solved.number(5), 8));
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            Budget copy = (Budget) in.readObject();
            assertThat(Figures.of(copy).text("flip_state")).isEqualTo("dear");
            assertThat(copy.filledOn(copy.line("flip_price"))).isEqualTo("as filled on these entries");
        }
    }

    @Test
    void what_does_not_fit_is_refused() {
        assertThatThrownBy(() -> empty.filled(Map.of(price, List.of(Solved.number(1)))))
                .hasMessage("Line the_price is not filled by a search.");
        assertThatThrownBy(() -> empty.filled(Map.of(flip, List.of())))
                .hasMessage("Line flip_price has 1 cells, but found 0 values.");
        assertThatThrownBy(() -> empty.filled(Map.of(cost, List.of(Solved.none("none")))))
                .hasMessage("Line flip_cost takes numbers alone, but found 'none'.");
        assertThatThrownBy(() -> Solved.number(Double.NaN)).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> new Solved(3, "none")).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> b.define(flip, price)).hasMessage("Line flip_price is defined twice.");
        assertThatThrownBy(() -> flip.plus(price)).hasMessage("ADD wants a NUMBER, but found a OPTIONAL: flip_price.");
        assertThatThrownBy(() -> flip.numberOr(none(Unit.METRE)))
                .hasMessage("NUMBER_OR wants one unit, but found money (flip_price) and m (0).");
        assertThatThrownBy(cost::hasNumber).hasMessage("HAS_NUMBER wants a OPTIONAL, but found a NUMBER: flip_cost.");
    }
}
