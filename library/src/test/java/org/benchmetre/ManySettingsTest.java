package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

class ManySettingsTest {

    private static final Path SAMPLE = Sample.TROUGH_HOUSE;

    private static final int COUNT = 10_000;

    @Test
    void ten_thousand_unknown_names_are_all_told_and_the_first_with_their_near_names() {
        List<String> settings = IntStream.range(0, COUNT)
                .mapToObj(i -> "bench_cuont_" + i + "=1")
                .toList();
        ScenarioException refused = catchThrowableOfType(
                ScenarioException.class, () -> Benchmetre.read(SAMPLE, Optional.empty(), settings));

        assertThat(refused.faults().size()).isEqualTo(COUNT);
        assertThat(refused.faults().sentences().get(0)).contains("did you mean bench_count?");
    }

    @Test
    void a_setting_of_any_length_is_told_in_a_sentence() {
        ScenarioException refused = catchThrowableOfType(
                ScenarioException.class,
                () -> Benchmetre.read(SAMPLE, Optional.empty(), List.of("material_label[tape]=" + "x".repeat(40_000))));

        assertThat(refused.faults().sentences()).hasSize(1);
        assertThat(refused.faults().sentences().get(0)).hasSizeLessThan(500).endsWith("(material_label[tape]).");
    }
}
