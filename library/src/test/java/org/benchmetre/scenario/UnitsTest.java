package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnitsTest {

    @TempDir
    Path folder;

    private Input input;

    @BeforeEach
    void newInput() {
        input = new Input(folder);
    }

    @Test
    void a_unit_is_read_with_the_names_given() {
        Map<String, Unit> names = Map.of("EUR", Unit.MONEY);

        assertThat(Units.read(input.cell(" EUR/m "), "cell", names, input.faults()))
                .contains(Unit.MONEY.over(Unit.METRE));
        assertThat(input.messages()).isEmpty();
    }

    @Test
    void a_unit_that_cannot_be_read_is_a_fault_with_the_reason() {
        assertThat(Units.read(input.cell("m / /"), "cell", Map.of(), input.faults()))
                .isEmpty();
        assertThat(Units.read(input.cell("furlong"), "cell", Map.of(), input.faults()))
                .isEmpty();

        assertThat(input.messages()).hasSize(2);
        assertThat(input.messages().get(0))
                .isEqualTo(
                        "parts.csv, row 2, column cell: found \"m / /\", expected a unit (Unit 'm / /' is not of a form"
                                + " like L/h, m2 or W/(m2 K)).");
        assertThat(input.messages().get(1))
                .startsWith("parts.csv, row 2, column cell: found \"furlong\", expected a unit (Unit 'furlong' in")
                .endsWith(").");
    }

    @Test
    void a_blank_unit_is_a_fault() {
        assertThat(Units.read(input.cell(""), "cell", Map.of(), input.faults())).isEmpty();
        assertThat(input.messages())
                .containsExactly("parts.csv, row 2, column cell: found nothing, expected a unit (a plain number has the"
                        + " unit 1).");
    }
}
