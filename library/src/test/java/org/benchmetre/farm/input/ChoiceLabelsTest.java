package org.benchmetre.farm.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Accepted;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.entry.Typed;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChoiceLabelsTest {

    private static final Budget SAMPLE = Sample.troughHouse();

    static Stream<Named<Line>> choices() {
        return SAMPLE.lines().stream()
                .filter(line ->
                        SAMPLE.entry(line).isPresent() && !form(line).labels().isEmpty())
                .map(line -> Named.of(line.id(), line));
    }

    private static TextForm form(Line line) {
        return SAMPLE.entry(line).orElseThrow().form();
    }

    @ParameterizedTest
    @MethodSource("choices")
    void eachWordHasALabelOfItsOwnThatIsNoKey(Line line) {
        Set<String> labels = form(line).words().stream()
                .map(word -> form(line).label(word).toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
        assertThat(labels).hasSameSizeAs(form(line).words()).noneMatch(label -> label.contains("_"));
        assertThat(line.label()).doesNotContain("_").doesNotContain("by its key");
    }

    @ParameterizedTest
    @MethodSource("choices")
    void theGateTakesALabelForItsWord(Line line) {
        for (String word : form(line).words()) {
            Accepted taken = SAMPLE.gate().accept(line, 0, Typed.of(form(line).label(word), line.unit()));
            assertThat(taken.orElse(no -> {}).orElseThrow().text()).isEqualTo(word);
        }
    }
}
