package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;
import org.benchmetre.PlanBuilder;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.scenario.Remark;
import org.junit.jupiter.api.Test;

/** Several crops in a year: plants that stay, plants that come back, months, fruit and work of each. */
class CropsOfAYearTest {

    /** Sums of a dozen terms. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    /** Ten benches of 10 m, plants 0.2 m apart, no margin: 51 on a bench. */
    private static final double PLANTS = 510;

    private static final Map<String, String> AUTUMN = Map.of(
            "stock",
            "tray",
            "planting_month",
            "aug",
            "clear_out_month",
            "jan",
            "yield_per_plant",
            "400",
            "oct",
            "0.5",
            "nov",
            "0.3",
            "dec",
            "0.2");
    private static final Map<String, String> SPRING = Map.of(
            "stock",
            "tray",
            "planting_month",
            "jan",
            "clear_out_month",
            "jun",
            "yield_per_plant",
            "800",
            "plants_of",
            "autumn",
            "apr",
            "0.4",
            "may",
            "0.6");

    private static PlanBuilder plan(String life) {
        return Benchmetre.plan("strawberry")
                .entry("bench_count", "10")
                .entry("bench_length", "10 m")
                .entry("end_margin", "0 m")
                .entry("plant_spacing", "20 cm")
                .entry("house_length", "12 m")
                .entry("house_width", "10 m")
                .entry("marketable_share", "0.9")
                .entry("recovery_rate", "5 % real/a")
                .row(
                        "materials",
                        "trough",
                        Map.of("driver", "bench_metres", "rate", "1", "price", "5", "price_year", "2026"))
                .row(
                        "materials",
                        "tape",
                        Map.of("driver", "line_metres", "rate", "1", "price", "0.2", "price_year", "2026"))
                .row("irrigation", "tape", Map.of("lines", "2", "outlet_spacing", "0.2"))
                .row(
                        "plant_stock",
                        "tray",
                        Map.of("price", "0.5", "price_year", "2026", "life", life, "life_unit", "crop"))
                .row(
                        "tasks",
                        "setting",
                        Map.of(
                                "driver",
                                "plant_count",
                                "hours",
                                "0.01",
                                "times_unit",
                                "planting",
                                "pattern",
                                "planting"))
                .row(
                        "tasks",
                        "clearing",
                        Map.of(
                                "driver",
                                "bench_metres",
                                "hours",
                                "0.1",
                                "times_unit",
                                "planting",
                                "pattern",
                                "clear_out"))
                .row("tasks", "care", Map.of("driver", "plant_count", "hours", "0.02", "times_unit", "crop"));
    }

    private static Figures figures(PlanBuilder builder) throws ScenarioException {
        Figures f = builder.build().figures();
        assertThat(f.troubles()).isEmpty();
        return f;
    }

    @Test
    void plantsThatStayAreBoughtSetAndClearedOnce() throws ScenarioException {
        Figures f = figures(plan("2").row("crops", "autumn", AUTUMN).row("crops", "spring", SPRING));
        assertThat(f.number("crop_plants_bought", "autumn")).isCloseTo(PLANTS, ROUNDING);
        assertThat(f.number("plants_first_cost")).isCloseTo(PLANTS * 0.5, ROUNDING);
        assertThat(f.number("stock_life_years", "tray")).isEqualTo(1);
        assertThat(f.number("crops_in_year")).isEqualTo(2);
        assertThat(f.number("task_hours", "setting")).isCloseTo(PLANTS * 0.01, ROUNDING);
        assertThat(f.number("task_hours", "clearing")).isCloseTo(100 * 0.1, ROUNDING);
        assertThat(f.number("task_hours", "care")).isCloseTo(2 * PLANTS * 0.02, ROUNDING);
        assertThat(f.number("task_share_in_month", "setting", "aug")).isEqualTo(1);
        assertThat(f.number("task_share_in_month", "clearing", "jun")).isEqualTo(1);
    }

    @Test
    void eachCropBringsItsFruitInItsMonths() throws ScenarioException {
        Figures f = figures(plan("2").row("crops", "autumn", AUTUMN).row("crops", "spring", SPRING));
        double autumn = PLANTS * 0.4 * 0.9;
        double spring = PLANTS * 0.8 * 0.9;
        assertThat(f.number("yield_total")).isCloseTo(autumn + spring, ROUNDING);
        assertThat(f.number("month_yield", "oct")).isCloseTo(0.5 * autumn, ROUNDING);
        assertThat(f.number("month_yield", "may")).isCloseTo(0.6 * spring, ROUNDING);
        assertThat(f.number("grams_planned")).isCloseTo(600, ROUNDING);
    }

    /** Planted and cleared in the middle of a month; January is half of either crop. */
    @Test
    void benchesAreInCropFromPlantingToClearing() throws ScenarioException {
        Figures f = figures(plan("2").row("crops", "autumn", AUTUMN).row("crops", "spring", SPRING));
        assertThat(f.number("month_crop_share", "jan")).isEqualTo(1);
        assertThat(f.number("month_crop_share", "jun")).isEqualTo(0.5);
        assertThat(f.number("month_crop_share", "jul")).isZero();
        assertThat(f.number("month_crop_share", "aug")).isEqualTo(0.5);
        assertThat(f.number("month_water_need", "jul")).isZero();
    }

    @Test
    void newPlantsForEachCropAreBoughtTwice() throws ScenarioException {
        Map<String, String> spring =
                Map.of("planting_month", "feb", "clear_out_month", "jul", "yield_per_plant", "500");
        Figures f = figures(plan("1").row("crops", "autumn", AUTUMN).row("crops", "spring", spring));
        assertThat(f.number("crop_plants_bought", "autumn") + f.number("crop_plants_bought", "spring"))
                .isCloseTo(2 * PLANTS, ROUNDING);
        assertThat(f.number("stock_life_years", "tray")).isEqualTo(1);
        assertThat(f.number("task_hours", "setting")).isCloseTo(2 * PLANTS * 0.01, ROUNDING);
        assertThat(f.number("task_share_in_month", "setting", "feb")).isEqualTo(0.5);
        assertThat(f.number("budget_month_plants", "aug")).isCloseTo(f.number("budget_month_plants", "feb"), ROUNDING);
        assertThat(f.number("budget_month_plants", "aug")).isCloseTo(PLANTS * 0.5, ROUNDING);
    }

    /** One crop a year on plants of two years: half of the benches is planted anew each year, and the second crop is 0.8 of the first. */
    @Test
    void plantsKeptForTwoYearsYieldByAge() throws ScenarioException {
        Map<String, String> kept =
                Map.of("price", "0.5", "price_year", "2026", "life", "2", "life_unit", "crop", "yield_crop_2", "0.8");
        Figures f = figures(plan("1")
                .entry("yield_per_plant", "700")
                .row("plant_stock", "kept", kept)
                .entry("stock_choice", "kept"));
        assertThat(f.number("stock_life_years", "kept")).isEqualTo(2);
        assertThat(f.number("yield_total")).isCloseTo(PLANTS * 0.7 * 0.9 * (1 + 0.8) / 2, ROUNDING);
        assertThat(f.number("crop_plants_bought", "crop")).isCloseTo(PLANTS, ROUNDING);
        assertThat(f.number("task_hours", "setting")).isCloseTo(PLANTS * 0.01 / 2, ROUNDING);
        assertThat(f.number("plants_used_up")).isZero();
        double factor = 0.05 / (1 - Math.pow(1.05, -2));
        assertThat(f.number("plants_recovery")).isCloseTo(PLANTS * 0.5 * factor, ROUNDING);
    }

    @Test
    void cropsSideBySideTakeTheirShareOfTheBenches() throws ScenarioException {
        Map<String, String> one = Map.of(
                "planting_month", "sep", "clear_out_month", "may", "bench_share", "0.25", "yield_per_plant", "600");
        Map<String, String> other = Map.of(
                "plant_type",
                "everbearing",
                "planting_month",
                "mar",
                "clear_out_month",
                "oct",
                "bench_share",
                "0.75",
                "yield_per_plant",
                "900");
        Figures f = figures(plan("1").row("crops", "winter", one).row("crops", "summer", other));
        assertThat(f.number("yield_total")).isCloseTo(PLANTS * 0.9 * (0.25 * 0.6 + 0.75 * 0.9), ROUNDING);
        assertThat(f.number("month_crop_share", "apr")).isEqualTo(1);
        assertThat(f.number("month_crop_share", "dec")).isEqualTo(0.25);
        assertThat(f.number("crops_in_year")).isEqualTo(1);
        assertThat(f.number("crop_grams_least", "summer")).isEqualTo(227);
    }

    @Test
    void aScenarioThatListsOneCropIsThatOfFarmCsv() throws ScenarioException {
        Map<String, String> same = Map.of("clear_out_month", "jun");
        Figures listed = figures(plan("1").row("crops", "only", same));
        Figures told = figures(plan("1"));
        for (String id : List.of(
                "yield_total", "receipts_total", "plants_first_cost", "first_cost_total", "plants_yearly_cost")) {
            assertThat(listed.number(id)).as(id).isCloseTo(told.number(id), within(1e-9 * told.number(id)));
        }
    }

    @Test
    void whatCannotBeIsSaid() throws ScenarioException {
        assertThat(warnings(plan("2").row("crops", "autumn", AUTUMN).row("crops", "spring", SPRING)))
                .doesNotContain("These plants stay", "does not stand", "more benches");
        assertThat(warnings(plan("1").row("crops", "autumn", AUTUMN).row("crops", "spring", SPRING)))
                .contains("These plants stay for more crops than they live");
        Map<String, String> early =
                Map.of("planting_month", "nov", "clear_out_month", "jun", "oct", "0.5", "nov", "0.5");
        assertThat(warnings(plan("1").row("crops", "late", early)))
                .contains("a month in which the crop does not stand");
        Map<String, String> whole = Map.of("planting_month", "aug", "clear_out_month", "may");
        assertThat(warnings(plan("1").row("crops", "a", whole).row("crops", "b", whole)))
                .contains("Crops stand on more benches than there are");
    }

    private static String warnings(PlanBuilder builder) throws ScenarioException {
        Plan plan = builder.build();
        return plan.warnings().stream().map(Remark::message).collect(Collectors.joining(" "));
    }

    @Test
    void whatIsNoCropIsRefused() {
        assertRefused(Map.of("clear_out_month", "Juneish"), "clear_out_month");
        assertRefused(Map.of("clear_out_month", "jun", "stock", "nobody"), "nobody");
        assertRefused(Map.of("clear_out_month", "jun", "bench_share", "1.5"), "bench_share");
        assertRefused(Map.of("clear_out_month", "jun", "mar", "0.5", "apr", "0.4"), "add up to 1");
        assertRefused(Map.of("clear_out_month", "jun", "plants_of", "another"), "another");
        assertRefused(Map.of("clear_out_month", "jun", "plants_of", "only"), "a crop that is planted");
    }

    private static void assertRefused(Map<String, String> crop, String found) {
        assertThatThrownBy(() -> plan("1").row("crops", "only", crop).build())
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining(found);
    }
}
