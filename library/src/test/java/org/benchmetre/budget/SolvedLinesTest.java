package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.joined;
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
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Cases;
import org.benchmetre.budget.run.Explanation;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Lines that a search fills. */
class SolvedLinesTest {

    private static final Unit MONEY = Unit.MONEY;

    private final BudgetBuilder b = new BudgetBuilder("Test", "EUR");
    private final ScheduleBuilder s = b.schedule("Sheet", "Table");
    private final Line price = s.entry("the_price", "Price", MONEY).given(Given.number(7, MONEY));

    /** Finds what the price is less two, or none from ten on, and counts how often it is asked. */
    private record LessTwo(Line price) implements Search {

        private static final AtomicInteger RUNS = new AtomicInteger();

        @Override
        public List<Line> reads() {
            return List.of(price);
        }

        @Override
        public List<Solved> find(Budget budget) {
            RUNS.incrementAndGet();
            double now = Figures.of(budget).number(price, 0);
            return List.of(now < 10 ? Solved.number(now - 2) : Solved.none("none in range"));
        }
    }

    private final Line flip = s.solved("flip_price", "Flip", MONEY, "where both cost the same", new LessTwo(price));
    private final Line cost = s.solvedNumber("flip_cost", "Cost there", MONEY, "", KnownAnswers.of(Solved.number(8)));
    private final Line state = s.textLine(
            "flip_state",
            "State",
            when(
                    flip.hasNumber(),
                    when(price.exceeds(flip.numberOr(none(MONEY))), text("dear"), text("cheap")),
                    text("never")));
    private final Line moved = s.line("cost_moved", "Moved", Unit.ONE, price.exceeds(cost));
    private final Line twice = s.line("price_twice", "Twice", MONEY, price.plus(price));
    private final Budget budget = b.build();

    @BeforeEach
    void countFromNone() {
        LessTwo.RUNS.set(0);
    }

    private Map<Line, Map<Integer, Given>> priced(double number) {
        return Map.of(price, Map.of(0, Given.number(number, MONEY)));
    }

    @Test
    void a_figure_pays_for_its_own_search_alone() {
        Figures figures = Figures.of(budget);
        assertThat(figures.number("cost_moved")).isEqualTo(0);
        assertThat(figures.isSearched()).isTrue();
        assertThat(LessTwo.RUNS).hasValue(0);
        assertThat(figures.number("flip_price")).isEqualTo(5);
        assertThat(figures.number("flip_cost")).isEqualTo(8);
        assertThat(LessTwo.RUNS).hasValue(1);
    }

    @Test
    void a_search_runs_once_and_only_when_what_follows_from_it_is_read() {
        Figures figures = Figures.of(budget);
        assertThat(figures.number(twice, 0)).isEqualTo(14);
        assertThat(figures.troubles()).isEmpty();
        assertThat(figures.isSearched()).isFalse();
        assertThat(LessTwo.RUNS).hasValue(0);
        assertThat(figures.text("flip_state")).isEqualTo("dear");
        assertThat(figures.number("flip_price")).isEqualTo(5);
        assertThat(figures.number("cost_moved")).isEqualTo(0);
        assertThat(figures.isSearched()).isTrue();
        assertThat(LessTwo.RUNS).hasValue(1);
        assertThat(budget.solved()).containsExactly(flip, cost);
        assertThat(budget.search(cost)).isEqualTo(KnownAnswers.of(Solved.number(8)));
    }

    @Test
    void several_threads_read_what_one_search_found() {
        Figures figures = Figures.of(budget);
        assertThat(IntStream.range(0, 64).parallel().mapToObj(i -> figures.text("flip_state")))
                .hasSize(64)
                .containsOnly("dear");
        assertThat(LessTwo.RUNS).hasValue(1);
    }

    @Test
    void changed_entries_are_searched_anew() {
        Figures figures = Figures.of(budget.with(priced(12)));
        assertThat(figures.text("flip_price")).isEqualTo("none in range");
        assertThat(figures.hasReason(flip, 0)).isTrue();
        assertThat(figures.text("flip_state")).isEqualTo("never");
        assertThat(figures.number("cost_moved")).isEqualTo(1);
        assertThat(figures.filledOn()).isEqualTo("as filled on these entries");
    }

    @Test
    void typed_over_in_a_workbook_formulas_follow_and_what_was_found_stays() {
        Figures figures = Figures.of(budget);
        Figures after = figures.typedOver(priced(4));
        assertThat(after.number("flip_price")).isEqualTo(5);
        assertThat(after.text("flip_state")).isEqualTo("cheap");
        assertThat(after.number("price_twice")).isEqualTo(8);
        assertThat(after.filledOn()).isEqualTo("as filled on other entries");
        assertThat(after.typedOver(Map.of()).filledOn()).isEqualTo("as filled on other entries");
        assertThat(figures.typedOver(Map.of()).filledOn()).isEqualTo("as filled on these entries");
    }

    @Test
    void blocks_of_cases_keep_what_is_found_on_the_budget_as_it_stands() {
        List<CellRef> varying = List.of(new CellRef(price, 0));
        Cases.Run run = Cases.of(budget, varying, List.of(state)).start();
        double[] codes = run.blocks(new double[][] {{4, 6}}, state, 0);
        assertThat(run.text(codes[0])).isEqualTo("cheap");
        assertThat(run.text(codes[1])).isEqualTo("dear");
        assertThat(LessTwo.RUNS).hasValue(1);
    }

    @Test
    void what_a_search_finds_may_be_given_in_each_case() {
        Cases.Run run =
                Cases.of(budget, List.of(new CellRef(flip, 0)), List.of(state)).start();
        double[] states = run.blocks(new double[][] {{1, 100}}, state, 0);
        assertThat(run.text(states[0])).isEqualTo("dear");
        assertThat(run.text(states[1])).isEqualTo("cheap");
    }

    @Test
    void blocks_of_cases_that_need_no_search_run_none() {
        Cases.of(budget, List.of(new CellRef(price, 0)), List.of(twice));
        assertThat(LessTwo.RUNS).hasValue(0);
    }

    @Test
    void it_is_explained_without_a_formula() {
        Figures figures = Figures.of(budget);
        assertThat(Explanation.of(figures, flip, 0))
                .hasToString("Flip (flip_price) = 5 EUR\n  found by a search, as filled on these entries\n"
                        + "  note: where both cost the same\n");
        assertThat(Explanation.of(figures.typedOver(priced(9)), flip, 0).toString())
                .startsWith("Flip (flip_price) = 5 EUR\n  found by a search, as filled on other entries\n");
    }

    @Test
    void it_survives_a_copy() throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(budget);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            Budget copy = (Budget) in.readObject();
            assertThat(Figures.of(copy).text("flip_state")).isEqualTo("dear");
            assertThat(Figures.of(copy).number("flip_price")).isEqualTo(5);
        }
    }

    private Budget with(Search search) {
        BudgetBuilder other = new BudgetBuilder("Test", "EUR");
        ScheduleBuilder list = other.schedule("Sheet", "Table");
        Line first = list.solvedNumber("first_found", "First", MONEY, "", search);
        Line behind = list.line("behind_it", "Behind", MONEY, first.plus(first));
        list.solved("second_found", "Second", MONEY, "", new KnownAnswers(List.of(behind), List.of(Solved.number(1))));
        return other.build();
    }

    @Test
    void a_search_that_looks_at_what_a_search_fills_is_refused() {
        assertThatThrownBy(() -> with(KnownAnswers.of(Solved.number(1))))
                .hasMessage(
                        "The search of second_found looks at behind_it, which follows from first_found, which a search "
                                + "fills.");
        assertThatThrownBy(() -> with(new KnownAnswers(List.of(price), List.of())))
                .hasMessage("The search of first_found looks at the_price, which is not a line of this budget.");
    }

    private static Figures ofOne(Search search) {
        BudgetBuilder other = new BudgetBuilder("Test", "EUR");
        other.schedule("Sheet", "Table").solvedNumber("one_found", "One", MONEY, "", search);
        return Figures.of(other.build());
    }

    private static Figures saying(String words) {
        BudgetBuilder other = new BudgetBuilder("Test", "EUR");
        ScheduleBuilder table = other.schedule("Sheet", "Table");
        Line said = table.solvedText("one_said", "One", "", KnownAnswers.of(Solved.none(words)));
        table.textLine("one_joined", "Joined", joined(text("It says "), said));
        return Figures.of(other.build());
    }

    @Test
    void a_search_may_find_words_that_formulas_read() {
        assertThat(saying("a quotation").text("one_joined")).isEqualTo("It says a quotation");
    }

    @Test
    void what_does_not_fit_is_refused() {
        assertThatThrownBy(() -> budget.search(price)).hasMessage("Line the_price is not filled by a search.");
        assertThatThrownBy(() -> ofOne(KnownAnswers.of()).number("one_found"))
                .hasMessage("Line one_found has 1 cells, but its search found 0 values.");
        assertThatThrownBy(() -> ofOne(KnownAnswers.of(Solved.none("none"))).number("one_found"))
                .hasMessage("Line one_found takes numbers alone, but its search found 'none'.");
        assertThatThrownBy(() -> saying("").text("one_said"))
                .hasMessage("Line one_said takes words alone, but its search found none.");
        assertThatThrownBy(() -> Solved.number(Double.NaN)).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> new Solved(3, "none")).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> b.define(flip, price)).hasMessage("Line flip_price is defined twice.");
        assertThatThrownBy(() -> flip.plus(price)).hasMessage("ADD wants a NUMBER, but found a OPTIONAL: flip_price.");
        assertThatThrownBy(() -> flip.numberOr(none(Unit.METRE)))
                .hasMessage("NUMBER_OR wants one unit, but found money (flip_price) and m (0).");
        assertThatThrownBy(cost::hasNumber).hasMessage("HAS_NUMBER wants a OPTIONAL, but found a NUMBER: flip_cost.");
        assertThat(moved.kind()).isEqualTo(Kind.TRUTH);
    }
}
