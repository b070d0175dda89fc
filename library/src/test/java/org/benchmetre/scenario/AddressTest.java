package org.benchmetre.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AddressTest {

    @Test
    void a_single_value_has_no_keys() {
        assertThat(Address.parse("bench_count")).isEqualTo(new Address("bench_count", List.of()));
    }

    @Test
    void keys_stand_in_brackets_apart_by_semicolons() {
        assertThat(Address.parse("way_cost[tape;2027]")).isEqualTo(new Address("way_cost", List.of("tape", "2027")));
    }

    @Test
    void case_and_spaces_do_not_count() {
        assertThat(Address.parse(" Way_Cost [ Tape ; A ] ")).hasToString("way_cost[tape;a]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "a[b", "a]b[", "a[b][c]", "a[]", "a[b;]", "a-b", "[a]"})
    void other_forms_are_refused(String text) {
        assertThatThrownBy(() -> Address.parse(text))
                .isInstanceOf(SettingSyntaxException.class)
                .hasMessageContaining("it was ");
    }
}
