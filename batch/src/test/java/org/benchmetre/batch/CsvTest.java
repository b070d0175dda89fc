package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fields that a spreadsheet program would compute, were they not marked as text. */
class CsvTest {

    @TempDir
    Path folder;

    private static String only(String field) {
        Csv csv = new Csv("a", "b");
        csv.row(field, "x");
        return csv.toString().substring("a,b\n".length());
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "@SUM(A1)", "-x", "-1+1", "\uFF1D1"})
    void a_text_that_begins_as_a_formula_does_has_an_apostrophe_before_it(String text) {
        assertThat(only(text)).isEqualTo("'" + text + ",x\n");
    }

    @Test
    void blanks_before_a_formula_do_not_hide_it() {
        assertThat(only("\t=1")).contains("'\t=1");
        assertThat(only("\r=1")).contains("'\r=1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "-0.25", "1", "-", "", "Trough", "5-a", "'x"})
    void numbers_and_other_texts_stay_as_they_are(String text) {
        assertThat(only(text).replace("\"", "")).isEqualTo(text + ",x\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"price", "irrigation", "fund"})
    void labels_of_the_input_come_out_as_text_and_negative_figures_as_numbers(String command) {
        Path scenario = Ran.copy(folder);
        Ran.replace(scenario.resolve("irrigation.csv"), "emitter,One emitter a plant,", "emitter,=1+1,");
        Ran.replace(scenario.resolve("irrigation.csv"), "tape,Two strips of drip tape,", "tape,-777,");

        Ran ran = Ran.with(command, scenario, "--csv");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains(",'=1+1,", ",'-777,")
                .doesNotContain(",=1+1,")
                .doesNotContain(",-777,");
        assertThat(ran.out()).containsPattern(",-[0-9]+\\.[0-9]+,");
    }
}
