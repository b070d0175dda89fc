package org.benchmetre.farm.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/** One raw water for the nutrient solution and for clogging. */
class RawWaterTest {

    private static final Offset<Double> NEAR = within(1e-9);

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(Sample.troughHouse(), settings));
    }

    /** CaCO3 weighs 100.086 g/mol: 1.0 and 0.3 mmol/L are 130.1 mg/L. */
    @Test
    void hardness_follows_from_calcium_and_magnesium() {
        Figures f = with("raw_water_calcium=1 mmol/L", "raw_water_magnesium=0.3 mmol/L");
        assertThat(f.number("raw_water_hardness")).isCloseTo(1.3 * 100.086, NEAR);
        assertThat(f.number("water_cause_value", "hardness")).isEqualTo(f.number("raw_water_hardness"));
    }

    @Test
    void hardness_alone_counts_as_calcium_in_the_feed_and_as_typed_for_clogging() {
        Figures f = with("raw_water_calcium=0 mmol/L", "raw_water_magnesium=0 mmol/L", "water_hardness=60 mg/L");
        assertThat(f.number("ion_from_water", "calcium")).isCloseTo(60 / 100.086, NEAR);
        assertThat(f.number("ion_from_water", "magnesium")).isZero();
        assertThat(f.number("water_cause_value", "hardness")).isCloseTo(60, NEAR);
        assertThat(f.text("raw_water_hardness_warning")).isEmpty();
    }

    @Test
    void calcium_and_magnesium_go_before_a_hardness_that_contradicts_them() {
        String[] ions = {"raw_water_calcium=1 mmol/L", "raw_water_magnesium=0.3 mmol/L"};
        Figures near = with(ions[0], ions[1], "water_hardness=125 mg/L");
        Figures far = with(ions[0], ions[1], "water_hardness=60 mg/L");
        assertThat(near.text("raw_water_hardness_warning")).isEmpty();
        assertThat(far.text("raw_water_hardness_warning")).contains("water_hardness");
        assertThat(far.number("raw_water_hardness")).isCloseTo(1.3 * 100.086, NEAR);
        assertThat(far.number("ion_from_water", "calcium")).isEqualTo(1);
    }

    /** 1.0 Ca, 0.3 Mg, 0.55 SO4, 0.9 Na, 0.4 Cl and 2.0 mmol/L of alkalinity, of which 0.6 count as CaCO3. */
    @Test
    void dissolved_solids_follow_from_the_ions_unless_measured() {
        double weigh = 40.078 + 0.3 * 24.305 + 0.55 * 96.056 + 0.9 * 22.990 + 0.4 * 35.45 + 0.6 * 2 * 50.043;
        Figures f = with();
        assertThat(f.number("raw_water_dissolved")).isCloseTo(weigh, NEAR);
        assertThat(f.number("water_cause_value", "dissolved")).isCloseTo(weigh, NEAR);
        Figures measured = with("water_dissolved=300 mg/L");
        assertThat(measured.number("water_cause_value", "dissolved")).isEqualTo(300);
        assertThat(measured.text("raw_water_dissolved_warning")).isEmpty();
        assertThat(with("water_dissolved=150 mg/L").text("raw_water_dissolved_warning"))
                .contains("water_dissolved");
    }
}
