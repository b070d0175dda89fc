package org.benchmetre.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.entry.EvidenceKind;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvidenceCountTest {

    private static final Path SAMPLE = Sample.TROUGH_HOUSE;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "quotation of 3 May 2026|QUOTED",
                "Lee et al., Acta Horticulturae 1156.43, 2017 (recipe); range common practice, no source|PUBLISHED",
                "perlite handbook page 3-2, typical of peat and perlite mixes|PUBLISHED",
                "about 120 mesh; common practice, no source|COMMON_PRACTICE",
                "NRCS practice 430 and ASAE S376, from memory|FROM_MEMORY",
                "invented for the demo, between 500 and 1350 published|INVENTED",
                "5 kg block within 12 to 15 of a gardening source; price invented for the demo|INVENTED",
                "a neighbour|OTHER",
                "''|UNSAID"
            })
    void the_weakest_word_of_a_source_counts(String source, EvidenceKind kind) {
        assertThat(EvidenceKind.of(source)).isEqualTo(kind);
    }

    @Test
    void a_price_of_ones_own_without_source_moves_from_invented_to_unsaid() throws ScenarioException {
        Plan sample = Benchmetre.read(SAMPLE);
        EvidenceCount before = EvidenceCount.of(sample.budget());
        EvidenceCount after =
                EvidenceCount.of(sample.with("fruit_price", "8 USD/kg").budget());

        assertThat(before.byKind()).containsOnlyKeys(EvidenceKind.values());
        assertThat(before.byKind().get(EvidenceKind.INVENTED)).isGreaterThan(100);
        assertThat(after.all()).isEqualTo(before.all());
        assertThat(after.byKind().get(EvidenceKind.INVENTED))
                .isEqualTo(before.byKind().get(EvidenceKind.INVENTED) - 1);
        assertThat(after.byKind().get(EvidenceKind.UNSAID))
                .isEqualTo(before.byKind().get(EvidenceKind.UNSAID) + 1);
    }

    @Test
    void a_default_of_nothing_is_no_entry_in_use_until_it_is_filled() throws ScenarioException {
        Plan sample = Benchmetre.read(SAMPLE);
        String left = sample.budget().lines().stream()
                .filter(line ->
                        sample.budget().entry(line).isPresent() && line.axes().isEmpty())
                .filter(line -> sample.budget().given(line).get(0).source().equals("0 until you fill it in"))
                .findFirst()
                .orElseThrow()
                .id();

        assertThat(EvidenceCount.of(sample.with(left, "1").budget()).all())
                .isEqualTo(EvidenceCount.of(sample.budget()).all() + 1);
    }
}
