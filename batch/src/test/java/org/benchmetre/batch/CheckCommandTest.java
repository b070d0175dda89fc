package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class CheckCommandTest {

    @Test
    void a_sound_scenario_passes() {
        Ran ran = Ran.with("check", Ran.SAMPLE);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo(Ran.SAMPLE + ": no faults, no warnings.\n");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void unlikely_values_are_warned_of_and_pass() {
        Ran ran = Ran.with(
                "check",
                Ran.SAMPLE,
                "--set",
                "plant_spacing=14in",
                "--set",
                "way_check_valves[tape]=yes",
                "--set",
                "density_response=0",
                "--set",
                "material_price_year[tape]=2022",
                "--set",
                "material_price_year[pump]=2026");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo(Ran.SAMPLE + ": no faults, 2 warnings.\n");
        assertThat(ran.errLines())
                .containsExactly(
                        "Warning: setting plant_spacing=14in, plant_spacing: Spacing between neighbours along the trough"
                                + " is 14 in, usually from 3.937 to 13.78 in (common practice, no source).",
                        "Warning: setting material_price_year[tape]=2022, material_price_year[tape]: the price is of 2022"
                                + " and the plan of 2026; no price is indexed.");
    }

    @Test
    void sums_that_disagree_fail_the_check() {
        StringWriter err = new StringWriter();
        CommandLine command = new CommandLine(new CheckCommand()).setErr(new PrintWriter(err));

        int exit = command.<CheckCommand>getCommand().finished(List.of("The sum is 3, but the whole is 4."), 0);

        assertThat(exit).isEqualTo(4);
        assertThat(err).hasToString("Check failed: The sum is 3, but the whole is 4.\n");
    }
}
