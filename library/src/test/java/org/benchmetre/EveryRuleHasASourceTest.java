package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.number;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line that is more than plain arithmetic of named lines says in its note where its rule comes from. */
class EveryRuleHasASourceTest {

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house"})
    void every_rule_of_a_sample_has_a_source(String sample) throws ScenarioException {
        Budget budget = Benchmetre.read(Path.of("..", "samples", sample)).budget();
        assertThat(withoutSource(budget)).isEmpty();
    }

    @Test
    void every_rule_of_the_starter_has_a_source(@TempDir Path folder) throws IOException, ScenarioException {
        Path house = folder.resolve("house");
        Starter.copyTo(house);
        assertThat(withoutSource(Benchmetre.read(house).budget())).isEmpty();
    }

    @Test
    void constants_and_powers_are_rules_but_conversions_sums_and_guards_are_not() {
        BudgetBuilder b = new BudgetBuilder("Test", "EUR");
        ScheduleBuilder s = b.schedule("Sheet", "Table");
        Unit hoursADay = Unit.parse("h/d");
        Line length = s.entry("a_length", "x", Unit.METRE).given(Given.number(1, Unit.METRE));
        s.line("in_millimetres", "x", Unit.parse("mm"), length.in(Unit.parse("mm")));
        s.line("whole_day", "x", Unit.METRE, length.times(number(24, hoursADay)).in(Unit.METRE));
        s.line("one_more", "x", Unit.METRE, length.plus(number(1, Unit.METRE)));
        s.line("twice_as_long", "x", Unit.METRE, length.times(number(2, Unit.ONE)));
        s.line("a_square", "x", Unit.SQUARE_METRE, length.power(number(2, Unit.ONE)));
        s.line(
                "part_of_a_day",
                "x",
                Unit.METRE,
                length.times(number(12, hoursADay)).in(Unit.METRE));
        s.line("told_why", "x", Unit.METRE, length.times(number(3, Unit.ONE)), "common practice, no source");
        assertThat(withoutSource(b.build())).containsExactly("twice_as_long", "a_square", "part_of_a_day");
    }

    private static List<String> withoutSource(Budget budget) {
        return budget.lines().stream()
                .filter(line -> line.note().isEmpty() && !budget.isRepeated(line))
                .filter(line -> budget.formula(line)
                        .map(formula -> formula.walk(new HasARule()))
                        .orElse(false))
                .map(Line::id)
                .toList();
    }
}
