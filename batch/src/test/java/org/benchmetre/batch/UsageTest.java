package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {

    @ParameterizedTest
    @ValueSource(strings = {"price", "workbook", "irrigation", "fund", "lines", "explain", "check", "compare"})
    void every_command_has_help_with_the_exit_codes(String command) {
        Ran ran = Ran.with(command, "--help");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("Usage: benchmetre " + command, "--set=LINE=VALUE", "--prices=FILE")
                .contains(
                        "0   done", "1   the input has faults", "2   wrong usage", "3   not all", "4   a check failed");
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(ran.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"price", "workbook", "irrigation", "fund", "lines", "explain", "check", "compare"})
    void every_command_has_a_version(String command) {
        Ran ran = Ran.with(command, "--version");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).startsWith("benchmetre ");
    }

    @Test
    void the_help_of_the_program_names_all_commands() {
        assertThat(Ran.with("--help").out())
                .contains(
                        "start",
                        "price",
                        "irrigation",
                        "fund",
                        "compare",
                        "workbook",
                        "lines",
                        "explain",
                        "check",
                        "Exit codes:");
    }

    @Test
    void no_command_is_wrong_usage() {
        Ran ran = Ran.with();

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith("A command is missing.").contains("Usage:");
    }

    @Test
    void an_unknown_option_is_wrong_usage() {
        assertThat(Ran.with("price", Ran.SAMPLE, "--colour").exit()).isEqualTo(2);
    }

    @Test
    void a_missing_scenario_argument_is_wrong_usage() {
        assertThat(Ran.with("price").exit()).isEqualTo(2);
    }

    @Test
    void a_workbook_needs_a_target() {
        assertThat(Ran.with("workbook", Ran.SAMPLE).exit()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plant_spacing", "=6", "a b=3", "material_price[tape=1", "material_price[]=1", "x[a;]=1"})
    void a_setting_that_does_not_follow_the_form_is_wrong_usage(String setting) {
        Ran ran = Ran.with("price", Ran.SAMPLE, "--set", setting);

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("it was ");
    }

    @Test
    void an_address_that_does_not_follow_the_form_is_wrong_usage() {
        assertThat(Ran.with("explain", Ran.SAMPLE, "material_price[tape").exit())
                .isEqualTo(2);
    }
}
