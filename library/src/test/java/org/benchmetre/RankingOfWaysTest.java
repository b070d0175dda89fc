package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which way comes first, and that the answer stays sane where there is little to choose from. */
class RankingOfWaysTest {

    /** Pulses so long that the drain which is planned covers what empties from the lines. */
    private static final String LONG_PULSES = "pulse_per_plant=1000 mL/plant";

    private static final List<String> WAYS = List.of("emitter", "tape", "dripline");

    /** A fourth irrigation system in the first spare row; what fails a year comes last. */
    private static final String[] MIST = {
        "way_key[spare_1]=mist",
        "way_label[spare_1]=Mist",
        "way_lines[spare_1]=1",
        "way_outlets_per_plant[spare_1]=1",
        "way_outlet_flow[spare_1]=2",
        "way_outlet_pressure[spare_1]=100",
        "way_inner_diameter[spare_1]=13.6",
        "way_coefficient_of_variation[spare_1]=0.03",
        "way_failed_per_year[spare_1]=0.001"
    };

    @TempDir
    private Path folder;

    private static Figures with(String... settings) throws ScenarioException {
        return Benchmetre.read(
                        Sample.TROUGH_HOUSE,
                        Optional.empty(),
                        Stream.concat(Stream.of(LONG_PULSES), Stream.of(settings))
                                .toList())
                .figures();
    }

    private static String text(Figures f, String id, String key) {
        Line line = f.budget().line(id);
        return f.text(line, line.axes().get(0).indexOf(key));
    }

    private static List<String> texts(Figures f, String id) {
        Line line = f.budget().line(id);
        return Stream.iterate(0, cell -> cell + 1)
                .limit(line.size())
                .map(cell -> f.text(line, cell))
                .toList();
    }

    @Test
    void the_cheapest_of_the_ways_that_reach_the_target_comes_first() throws ScenarioException {
        Figures all = with();
        Figures few = with("way_coefficient_of_variation[tape]=0.08", "target_uniformity=93");
        assertThat(all.text("recommended_way")).isEqualTo("tape");
        assertThat(all.text("next_way")).isEqualTo("dripline");
        assertThat(few.number("way_yearly_cost", "tape")).isLessThan(few.number("way_yearly_cost", "dripline"));
        assertThat(few.text("recommended_way")).isEqualTo("dripline");
        assertThat(few.text("next_way")).isEqualTo("emitter");
        assertThat(text(few, "way_place", "tape")).isEmpty();
        assertThat(few.number("next_cost_per_metre") - few.number("recommended_cost_per_metre"))
                .isCloseTo(
                        few.number("way_yearly_cost_per_metre", "emitter")
                                - few.number("way_yearly_cost_per_metre", "dripline"),
                        within(1e-12));
    }

    @Test
    void where_no_way_reaches_the_target_cost_alone_ranks_and_that_is_said() throws ScenarioException {
        Figures f = with("target_uniformity=98.9");
        double least = WAYS.stream()
                .mapToDouble(way -> f.number("way_yearly_cost_per_metre", way))
                .min()
                .orElseThrow();
        assertThat(f.number("ways_reaching_target")).isZero();
        assertThat(f.number("way_yearly_cost_per_metre", f.text("recommended_way")))
                .isEqualTo(least);
        assertThat(f.text("irrigation_verdict"))
                .startsWith("Irrigation: Two strips of drip tape")
                .contains(" None reaches 98.9 % emission uniformity.");
        assertThat(f.text("irrigation_reason_evenness"))
                .startsWith("No system reaches the target uniformity: shorten the run");
        assertThat(f.text("target_finding")).isEqualTo("no system reaches it; the ranking is of cost alone.");
        assertThat(text(f, "flip_to", "material_life_tape")).isEqualTo("In-line dripline");
    }

    @Test
    void one_way_only_is_recommended_and_compared_with_nothing() throws ScenarioException, IOException {
        Figures f = Benchmetre.read(emittersOnly()).figures();
        assertThat(f.text("recommended_way")).isEqualTo("emitter");
        assertThat(f.text("next_way")).isEmpty();
        assertThat(f.text("irrigation_next")).isEqualTo("no other system");
        assertThat(f.text("rival_label")).isEqualTo("no other system");
        assertThat(f.text("irrigation_verdict"))
                .contains("the only system entered")
                .doesNotContain("The entries still choose");
        assertThat(texts(f, "flip_value")).contains("only one system").containsOnly("only one system", "");
        assertThat(texts(f, "flip_to")).contains("–").containsOnly("–", "");
        assertThat(f.number("partial_net")).isZero();
        assertThat(f.number("doubts_inside")).isZero();
    }

    private Path emittersOnly() throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file : files.toList()) {
                String text = Files.readString(file, StandardCharsets.UTF_8)
                        .replaceAll("(?m)^(tape|tape_fitting|dripline),.*\\R", "")
                        .replace(",emitter dripline,", ",emitter,");
                Files.writeString(folder.resolve(file.getFileName()), text, StandardCharsets.UTF_8);
            }
        }
        return folder;
    }

    @Test
    void a_fourth_way_in_a_spare_row_takes_part() throws ScenarioException {
        Figures f = with(MIST);
        assertThat(text(f, "way_reaches_target", "spare_1")).isEqualTo("1");
        assertThat(f.text("recommended_way")).isEqualTo("mist");
        assertThat(f.text("irrigation_verdict")).startsWith("Irrigation: Mist");
        assertThat(f.text("next_way")).isEqualTo("tape");
        assertThat(f.text("irrigation_next")).isEqualTo("Two strips of drip tape");
    }

    @Test
    void a_fourth_way_in_a_spare_row_has_flip_values_of_its_own() throws ScenarioException {
        Figures f = with(MIST);
        int row = texts(f, "flip_address").indexOf("way_failed_per_year[spare_1]");
        assertThat(texts(f, "flip_label").get(row)).isEqualTo("Failing outlets of Mist");
        double value = f.number(f.budget().line("flip_value"), row);
        String[] settings = MIST.clone();
        settings[settings.length - 1] = "way_failed_per_year[spare_1]=" + value;
        Figures there = with(settings);
        double mist = there.number("way_yearly_cost_per_metre", "spare_1");
        String to = f.text(f.budget().line("flip_to_way"), row);
        assertThat(there.number("way_yearly_cost_per_metre", to)).isCloseTo(mist, within(1e-9 * mist));
    }
}
