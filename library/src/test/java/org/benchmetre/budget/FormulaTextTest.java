package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** Parentheses and spellings; the referees check that the spreadsheet programs read them as meant. */
class FormulaTextTest {

    private final ScheduleBuilder s = new BudgetBuilder("Test", "EUR").schedule("Sheet", "Table");
    private final Line a = plain("a_a");
    private final Line b = plain("b_b");
    private final Line c = plain("c_c");

    private Line plain(String id) {
        return s.entry(id, id, Unit.ONE).given(Given.number(1, Unit.ONE));
    }

    private static String printed(Formula formula) {
        return Words.of(formula);
    }

    @Test
    void theRightSideKeepsItsParentheses() {
        assertThat(printed(a.minus(b.minus(c)))).isEqualTo("a_a-(b_b-c_c)");
        assertThat(printed(a.minus(b).minus(c))).isEqualTo("a_a-b_b-c_c");
        assertThat(printed(a.over(b.times(c)))).isEqualTo("a_a/(b_b*c_c)");
        assertThat(printed(a.times(b.plus(c)))).isEqualTo("a_a*(b_b+c_c)");
        assertThat(printed(a.plus(b).times(c))).isEqualTo("(a_a+b_b)*c_c");
    }

    @Test
    void theBaseOfAPowerIsAlwaysEnclosed() {
        assertThat(printed(a.plus(b).power(number(2, Unit.ONE)))).isEqualTo("(a_a+b_b)^2");
        assertThat(printed(a.power(b).power(c))).isEqualTo("(a_a^b_b)^c_c");
        assertThat(printed(a.power(number(-1, Unit.ONE)))).isEqualTo("a_a^(-1)");
    }

    @Test
    void numbersArePlainDecimals() {
        assertThat(printed(number(1e-7, Unit.ONE))).isEqualTo("0.0000001");
        assertThat(printed(number(12345678901.5, Unit.ONE))).isEqualTo("12345678901.5");
        assertThat(printed(a.times(number(-2, Unit.ONE)))).isEqualTo("a_a*(-2)");
    }

    @Test
    void conversionsShowAsPlainFactors() {
        Line inches = s.entry("the_inches", "x", Unit.parse("in")).given(Given.number(1, Unit.parse("in")));
        assertThat(printed(inches.in(Unit.METRE))).isEqualTo("the_inches*0.0254");
        Line millimetres = s.entry("the_mm", "x", Unit.parse("mm")).given(Given.number(1, Unit.parse("mm")));
        assertThat(printed(millimetres.in(Unit.METRE))).isEqualTo("the_mm/1000");
        assertThat(printed(inches.counting(Unit.METRE))).isEqualTo("the_inches");
    }

    @Test
    void roundingsRoundToSixDecimalsFirst() {
        assertThat(printed(a.over(b).wholeUp())).isEqualTo("ROUNDUP(ROUND(a_a/b_b,6),0)");
        assertThat(printed(a.over(b).wholeDown())).isEqualTo("INT(ROUND(a_a/b_b,6))");
        assertThat(printed(when(a.exceeds(b.minus(c)), a, b))).isEqualTo("IF(ROUND(a_a-(b_b-c_c),6)>0,a_a,b_b)");
    }

    @Test
    void textsAreJoinedBeforeTheyAreCompared() {
        Line word = s.textEntry("the_word", "x").given(Given.text("x"));
        Formula both = joined(word, text("-"), when(a.isPositive(), word, text("\"")));
        assertThat(printed(both.is(joined(word, word))))
                .isEqualTo("the_word&\"-\"&IF(a_a>0,the_word,\"\"\")=the_word&the_word");
        assertThat(printed(word.isBefore(text("2026-03-31")))).isEqualTo("the_word<\"2026-03-31\"");
        assertThat(printed(both.isFilled())).startsWith("(the_word&").endsWith(")<>\"\"");
        assertThatThrownBy(() -> joined(word, a)).hasMessage("JOIN wants a TEXT, but found a NUMBER: a_a.");
    }

    @Test
    void aLongTextIsJoinedOfPiecesThatSpreadsheetsTake() {
        String berries = "\uD83C\uDF53".repeat(101) + "y".repeat(101);
        Line line = s.line("long_sentence", "x", Unit.ONE, text(berries));
        assertThat(FormulaText.of(line, text(berries), 0, null))
                .isEqualTo("\"" + "\uD83C\uDF53".repeat(101) + "\"&\"" + "y".repeat(101) + "\"&\"\"");
    }

    @Test
    void conditionsNest() {
        Formula condition = or(and(a.isPositive(), b.isPositive()), c.isPositive());
        assertThat(printed(when(condition, one(), a))).isEqualTo("IF(OR(AND(a_a>0,b_b>0),c_c>0),1,a_a)");
    }
}
