package org.benchmetre.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes of texts follow from their letters alone. */
class TextsTest {

    /** Worked out by a script of a dozen lines in another language from the published constants of the hash. */
    @ParameterizedTest
    @CsvSource({"tape, 341024356011840", "Tape, 244007044536519", "Grün 1 €, 906967631075813"})
    void a_code_is_the_same_on_every_machine(String text, double code) {
        assertThat(new Texts().code(text)).isEqualTo(code);
    }

    @Test
    void the_order_in_which_texts_are_met_does_not_matter() {
        List<String> texts = List.of("tape", "Tape", "drip line", "", "emitter", "TAPE dripline");
        Texts forwards = new Texts();
        Texts backwards = new Texts();
        double[] first = texts.stream().mapToDouble(forwards::code).toArray();
        for (int i = texts.size() - 1; i >= 0; i--) {
            assertThat(backwards.code(texts.get(i))).isEqualTo(first[i]);
        }
        assertThat(forwards.code("")).isZero();
        assertThat(forwards.joined(forwards.code("Ta"), forwards.code("pe"))).isEqualTo(backwards.code("Tape"));
    }

    @Test
    void texts_are_the_same_without_regard_to_case_and_keep_their_letters() {
        Texts texts = new Texts();
        double tape = texts.code("Drip TAPE");
        assertThat(texts.same(tape, texts.code("drip tape"))).isTrue();
        assertThat(texts.same(tape, texts.code("DRIP tape"))).isTrue();
        assertThat(texts.same(tape, texts.code("drip tapes"))).isFalse();
        assertThat(texts.same(tape, 0)).isFalse();
        assertThat(texts.text(tape)).isEqualTo("Drip TAPE");
        double none = Texts.noNumber(tape);
        assertThat(Texts.isNoNumber(none)).isTrue();
        assertThat(Texts.isNoNumber(Double.NaN)).isFalse();
        assertThat(Texts.isNoNumber(0.0 / 0.0)).isFalse();
        assertThat(texts.reason(none)).isEqualTo("Drip TAPE");
    }

    /** A list with a space on each side has the key with a space on each side: what a spreadsheet's FIND looks for. */
    @Test
    void a_list_has_a_key_exactly_where_a_spreadsheet_finds_it() {
        Random random = new Random(11);
        Texts texts = new Texts();
        for (int i = 0; i < 20_000; i++) {
            String list = letters(random, 7);
            String key = letters(random, 3);
            boolean found = (" " + list + " ").contains(" " + key + " ");
            assertThat(texts.hasKey(texts.code(list), texts.code(key)))
                    .as("'%s' has '%s'", list, key)
                    .isEqualTo(found);
        }
    }

    private static String letters(Random random, int most) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            text.append("ab ".charAt(random.nextInt(3)));
        }
        return text.toString();
    }

    @Test
    void two_texts_with_one_code_are_refused_whichever_comes_first() {
        for (List<String> order : List.of(List.of("tape", "emitter"), List.of("emitter", "tape"))) {
            Texts texts = new Texts(text -> 7);
            texts.code(order.get(0));
            assertThatThrownBy(() -> texts.code(order.get(1)))
                    .isInstanceOf(FormulaException.class)
                    .hasMessage("The texts '" + order.get(0) + "' and '" + order.get(1)
                            + "' cannot be told apart by their codes; change a letter of one.");
        }
    }

    @Test
    void what_is_added_over_texts_they_do_not_learn() {
        Texts below = new Texts();
        double known = below.code("known");
        Texts over = below.over();
        double fresh = over.code("fresh");
        assertThat(over.text(known)).isEqualTo("known");
        assertThat(over.text(fresh)).isEqualTo("fresh");
        assertThatThrownBy(() -> below.text(fresh))
                .isInstanceOf(FormulaException.class)
                .hasMessageStartingWith("No text here has the code ");
    }

    @Test
    void several_threads_find_the_same_codes() {
        Texts shared = new Texts();
        ConcurrentHashMap<String, Double> codes = new ConcurrentHashMap<>();
        IntStream.range(0, 40_000).parallel().forEach(i -> {
            String text = "Text " + i % 500;
            Double before = codes.putIfAbsent(text, shared.code(text));
            assertThat(before == null || before.equals(shared.code(text))).isTrue();
        });
        assertThat(codes)
                .hasSize(500)
                .allSatisfy((text, code) -> assertThat(shared.text(code)).isEqualTo(text));
    }
}
