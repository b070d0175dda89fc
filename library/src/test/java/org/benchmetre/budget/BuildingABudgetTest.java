package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BuildingABudgetTest {

    private static final Unit METRE = Unit.METRE;
    private static final Unit LITRE = Unit.parse("L");

    private final BudgetBuilder b = new BudgetBuilder("Test", "EUR");
    private final ScheduleBuilder s = b.schedule("Sheet", "Table");

    private Line entry(String id, Unit unit) {
        return s.entry(id, id, unit).given(Given.number(1, unit));
    }

    @Test
    void metresDoNotAddToLitres() {
        Line length = entry("the_length", METRE);
        Line volume = entry("the_volume", LITRE);
        assertThatThrownBy(() -> length.plus(volume))
                .isInstanceOf(FormulaException.class)
                .hasMessage("ADD wants one unit, but found m (the_length) and L (the_volume).");
    }

    @Test
    void moneyOfTodayDoesNotAddToMoneyOfALaterYear() {
        Line real = entry("real_money", Unit.MONEY);
        Line nominal = entry("nominal_money", Unit.MONEY_NOMINAL);
        assertThatThrownBy(() -> real.minus(nominal))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining("money (real_money) and money_nominal (nominal_money)");
        assertThatThrownBy(() -> real.in(Unit.MONEY_NOMINAL)).isInstanceOf(UnitException.class);
    }

    @Test
    void aLineTakesNoFormulaOfAnotherUnit() {
        Line length = entry("the_length", METRE);
        assertThatThrownBy(() -> s.line("the_area", "Area", Unit.SQUARE_METRE, length.times(number(2, Unit.ONE))))
                .hasMessage("Line the_area is a NUMBER in m2, but its formula the_length*2 is a NUMBER in m.");
    }

    @Test
    void inchesAreNotMetresUntilConverted() {
        Line length = entry("the_length", Unit.parse("in"));
        Line other = entry("other_length", METRE);
        assertThatThrownBy(() -> length.plus(other)).isInstanceOf(FormulaException.class);
        assertThat(length.in(METRE).plus(other).unit()).isEqualTo(METRE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"q1", "fy2024", "length", "the_length_entry", "The_length", "1_a", "a__b", "a_", "r1c1", ""})
    void namesThatCouldBeCellsOrClashAreRefused(String name) {
        assertThatThrownBy(() -> entry(name, METRE))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining("Line name '" + name + "' cannot be used");
    }

    @Test
    void aNameIsUsedOnce() {
        entry("the_length", METRE);
        assertThatThrownBy(() -> entry("the_length", METRE)).hasMessage("Line name 'the_length' is used twice.");
    }

    @Test
    void aCycleIsReportedWhole() {
        Line first = s.declare("first_figure", "First", METRE, Kind.NUMBER, List.of(), "");
        Line second = s.line("second_figure", "Second", METRE, first.plus(number(1, METRE)));
        Line third = s.line("third_figure", "Third", METRE, second.plus(number(1, METRE)));
        b.define(first, third.minus(number(2, METRE)));
        assertThatThrownBy(b::build)
                .isInstanceOf(FormulaException.class)
                .hasMessage(
                        "A figure depends on itself: first_figure reads third_figure reads second_figure reads first_figure.");
    }

    @Test
    void aBalanceThatCarriesItselfIsNoCycle() {
        Axis years = Axis.periods("year", "Year", List.of("1", "2", "3"));
        Line paid = s.entry("paid_in", "Paid in", Unit.MONEY, years).given(Given.number(5, Unit.MONEY));
        Line closing = s.declare("closing_balance", "Closing", Unit.MONEY, Kind.NUMBER, List.of(years), "");
        Line opening = s.line("opening_balance", "Opening", Unit.MONEY, previous(closing, none(Unit.MONEY)));
        b.define(closing, opening.plus(paid));
        assertThat(org.benchmetre.budget.run.Figures.of(b.build()).number("closing_balance", "3"))
                .isEqualTo(15);
    }

    @Test
    void aDeclaredLineIsDefinedOnceAndOnlyOnce() {
        Line line = s.declare("the_length", "Length", METRE, Kind.NUMBER, List.of(), "");
        assertThatThrownBy(b::build).hasMessage("Line the_length was declared but never defined.");
        b.define(line, number(1, METRE));
        assertThatThrownBy(() -> b.define(line, number(2, METRE))).hasMessage("Line the_length is defined twice.");
    }

    @Test
    void aLineOfAnotherBudgetIsUnknown() {
        Line stranger = new BudgetBuilder("Other", "EUR")
                .schedule("Sheet", "Table")
                .entry("the_length", "Length", METRE)
                .given(Given.number(1, METRE));
        s.line("twice_it", "Twice", METRE, stranger.times(number(2, Unit.ONE)));
        assertThatThrownBy(b::build).hasMessage("Line twice_it uses the_length, which is not a line of this budget.");
    }

    @Test
    void aTruthIsLegalOnlyAsACondition() {
        Line length = entry("the_length", METRE);
        Formula positive = length.isPositive();
        assertThatThrownBy(() -> positive.times(length))
                .hasMessageContaining("MULTIPLY wants a NUMBER, but found a TRUTH");
        assertThat(when(positive, length, none(METRE)).unit()).isEqualTo(METRE);
    }

    @Test
    void anOptionalNumberIsBarredFromArithmetic() {
        Line length = entry("the_length", METRE);
        Formula optional = Formulas.onlyWhen(length.isPositive(), length, "never");
        assertThatThrownBy(() -> optional.plus(length))
                .hasMessageContaining("ADD wants a NUMBER, but found a OPTIONAL");
    }

    @Test
    void textsAreNotNumbers() {
        Line length = entry("the_length", METRE);
        assertThatThrownBy(() -> length.plus(text("x"))).isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> when(length.isPositive(), length, text("x"))).isInstanceOf(FormulaException.class);
    }

    @Test
    void aNegativeBaseIsRefused() {
        assertThatThrownBy(() -> number(-2, Unit.ONE).power(number(2, Unit.ONE)))
                .hasMessage("The base of a power is not negative, but found -2.0.");
    }

    @Test
    void aLineIsGatheredOnlyAlongItsOwnAxis() {
        Axis rows = Axis.rows("part", "Part", List.of("a", "b"), 1);
        Axis others = Axis.rows("task", "Task", List.of("a", "b"), 1);
        Line part = s.entry("part_length", "Length", METRE, rows).given(Given.number(1, METRE));
        assertThatThrownBy(() -> Formulas.sum(part, others))
                .hasMessage("Line part_length does not run along task and cannot be gathered there.");
        assertThat(sumProduct(part, part, rows).unit()).isEqualTo(Unit.SQUARE_METRE);
    }
}
