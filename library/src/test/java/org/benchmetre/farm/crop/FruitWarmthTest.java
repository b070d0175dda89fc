package org.benchmetre.farm.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.benchmetre.Plan;
import org.benchmetre.PlanBuilder;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.Months;
import org.benchmetre.workbook.Adjustments;
import org.benchmetre.workbook.LibreOfficeReferee;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fruit held against the warmth of the house, in plans that a reader can work out on paper. */
class FruitWarmthTest {

    private static final Offset<Double> NEAR = within(1e-9);

    /** A house of one kind of plant, as warm as outside: nothing is heated, no sun shines, and days do not differ. */
    private static PlanBuilder plan(double... means) {
        PlanBuilder plan = Sample.bare().entry("heating_use", "no").entry("temperature_spread", "0");
        for (int month = 0; month < means.length; month++) {
            String mean = Double.toString(means[month]);
            plan.row(
                    "months",
                    Months.KEYS.get(month),
                    Map.of("day_temperature", mean, "night_temperature", mean, "day_hours", "12"));
        }
        return plan;
    }

    private static double[] always(double mean) {
        double[] means = new double[12];
        Arrays.fill(means, mean);
        return means;
    }

    private static List<String> warnings(Plan plan) {
        return plan.budget().warnings().stream()
                .flatMap(line -> IntStream.range(0, line.size())
                        .mapToObj(cell -> plan.figures().text(line, cell)))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Le Miere et al. 1998: 891 day-degrees above 2.9 degC. Planted in the middle of January, 15.5 of its days count. */
    @ParameterizedTest
    @CsvSource({"15, Mar", "18, Mar", "25, Feb", "7, Aug", "2, never"})
    void firstFruitIsRipeOnceTheHeatSumIsReached(double mean, String month) throws ScenarioException {
        Plan plan = plan(always(mean)).entry("planting_month", "jan").build();
        Figures f = plan.figures();
        assertThat(f.number("crop_heat_sum", "crop")).isEqualTo(891);
        assertThat(f.text(plan.budget().line("crop_first_fruit"), 0)).isEqualTo(month);
        double since = Math.max(0, mean - 2.9) * (15.5 + 28.25);
        assertThat(f.number(plan.budget().line("crop_heat_left"), 1)).isCloseTo(891 - since, NEAR);
    }

    @Test
    void aCropPlantedInAutumnCountsOnOverTheTurnOfTheYear() throws ScenarioException {
        Plan plan = plan(always(8)).entry("planting_month", "oct").build();
        // 5.1 K for 15.5 + 30 + 31 + 31 + 28.25 + 31 days are 850 to the end of March, and April brings 153 more.
        assertThat(plan.figures().text(plan.budget().line("crop_first_fruit"), 0))
                .isEqualTo("Apr");
    }

    @Test
    void theStockSaysItsOwnHeatSum() throws ScenarioException {
        Plan plan = plan(always(15)).entry("planting_month", "jan").build();
        Figures f =
                Figures.of(Sample.with(plan.budget(), "stock_heat_sum[plug]=300 K d", "stock_heat_base[plug]=5 degC"));
        assertThat(f.number("crop_heat_sum", "crop")).isEqualTo(300);
        assertThat(f.text(plan.budget().line("crop_first_fruit"), 0)).isEqualTo("Feb");
    }

    @Test
    void anUnheatedHouseSaysThatItCannotHaveItsWinterFruit() {
        Figures f = Figures.of(Sample.with(Sample.troughHouse(), "heating_use=no"));
        assertThat(f.text("answer_warmth"))
                .startsWith("The house is not heated and cannot have its fruit of Nov, Dec, Jan, Feb")
                .contains(" °C then, and below 10 °C less fruit sets.")
                .endsWith("Some fruit is entered before plants can have it: see Calendar.");
        assertThat(f.text("cold_fruit_warning")).contains("Braak 1968", "house_regime");
        assertThat(f.text("frost_fruit_warning")).startsWith("Nights of Jan, Feb, Dec are below -1.1 °C inside");
        assertThat(f.text(f.budget().line("crop_early_warning"), 0))
                .startsWith(
                        "Fruit is entered for Oct, but plants set in Sep have none before Nov: they take 10 weeks, as entered.");
    }

    @Test
    void withoutWeeksEnteredTheHeatSumSaysWhenFruitIsRipe() throws ScenarioException {
        Plan plan = plan(always(15)).entry("planting_month", "sep").build();
        // 12.1 K for 15 + 31 + 30 days are 920 to the end of November.
        assertThat(plan.figures().text(plan.budget().line("crop_first_fruit"), 0))
                .isEqualTo("Nov");
        assertThat(plan.figures().text(plan.budget().line("crop_degree_days_told"), 0))
                .startsWith("891 degree-days above 2.9 °C (")
                .contains("Le Miere");
    }

    @Test
    void aHouseThatIsWarmEnoughSaysNothing() throws ScenarioException {
        Plan plan = plan(always(14)).entry("planting_month", "jul").build();
        assertThat(plan.text("answer_warmth")).isEmpty();
        assertThat(warnings(plan)).noneMatch(text -> text.contains("°C"));
    }

    @Test
    void nothingIsSaidWithoutAClimate() throws ScenarioException {
        Plan plan = plan().build();
        assertThat(plan.figures().text(plan.budget().line("crop_first_fruit"), 0))
                .isEqualTo("no climate");
        assertThat(plan.text("answer_warmth")).isEmpty();
        assertThat(plan.figures().text(plan.budget().line("crop_early_warning"), 0))
                .isEmpty();
        assertThat(plan.text("frost_fruit_warning")).isEmpty();
        assertThat(plan.figures().troubles()).isEmpty();
    }

    @Test
    void flowersThatOpenAboveTheLimitOfTheirTypeAreNamed() throws ScenarioException {
        double[] means = always(14);
        means[3] = 22;
        PlanBuilder plan = plan(means).entry("planting_month", "sep");
        Plan june = plan.build();
        assertThat(june.figures().text(june.budget().line("crop_warm_warning"), 0))
                .startsWith("Fruit of May follows a month that is warmer than 20 °C on the mean")
                .contains("Honeoye: Bradford, Hancock, Warner");
        Plan ever = plan.entry("plant_type", "everbearing").build();
        assertThat(ever.figures().text(ever.budget().line("crop_warm_warning"), 0))
                .isEmpty();
    }

    @Test
    void plantsThatStayFromAnotherCropNeedHeatFromFlowerToRipeFruit() throws ScenarioException {
        Plan plan = plan(always(12))
                .row("crops", "autumn", Map.of("planting_month", "aug", "clear_out_month", "dec"))
                .row(
                        "crops",
                        "spring",
                        Map.of("planting_month", "jan", "clear_out_month", "jun", "plants_of", "autumn"))
                .build();
        assertThat(plan.figures().number("crop_heat_sum", "autumn")).isEqualTo(891);
        assertThat(plan.figures().number("crop_heat_sum", "spring")).isEqualTo(600);
        // Twelve degrees a day: 186 in the half of January, 339 in February, so 75 are left for March.
        assertThat(plan.figures().text(plan.budget().line("crop_first_fruit"), 1))
                .isEqualTo("Mar");
    }

    private static PlanBuilder byHeat(double... means) {
        return plan(means).entry("fruit_months", "by_heat").entry("planting_month", "jan");
    }

    /** 600 degree-days from flower to ripe fruit; 891 above 2.9 degC before: at 15 degC 73.6 days, 1.1 of them from the end of March. */
    @Test
    void monthsOfFruitFollowFromWarmth() throws ScenarioException {
        Plan plan = byHeat(always(15)).entry("crop_weeks", "40").build();
        Figures f = plan.figures();
        double march = 15.5 + 28.25 + 31 - 891 / 12.1;
        assertThat(f.number("month_share", "apr") / f.number("month_share", "mar"))
                .isCloseTo(30 / march, within(1e-9));
        assertThat(f.number("month_share", "feb")).isZero();
        // Forty weeks from January are ten months: cleared in the middle of November.
        double days = march + 30 + 31 + 30 + 31 + 31 + 30 + 31 + 15;
        assertThat(f.number("crop_flushes_all", "crop")).isCloseTo(days * 15 / 600, NEAR);
        assertThat(f.number("month_share_sum")).isCloseTo(1, NEAR);
        assertThat(f.number("crop_warmth_factor", "crop")).isEqualTo(1);
    }

    /** Miura, Yoshida, Yamasaki 1994: 0.774 g at 19 degC against 0.879 g at 15 degC, which is 0.88. */
    @Test
    void warmthMakesFruitSmaller() throws ScenarioException {
        Plan cool = byHeat(always(15)).build();
        Plan warm = byHeat(always(19)).build();
        assertThat(warm.figures().number("crop_warmth_factor", "crop")).isCloseTo(1 - 0.03 * 4, NEAR);
        assertThat(1 - 0.03 * 4).isCloseTo(0.774 / 0.879, within(0.001));
        assertThat(warm.figures().number("yield_total") / cool.figures().number("yield_total"))
                .isCloseTo(0.88, NEAR);
    }

    @Test
    void noFruitRipensWhereItIsTooCold() throws ScenarioException {
        Plan plan = byHeat(always(6)).build();
        assertThat(plan.figures().number("yield_total")).isZero();
        assertThat(warnings(plan)).anyMatch(text -> text.startsWith("No fruit ripens in this crop"));
        assertThat(plan.figures().troubles()).isEmpty();
        assertThat(plan.disagreements()).isEmpty();
    }

    @Test
    void higherSetPointsTakeMoreHeatAndBringFruitEarlierAndSmaller() throws ScenarioException {
        double[] means = {2, 3, 7, 11, 15, 19, 21, 20, 16, 11, 6, 3};
        Budget house = Sample.with(byHeat(means).build().budget(), "planting_month=sep", "heating_use=yes");
        double heat = -1;
        double weight = 2;
        double early = -1;
        for (String regime : List.of("cool", "forced")) {
            Figures f = Figures.of(Sample.with(house, "house_regime=" + regime));
            assertThat(f.number("heat_energy_total")).isGreaterThan(heat);
            assertThat(f.number("crop_warmth_factor", "crop")).isLessThan(weight);
            assertThat(f.number("month_share", "nov") + f.number("month_share", "dec"))
                    .isGreaterThan(early);
            heat = f.number("heat_energy_total");
            weight = f.number("crop_warmth_factor", "crop");
            early = f.number("month_share", "nov") + f.number("month_share", "dec");
        }
    }

    @Test
    void setPointsMoveTooMuchForATableOfStepsWhereFruitFollowsFromWarmth() {
        PlanBuilder plan = byHeat(always(15)).entry("second_table_down", "set_point_shift");
        assertThatThrownBy(plan::build)
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("another word for second_table_down, since fruit_months is by_heat");
    }

    @Test
    void aSpreadsheetProgramAgreesOnFruitByWarmth(@TempDir Path folder) throws IOException, ScenarioException {
        LibreOfficeReferee.require();
        Plan plan = byHeat(2, 3, 7, 11, 15, 19, 21, 20, 16, 11, 6, 3).build();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        referee.book(plan.budget()).add(Map.of()).add(Adjustments.seeded(plan.budget(), 1));
        assertThat(referee.differences()).isEmpty();
    }
}
