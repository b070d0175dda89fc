package org.benchmetre.farm.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conductivity from the ions, against a published table of measurements and by hand. */
class ConductivityTest {

    /** How near sums of ionic conductances come to a salt that was measured. */
    private static final Percentage OF_MEASURED = Percentage.withPercentage(1);

    /** Nothing but sodium chloride, which sets the ionic strength. */
    private static Figures saline(double millimoles) {
        return Figures.of(Sample.with(
                Sample.onRainWater(),
                "recipe_nitrogen=0 mmol/L",
                "recipe_phosphorus=0 mmol/L",
                "recipe_potassium=0 mmol/L",
                "recipe_calcium=0 mmol/L",
                "recipe_magnesium=0 mmol/L",
                "recipe_sulphur=0 mmol/L",
                "raw_water_sodium=" + millimoles + " mmol/L",
                "raw_water_chloride=" + millimoles + " mmol/L"));
    }

    /**
     * Equivalent conductivity of potassium chloride at 25 degrees Celsius, mho cm² for each equivalent, as printed in Standard Methods for
     * the Examination of Water and Wastewater, table 2510:I, by mol/L: that of both ions at the same ionic strength.
     */
    @ParameterizedTest
    @CsvSource({"0.001, 146.9", "0.005, 143.6", "0.01, 141.2", "0.02, 138.2", "0.05, 133.3"})
    void potassium_chloride_conducts_as_measured(double molar, double printed) {
        Figures f = saline(1000 * molar);
        assertThat(f.number("feed_ionic_strength")).isCloseTo(1000 * molar, within(1e-9));
        double both = f.number("ion_conductance", "potassium") + f.number("ion_conductance", "chloride");
        assertThat(1000 * both).isCloseTo(printed, OF_MEASURED);
    }

    /** 10 mmol/L of sodium chloride: 50.507 - 60.764 x 0.1/1.17 and 76.801 - 49.514 x 0.1/1.15 mS/cm for each mol/kg. */
    @Test
    void sodium_chloride_by_hand() {
        double sodium = 50.506875 - 60.76375 * 0.1 / 1.17;
        double chloride = 76.800625 - 49.51375 * 0.1 / 1.15;
        assertThat(saline(10).number("feed_ec_from_ions")).isCloseTo((sodium + chloride) / 100, within(1e-9));
    }

    @Test
    void it_stands_beside_the_rule_of_thumb_and_warns_where_both_lie_outside() {
        Figures f = Figures.of(Sample.troughHouse());
        assertThat(f.number("feed_ec_estimate")).isLessThan(f.number("feed_ec_from_ions"));
        String between = "feed_ec_most=" + (f.number("feed_ec_estimate") + 0.05) + " dS/m";
        String below = "feed_ec_most=" + (f.number("feed_ec_estimate") - 0.05) + " dS/m";
        assertThat(Figures.of(Sample.with(Sample.troughHouse(), between)).text("feed_ec_warning"))
                .isEmpty();
        assertThat(Figures.of(Sample.with(Sample.troughHouse(), below)).text("feed_ec_warning"))
                .contains("band");
    }
}
