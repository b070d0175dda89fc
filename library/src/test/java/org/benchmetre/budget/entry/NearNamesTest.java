package org.benchmetre.budget.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNamesTest {

    @ParameterizedTest
    @CsvSource({
        "price,price,0",
        "prise,price,1",
        "pirce,price,1",
        "prce,price,1",
        "pricee,price,1",
        "'',abc,3",
        "ab,ba,1"
    })
    void distance_counts_inserted_omitted_replaced_and_swapped_letters(String a, String b, int distance) {
        assertThat(NearNames.distance(a, b, 5)).isEqualTo(distance);
        assertThat(NearNames.distance(b, a, 5)).isEqualTo(distance);
    }

    @Test
    void the_nearest_come_first_and_ties_in_alphabetical_order() {
        assertThat(NearNames.nearest("bench_cont", List.of("bench_counts", "bench_cost", "bench_count", "crop"), 3))
                .containsExactly("bench_cost", "bench_count", "bench_counts");
    }

    @Test
    void no_more_names_are_given_than_asked_for() {
        assertThat(NearNames.nearest("bench_cont", List.of("bench_counts", "bench_cost", "bench_count"), 1))
                .containsExactly("bench_cost");
    }

    @Test
    void case_does_not_matter() {
        assertThat(NearNames.nearest("FARM.CSV", List.of("farm.csv"), 1)).containsExactly("farm.csv");
    }

    @Test
    void far_names_and_empty_or_endless_text_have_no_near_ones() {
        assertThat(NearNames.nearest("zebra", List.of("price", "pack"), 3)).isEmpty();
        assertThat(NearNames.nearest("x", List.of("a", "b"), 3)).isEmpty();
        assertThat(NearNames.nearest("", List.of("a"), 3)).isEmpty();
        assertThat(NearNames.nearest("a".repeat(100_000), List.of("a".repeat(100_000)), 3))
                .isEmpty();
    }

    @Test
    void where_none_is_spelt_alike_names_with_all_its_words_are_near_the_shortest_first() {
        assertThat(NearNames.nearest("cost_metre", List.of("yearly_cost_per_metre", "first_cost_per_metre", "cost"), 3))
                .containsExactly("first_cost_per_metre", "yearly_cost_per_metre");
        assertThat(NearNames.nearest("yield", List.of("yield_total", "total"), 3))
                .containsExactly("yield_total");
    }

    @Test
    void a_distance_beyond_the_reach_is_not_worked_out_but_is_beyond() {
        assertThat(NearNames.distance("abcdefgh", "hgfedcba", 2)).isGreaterThan(2);
        assertThat(NearNames.distance("abcdefgh", "abcdefghij", 1)).isGreaterThan(1);
        assertThat(NearNames.distance("abcdefgh", "bacdefhg", 2)).isEqualTo(2);
    }

    @Test
    void the_question_names_up_to_three() {
        assertThat(NearNames.didYouMean("prise", List.of("price", "pack"))).isEqualTo("did you mean price?");
        assertThat(NearNames.didYouMean("tap", List.of("tape", "tank", "top", "taps", "tip")))
                .isEqualTo("did you mean tape, taps or tip?");
        assertThat(NearNames.didYouMean("zebra", List.of("price"))).isEmpty();
    }
}
