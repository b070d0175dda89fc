package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.monthOf;
import static org.benchmetre.budget.Formulas.yearOf;

import java.util.List;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** A yearly total of months changes the unit, and only the unit. */
class YearOfMonthsTest {

    private final ScheduleBuilder s = new BudgetBuilder("Test", "EUR").schedule("Sheet", "Table");
    private final Axis months = Axis.periods(
            "month",
            "Month",
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"));

    private Line monthly(String unit, Axis axis) {
        Unit of = Unit.parse(unit);
        return s.entry("by_" + axis.name(), "x", of, axis).given(Given.number(1, of));
    }

    @Test
    void the_month_after_the_slash_becomes_a_year() {
        Formula year = yearOf(monthly("kg/(plant mo)", months), months);
        assertThat(year.unit()).isEqualTo(Unit.parse("kg/(plant a)"));
        assertThat(Words.of(year)).isEqualTo("sum_of_month(by_month)");
    }

    @Test
    void a_figure_that_is_not_told_by_month_has_no_yearly_total() {
        Line stock = monthly("kg", months);
        assertThatThrownBy(() -> yearOf(stock, months))
                .isInstanceOf(FormulaException.class)
                .hasMessage("A yearly total is made of figures by month, in a unit with /mo, but by_month is in kg.");
    }

    @Test
    void the_year_after_the_slash_becomes_a_month() {
        Line yearly = s.entry("a_year", "x", Unit.parse("h/a")).given(Given.number(1, Unit.parse("h/a")));
        Line share = s.entry("a_share", "x", Unit.ONE, months).given(Given.number(0.5, Unit.ONE));
        Formula month = monthOf(yearly.times(share));
        assertThat(month.unit()).isEqualTo(Unit.parse("h/mo"));
        assertThat(Words.of(month)).isEqualTo("a_year*a_share");
        assertThatThrownBy(() -> monthOf(share))
                .isInstanceOf(FormulaException.class)
                .hasMessage(
                        "What falls in a month is a share of a yearly amount, in a unit with /a, but a_share is in 1.");
    }

    @Test
    void a_year_has_twelve_months() {
        Axis half = Axis.periods("half", "Month", List.of("jan", "feb", "mar", "apr", "may", "jun"));
        Line part = monthly("kg/mo", half);
        assertThatThrownBy(() -> yearOf(part, half))
                .isInstanceOf(FormulaException.class)
                .hasMessage("A yearly total is made of twelve months, but half has 6 periods.");
    }
}
