package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.recovery;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Truths, texts, numbers and optional numbers do not stand for one another; rates belong to their money. */
class KindsTest {

    private static final Formula NUMBER = number(1, Unit.ONE);
    private static final Formula TRUTH = NUMBER.isPositive();
    private static final Formula TEXT = text("word");
    private static final Formula OPTIONAL = onlyWhen(TRUTH, NUMBER, "none");
    private static final Formula MONEY = number(1, Unit.MONEY);
    private static final Formula LIFE = number(5, Unit.parse("a"));
    private static final Formula RATE = number(0.1, Unit.parse("real/a"));

    private static void refused(String message, ThrowingCallable... wrong) {
        for (ThrowingCallable one : wrong) {
            assertThatThrownBy(one).isInstanceOf(FormulaException.class).hasMessageContaining(message);
        }
    }

    @Test
    void a_condition_is_a_truth() {
        refused(
                "wants a TRUTH, but found a NUMBER",
                () -> when(NUMBER, NUMBER, NUMBER),
                () -> onlyWhen(NUMBER, NUMBER, "none"),
                () -> and(TRUTH, NUMBER),
                () -> or(NUMBER, TRUTH),
                () -> not(NUMBER));
    }

    @Test
    void both_alternatives_are_of_one_kind_and_unit() {
        refused("are of one kind, but found NUMBER and TEXT", () -> when(TRUTH, NUMBER, TEXT));
        refused("are of one kind, but found TRUTH and TRUTH", () -> when(TRUTH, TRUTH, TRUTH));
        refused("wants one unit", () -> when(TRUTH, NUMBER, MONEY));
        assertThat(when(TRUTH, TEXT, TEXT).kind()).isEqualTo(Kind.TEXT);
    }

    @Test
    void an_optional_number_is_made_of_a_number_and_becomes_one() {
        refused("wants a NUMBER, but found a TEXT", () -> onlyWhen(TRUTH, TEXT, "none"), () -> OPTIONAL.numberOr(TEXT));
        refused("wants a OPTIONAL, but found a NUMBER", () -> NUMBER.numberOr(NUMBER), () -> NUMBER.hasNumber());
        refused("wants one unit", () -> OPTIONAL.numberOr(MONEY));
        assertThat(OPTIONAL.numberOr(NUMBER).kind()).isEqualTo(Kind.NUMBER);
        assertThat(OPTIONAL.hasNumber().kind()).isEqualTo(Kind.TRUTH);
    }

    @Test
    void texts_are_compared_with_texts() {
        refused(
                "wants a TEXT, but found a NUMBER",
                () -> NUMBER.is("word"),
                () -> NUMBER.isFilled(),
                () -> TEXT.is(NUMBER));
    }

    @Test
    void recovery_takes_a_real_rate_on_money_of_today_over_years() {
        assertThat(recovery(RATE, LIFE, MONEY, MONEY).unit()).isEqualTo(Unit.parse("money/a"));
        refused("A rate on money is in real/a", () -> recovery(number(0.1, Unit.parse("1/a")), LIFE, MONEY, MONEY));
        refused("A life is in a, but found 1", () -> recovery(RATE, NUMBER, MONEY, MONEY));
        refused("wants one unit", () -> recovery(RATE, LIFE, MONEY, NUMBER));
    }

    @ParameterizedTest
    @CsvSource({"one,1,1", "two,6,2", "none,0,0"})
    void what_carries_a_tag_is_summed_and_counted(String tag, double sum, double count) {
        BudgetBuilder b = new BudgetBuilder("Test", "EUR");
        Axis axis = Axis.rows("row", "Row", List.of("a", "b", "c"), 0);
        ScheduleBuilder s = b.schedule("Sheet", "Rows");
        Line tags = s.textEntry("the_tag", "Tag", axis)
                .given(Stream.of("one", "two", "two").map(Given::text).toList());
        Line values = s.entry("the_value", "Value", Unit.ONE, axis)
                .given(Stream.of(1, 2, 4)
                        .map(value -> Given.number(value, Unit.ONE))
                        .toList());
        ScheduleBuilder t = b.schedule("Sheet", "Sums");
        t.line("the_sum", "Sum", Unit.ONE, sumWhere(values, tags, text(tag), axis));
        t.line("the_count", "Count", Unit.ONE, countWhere(tags, text(tag), axis));
        Figures f = Figures.of(b.build());
        assertThat(f.number("the_sum")).isEqualTo(sum);
        assertThat(f.number("the_count")).isEqualTo(count);
    }
}
