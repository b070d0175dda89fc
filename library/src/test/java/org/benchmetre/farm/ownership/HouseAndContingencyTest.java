package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Near;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The house by area and contingency: sums that anyone can redo, each counted once. */
class HouseAndContingencyTest {

    /** A few operations on doubles of money. */
    private static final double NEAR = 1e-8;

    private static final int SEEDS = 500;
    private static final double FLOOR = 24 * 9.6;

    private static final Budget SAMPLE = Sample.troughHouseWithRoom(12);

    private static Figures with(String... settings) {
        return Figures.of(Sample.with(SAMPLE, settings));
    }

    @Test
    void a_house_by_area_adds_its_cost_and_what_recovers_it() {
        Figures without = Figures.of(SAMPLE);
        Figures f = with("house_cost_per_area=50 money/m2", "house_life=20 a", "recovery_rate=0.05 real/a");
        double cost = 50 * FLOOR;
        double recovered = cost * 0.05 / (1 - Math.pow(1.05, -20));
        double charged = cost / 2 * (0.0075 + 0.01);
        assertThat(f.number("house_by_area_cost")).isCloseTo(cost, within(NEAR));
        assertThat(f.number("house_by_area_recovery")).isCloseTo(recovered, within(NEAR));
        assertThat(f.number("house_by_area_charges")).isCloseTo(charged, within(NEAR));
        assertMore(f, without, "first_cost_total", cost);
        assertMore(f, without, "startup_cash", cost);
        assertMore(f, without, "charges_cash", charged);
        assertMore(f, without, "yearly_cost_total", recovered + charged);
        assertMore(f, without, "ownership_cost_total", recovered + charged);
        assertThat(f.number("group_first_cost", "house_by_area")).isCloseTo(cost, within(NEAR));
        assertThat(f.number("group_yearly_cost", "house_by_area")).isCloseTo(recovered, within(NEAR));
        assertThat(f.number("budget_value", "own_house_by_area")).isCloseTo(recovered, within(NEAR));
        assertThat(f.number("budget_quantity", "own_house_by_area")).isCloseTo(FLOOR, within(NEAR));
    }

    @Test
    void contingency_is_a_share_of_the_parts_and_recovers_as_they_do() {
        Figures without = Figures.of(SAMPLE);
        Figures f = with("contingency_share=0.1 1");
        double recovered = 0;
        for (int part = 0; part < SAMPLE.line("material_recovery_yearly").size(); part++) {
            recovered += 0.1
                    * (f.number(SAMPLE.line("material_recovery_yearly"), part)
                            + f.number(SAMPLE.line("material_used_up_yearly"), part));
        }
        double cost = 0.1 * f.number("exact_cost");
        assertMore(f, without, "first_cost_total", cost);
        assertThat(f.number("startup_cash") - without.number("startup_cash"))
                .as("rounded up to a cent")
                .isBetween(cost - NEAR, cost + 0.01 + NEAR);
        assertMore(f, without, "yearly_cost_total", recovered);
        assertMore(f, without, "ownership_cost_total", recovered);
        assertThat(f.number("group_first_cost", "contingency_on_parts")).isCloseTo(cost, within(NEAR));
        assertThat(f.number("budget_value", "own_contingency")).isCloseTo(recovered, within(NEAR));
    }

    private static void assertMore(Figures f, Figures without, String id, double more) {
        assertThat(f.number(id) - without.number(id)).as(id).isCloseTo(more, within(NEAR));
        assertThat(more).isPositive();
    }

    @Test
    void a_house_does_not_decide_between_ways_to_water() {
        Figures without = Figures.of(SAMPLE);
        Figures f = with("house_cost_per_area=50 money/m2");
        for (String way : new String[] {"tape", "dripline"}) {
            double before = without.number("way_yearly_cost", way) - without.number("way_yearly_cost", "emitter");
            double after = f.number("way_yearly_cost", way) - f.number("way_yearly_cost", "emitter");
            assertThat(after).as(way).isCloseTo(before, within(NEAR));
        }
    }

    @Test
    void contingency_follows_the_parts_of_each_way() {
        Figures without = Figures.of(SAMPLE);
        Figures f = with("contingency_share=0.1 1");
        for (String way : new String[] {"emitter", "tape", "dripline"}) {
            Figures chosen = with("contingency_share=0.1 1", "irrigation_choice=" + way);
            double more = f.number("way_yearly_cost", way) - without.number("way_yearly_cost", way);
            assertThat(more).as(way).isCloseTo(chosen.number("contingency_recovery"), within(NEAR));
            assertThat(f.number("way_first_cost", way) - without.number("way_first_cost", way))
                    .as(way)
                    .isCloseTo(chosen.number("contingency_cost"), within(NEAR));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "material_driver[pump]=house_area, house_charge_by=parts",
        "material_block[pump]=house, house_charge_by=parts",
        "bench_week_charge=0.3 money/(m wk), house_charge_by=bench_week"
    })
    void a_house_counted_otherwise_is_not_counted_by_area(String first, String second) {
        Figures f = with("house_cost_per_area=50 money/m2", first, second);
        assertThat(f.number("house_by_area_cost")).isZero();
        assertThat(f.number("house_by_area_recovery")).isZero();
        assertThat(f.number("house_by_area_charges")).isZero();
        assertThat(f.text("house_by_area_warning"))
                .startsWith("The house is counted by its parts or by bench and week");
        assertThat(with(first, second).text("house_by_area_warning")).isEmpty();
        assertThat(with("house_cost_per_area=50 money/m2").text("house_by_area_warning"))
                .isEmpty();
    }

    @Test
    void a_house_is_built_again_when_its_life_ends_and_leaves_what_a_sale_brings() {
        String[] plan = {"plan_years=12 a", "house_life=8 a", "house_resale=0.7 1"};
        Figures without = with(plan);
        Figures f = with(plan[0], plan[1], plan[2], "house_cost_per_area=50 money/m2");
        double cost = 50 * FLOOR;
        double again = f.number("cash_replacements", "8") - without.number("cash_replacements", "8");
        assertThat(again).isCloseTo(cost, within(NEAR));
        assertThat(f.number("cash_replacements", "7"))
                .isCloseTo(without.number("cash_replacements", "7"), within(NEAR));
        assertMore(f, without, "residual_value", 0.7 * cost * 4 / 8);
    }

    static Stream<SeededBlocks> seeded() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse())
                .map(sample -> new SeededBlocks(
                        sample,
                        SEEDS,
                        List.of(
                                "house_charge",
                                "house_by_area_cost",
                                "house_by_area_recovery",
                                "contingency_cost",
                                "contingency_recovery",
                                "exact_cost",
                                "material_recovery_yearly",
                                "material_used_up_yearly")));
    }

    @ParameterizedTest
    @MethodSource("seeded")
    void the_house_is_charged_once_and_contingency_keeps_pace_with_parts(SeededBlocks all) {
        int byArea = 0;
        for (int seed = 1; seed < all.cases(); seed++) {
            String at = "case " + seed;
            double cost = all.of("house_by_area_cost", seed);
            assertThat(cost == 0 || all.of("house_charge", seed) == 0).as(at).isTrue();
            assertThat(cost > 0 || all.of("house_charge", seed) > 0).as(at).isTrue();
            byArea += cost > 0 ? 1 : 0;
            double share = all.of("contingency_cost", seed) / all.of("exact_cost", seed);
            Near.near(share, all.input("contingency_share", seed), share, at);
            double recovered =
                    share * (all.sum("material_recovery_yearly", seed) + all.sum("material_used_up_yearly", seed));
            Near.near(all.of("contingency_recovery", seed), recovered, recovered, at);
        }
        assertThat(byArea).isBetween(SEEDS / 4, 3 * SEEDS / 4);
    }
}
