package org.benchmetre.farm.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of the feed, with the chemistry written out again: each salt's ions and molar mass in numbers. */
class FeedLawsTest {

    /** Sums of a dozen doubles of at most a few hundred, in another order. */
    private static final Offset<Double> NEAR = within(1e-9);

    private static final List<String> SALTS = List.of(
            "calcium_nitrate",
            "calcium_ammonium_nitrate",
            "magnesium_sulphate",
            "monopotassium_phosphate",
            "ammonium_nitrate",
            "potassium_nitrate",
            "potassium_sulphate",
            "monoammonium_phosphate");

    /** Molar masses in the order of the salts: Ca 40.078, N 14.007, O 15.999, H 1.008, Mg 24.305, S 32.06, K 39.098, P 30.974. */
    private static final double[] MOLAR_MASSES = {236.146, 1080.623, 246.466, 136.084, 80.043, 101.102, 174.252, 115.025
    };

    /** What one of each salt brings, in the order of the salts. */
    private static final Map<String, int[]> BRINGS = Map.of(
            "nitrate", new int[] {2, 11, 0, 0, 1, 1, 0, 0},
            "ammonium", new int[] {0, 1, 0, 0, 1, 0, 0, 1},
            "phosphorus", new int[] {0, 0, 0, 1, 0, 0, 0, 1},
            "potassium", new int[] {0, 0, 0, 1, 0, 1, 2, 0},
            "calcium", new int[] {1, 5, 0, 0, 0, 0, 0, 0},
            "magnesium", new int[] {0, 0, 1, 0, 0, 0, 0, 0},
            "sulphur", new int[] {0, 0, 1, 0, 0, 0, 1, 0});

    static LongStream seeds() {
        return LongStream.rangeClosed(1, FeedCases.COUNT);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyIonSuppliedIsWhatWaterAcidAndSaltsBring(long seed) {
        Figures f = FeedCases.figures(seed);
        assertThat(f.troubles()).isEmpty();
        BRINGS.forEach((ion, counts) -> {
            double sum = water(f, ion) + acid(f, ion);
            for (int i = 0; i < counts.length; i++) {
                sum += counts[i] * f.number("salt_amount", SALTS.get(i));
            }
            assertThat(f.number("ion_supplied", ion)).as(ion).isCloseTo(sum, NEAR);
            assertThat(f.number("ion_difference", ion)).as(ion).isCloseTo(sum - f.number("ion_target", ion), NEAR);
        });
    }

    private static double water(Figures f, String ion) {
        return List.of("calcium", "magnesium", "sulphur").contains(ion) ? f.number("raw_water_" + ion) : 0;
    }

    private static double acid(Figures f, String ion) {
        double taken = Math.max(0, f.number("raw_water_alkalinity") - f.number("alkalinity_left"));
        return switch (f.text("acid_choice") + " " + ion) {
            case "nitric nitrate", "phosphoric phosphorus" -> taken;
            case "sulphuric sulphur" -> taken / 2;
            default -> 0;
        };
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noSaltIsNegativeAndAnIonIsInSurplusOnlyWhereItsOwnSaltIsLeftOut(long seed) {
        Figures f = FeedCases.figures(seed);
        SALTS.forEach(salt -> assertThat(f.number("salt_amount", salt)).as(salt).isGreaterThanOrEqualTo(0));
        Map.of(
                        "nitrate", "potassium_nitrate",
                        "phosphorus", "monopotassium_phosphate",
                        "potassium", "potassium_sulphate",
                        "magnesium", "magnesium_sulphate")
                .forEach((ion, salt) -> {
                    double difference = f.number("ion_difference", ion);
                    assertThat(difference).as(ion).isGreaterThan(-1e-9);
                    assertThat(difference * f.number("salt_amount", salt))
                            .as(ion)
                            .isCloseTo(0, NEAR);
                });
        double ammoniumSalts =
                f.number("salt_amount", "ammonium_nitrate") + f.number("salt_amount", "monoammonium_phosphate");
        assertThat(f.number("ion_difference", "ammonium")).isGreaterThan(-1e-9);
        assertThat(f.number("ion_difference", "ammonium") * ammoniumSalts).isCloseTo(0, NEAR);
        double calciumSalts =
                f.number("salt_amount", "calcium_nitrate") + f.number("salt_amount", "calcium_ammonium_nitrate");
        assertThat(f.number("ion_difference", "calcium")).isGreaterThan(-1e-9);
        assertThat(f.number("ion_difference", "calcium") * calciumSalts).isCloseTo(0, NEAR);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void saltsAndAcidChangeNoChargeOfTheWater(long seed) {
        Figures f = FeedCases.figures(seed);
        double ofWater = 2 * f.number("raw_water_calcium")
                + 2 * f.number("raw_water_magnesium")
                + f.number("raw_water_sodium")
                - 2 * f.number("raw_water_sulphur")
                - f.number("raw_water_chloride")
                - f.number("raw_water_alkalinity");
        assertThat(f.number("feed_charge_difference")).isCloseTo(ofWater, NEAR);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void costIsGramsTimesPrice(long seed) {
        Figures f = FeedCases.figures(seed);
        double salts = 0;
        for (int i = 0; i < MOLAR_MASSES.length; i++) {
            double grams = f.number("salt_amount", SALTS.get(i)) * MOLAR_MASSES[i];
            assertThat(f.number("salt_rate", SALTS.get(i))).as(SALTS.get(i)).isCloseTo(grams, within(1e-8));
            salts += grams / 1000 * f.number(SALTS.get(i) + "_price");
        }
        double mix = f.number("micronutrient_rate") / 1000 * f.number("micronutrient_price");
        String acid = f.text("acid_choice");
        double litres = f.number("acid_volume", acid) / 1000;
        double acidCost = litres * f.number(acid + "_acid_price");
        assertThat(f.number("feed_salts_cost_per_volume")).isCloseTo(salts, NEAR);
        assertThat(f.number("feed_acid_cost_per_volume")).isCloseTo(acidCost, NEAR);
        assertThat(f.number("feed_cost_per_volume")).isCloseTo(salts + mix + acidCost, NEAR);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theAcidAsSoldHoldsTheProtonsThatTheAlkalinityTakes(long seed) {
        Figures f = FeedCases.figures(seed);
        double taken = Math.max(0, f.number("raw_water_alkalinity") - f.number("alkalinity_left"));
        Map.of("nitric", 63.012, "phosphoric", 97.994, "sulphuric", 98.072 / 2).forEach((acid, gramsAProton) -> {
            double grams = f.number("acid_volume", acid)
                    * f.number(acid + "_acid_density")
                    * f.number(acid + "_acid_strength");
            assertThat(grams / gramsAProton).as(acid).isCloseTo(taken, NEAR);
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void bothTanksTogetherHoldWhatTheirFeedCarries(long seed) {
        Figures f = FeedCases.figures(seed);
        double feed = f.number("stock_tank_volume") / 1000 * f.number("stock_dilution");
        double kilograms =
                SALTS.stream().mapToDouble(salt -> f.number("salt_rate", salt)).sum() / 1000 * feed;
        assertThat(f.number("stock_tank_a_salts") + f.number("stock_tank_b_salts"))
                .isCloseTo(kilograms, within(1e-12 * kilograms + 1e-12));
        assertThat(f.number("salt_concentration", "potassium_nitrate"))
                .isCloseTo(f.number("salt_rate", "potassium_nitrate") * f.number("stock_dilution") / 1000, NEAR);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aWarningStandsExactlyWhereAnIonMissesItsRecipe(long seed) {
        Figures f = FeedCases.figures(seed);
        double tolerance = f.number("recipe_tolerance") + 0.5e-6;
        BRINGS.keySet().forEach(ion -> {
            boolean surplus = f.number("ion_difference", ion) > tolerance;
            assertThat(f.text(ion + "_surplus").isEmpty()).as(ion).isNotEqualTo(surplus);
            if (surplus) {
                assertThat(f.text(ion + "_surplus")).startsWith("more " + ion + " than asked for");
            }
        });
        boolean isShort = f.number("ion_difference", "sulphur") < -tolerance;
        assertThat(f.text("sulphur_shortfall").isEmpty()).isNotEqualTo(isShort);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aRecipeOutOfBalanceIsWarnedOf(long seed) {
        Figures f = FeedCases.figures(seed);
        assertThat(f.text("recipe_balance_warning").isEmpty())
                .isNotEqualTo(isBeyond(f, f.number("recipe_cations"), f.number("recipe_anions")));
        assertThat(f.text("feed_balance_warning").isEmpty())
                .isNotEqualTo(isBeyond(f, f.number("feed_cations"), f.number("feed_anions")));
    }

    private static boolean isBeyond(Figures f, double cations, double anions) {
        double allowed = f.number("ion_balance_limit") * Math.max(cations, anions);
        return Math.abs(cations - anions) > allowed + 0.5e-6;
    }
}
