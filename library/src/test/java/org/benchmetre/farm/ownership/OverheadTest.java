package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Management, office, land and a house charged by bench and week: sums that anyone can redo. */
class OverheadTest {

    /** A few operations on doubles of money. */
    private static final double NEAR = 1e-9;

    private static final double MANAGEMENT = 1000;
    private static final double OFFICE = 300;
    /** 0.5 a m² on 30 m by 8 m. */
    private static final double LAND = 0.5 * 240;
    /** 0.25 a metre and week on ten benches of 20 m, 40 weeks. */
    private static final double HOUSE = 0.25 * 200 * 40;

    private static Budget sample;

    @BeforeAll
    static void read() {
        sample = Sample.troughHouse();
    }

    private static Figures with(String... settings) {
        List<String> all = new ArrayList<>(List.of(
                "house_length=30 m",
                "house_width=8 m",
                "bench_count=10 bench",
                "bench_length=20 m",
                "management_cost=1000 money/a",
                "office_cost=300 money/a",
                "land_rent=0.5 money/(m2 a)",
                "bench_week_charge=0.25 money/(m wk)",
                "bench_weeks_charged=40 wk/a",
                "house_charge_by=bench_week"));
        all.addAll(List.of(settings));
        return Figures.of(Sample.with(sample, all.toArray(String[]::new)));
    }

    @Test
    void overhead_is_management_office_land_and_the_house_by_bench_and_week() {
        Figures f = with();
        assertThat(f.number("land_cost")).isCloseTo(LAND, within(NEAR));
        assertThat(f.number("house_charge")).isCloseTo(HOUSE, within(NEAR));
        assertThat(f.number("overhead_total")).isCloseTo(MANAGEMENT + OFFICE + LAND + HOUSE, within(NEAR));
        assertThat(f.number("budget_overhead")).isCloseTo(MANAGEMENT + OFFICE + LAND + HOUSE, within(NEAR));
    }

    @Test
    void a_sum_for_land_vehicles_and_licences_are_overhead_and_cash_but_for_land_of_ones_own() {
        Figures f = with("land_sum=400 money/a", "vehicles_cost=900 money/a", "licences_cost=120 money/a");
        assertThat(f.number("land_cost")).isCloseTo(LAND + 400, within(NEAR));
        assertThat(f.number("overhead_total"))
                .isCloseTo(MANAGEMENT + OFFICE + LAND + HOUSE + 400 + 900 + 120, within(NEAR));
        assertThat(f.number("overhead_cash")).isCloseTo(OFFICE + 900 + 120, within(NEAR));
        assertThat(f.number("budget_value", "vehicles")).isEqualTo(900);
        assertThat(f.number("budget_value", "licences")).isEqualTo(120);
        assertThat(with("land_sum=400 money/a", "land_of=rented").number("overhead_cash"))
                .isCloseTo(OFFICE + LAND + 400, within(NEAR));
    }

    @Test
    void a_house_charged_by_its_parts_is_not_charged_by_the_week_too() {
        Figures f = with("house_charge_by=parts");
        assertThat(f.number("house_charge")).isZero();
        assertThat(f.number("overhead_total")).isCloseTo(MANAGEMENT + OFFICE + LAND, within(NEAR));
    }

    @ParameterizedTest
    @CsvSource({
        "own,own,own,0,0,0",
        "hired,own,own,1,0,0",
        "own,rented,own,0,1,0",
        "own,own,rented,0,0,1",
        "hired,rented,rented,1,1,1"
    })
    void what_is_ones_own_costs_no_cash(
            String manager, String land, String house, double management, double rent, double charge) {
        Figures f = with("management_by=" + manager, "land_of=" + land, "house_of=" + house);
        assertThat(f.number("overhead_cash"))
                .isCloseTo(OFFICE + management * MANAGEMENT + rent * LAND + charge * HOUSE, within(NEAR));
        assertThat(f.number("overhead_total")).isCloseTo(MANAGEMENT + OFFICE + LAND + HOUSE, within(NEAR));
    }

    @Test
    void a_house_charged_twice_or_for_nothing_is_warned_of() {
        assertThat(with().text("house_charge_warning")).isEmpty();
        assertThat(with("house_charge_by=parts", "bench_week_charge=0 money/(m wk)")
                        .text("house_charge_warning"))
                .isEmpty();
        assertThat(with("bench_week_charge=0 money/(m wk)").text("house_charge_warning"))
                .startsWith("The house is charged by bench and week");
        assertThat(with("material_driver[pump]=house_area").text("house_charge_warning"))
                .startsWith("The house is charged by bench and week");
        assertThat(with("house_charge_by=parts", "material_driver[pump]=house_area")
                        .text("house_charge_warning"))
                .isEmpty();
    }
}
