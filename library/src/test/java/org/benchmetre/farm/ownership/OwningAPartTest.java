package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a single pump of 1,000 costs in a year, by the arithmetic of the American Agricultural Economics Association, Commodity Costs
 * and Returns Estimation Handbook, 2000: capital recovery or straight line with interest on average value, insurance and property tax
 * on average value.
 */
class OwningAPartTest {

    /** A few operations on doubles of money. */
    private static final double NEAR = 1e-9;

    private static Budget sample;

    @BeforeAll
    static void read() {
        sample = Sample.troughHouse();
    }

    private static Figures pump(String... settings) {
        List<String> all = new ArrayList<>(List.of(
                "material_price[pump]=1000 money/pack",
                "material_salvage[pump]=200 money/pack",
                "material_freight[pump]=0 1",
                "material_sales_tax[pump]=0 1",
                "material_repairs[pump]=0.03 1/a",
                "material_life[pump]=4 1",
                "material_life_unit[pump]=a",
                "material_install_hours[pump]=3 h/item",
                "material_remove_hours[pump]=1 h/item",
                "install_wage=20 money/h",
                "recovery_rate=0.1 real/a",
                "insurance_rate=0.01 1/a",
                "property_tax_rate=0.02 1/a"));
        all.addAll(List.of(settings));
        return Figures.of(Sample.with(sample, all.toArray(String[]::new)));
    }

    private static void has(Figures f, String line, double expected) {
        assertThat(f.number(line, "pump")).as(line).isCloseTo(expected, within(NEAR));
    }

    /** 0.1 / (1 - 1.1^-4) = 0.1 x 1.4641 / 0.4641. */
    private static final double FACTOR = 0.14641 / 0.4641;

    @Test
    void recovery_brings_back_cost_less_salvage_and_pays_interest_on_salvage() {
        Figures f = pump();
        has(f, "material_unit_recovery", 800 * FACTOR + 200 * 0.1);
        has(f, "material_recovery_yearly", 800 * FACTOR + 200 * 0.1);
    }

    @Test
    void straight_line_adds_interest_on_average_value() {
        has(pump("recovery_method=straight_line"), "material_unit_recovery", 800 / 4.0 + 600 * 0.1);
    }

    @Test
    void repairs_are_a_share_of_cost() {
        Figures f = pump();
        has(f, "material_unit_repairs", 30);
        double others = f.number("parts_repairs_total")
                - pump("material_rate[pump]=0 item/driver").number("parts_repairs_total");
        assertThat(others).isCloseTo(30, within(NEAR));
    }

    @Test
    void insurance_and_property_tax_are_shares_of_average_value() {
        has(pump(), "material_driver_charges", 600 * 0.03);
    }

    @Test
    void taking_out_is_paid_at_the_end_of_the_life() {
        has(pump(), "material_driver_hours", ((60 + 20) * FACTOR - 20 * 0.1) / 20);
        has(
                pump("recovery_method=straight_line"),
                "material_driver_hours",
                ((60 + 20) / 4.0 + (60 - 20) / 2.0 * 0.1) / 20);
    }

    @Test
    void two_pumps_in_packs_of_two_cost_as_a_unit_each() {
        Figures f = pump("material_rate[pump]=2 item/driver", "material_pack[pump]=2 item/pack");
        has(f, "material_unit_salvage", 100);
        has(f, "material_unit_recovery", 400 * FACTOR + 100 * 0.1);
        has(f, "material_recovery_yearly", 800 * FACTOR + 200 * 0.1);
        has(f, "material_unit_repairs", 15);
        has(f, "material_driver_charges", 600 * 0.03);
        has(f, "material_driver_hours", 2 * ((60 + 20) * FACTOR - 20 * 0.1) / 20);
    }

    @ParameterizedTest
    @CsvSource({"3,crop,2,1.5", "3,crop,1,3", "3,a,2,3"})
    void a_life_in_crops_counts_crops_a_year(double life, String unit, double crops, double years) {
        has(
                pump(
                        "material_life[pump]=" + life + " 1",
                        "material_life_unit[pump]=" + unit,
                        "crops_per_year=" + crops + " crop/a"),
                "material_life_years",
                years);
    }

    @Test
    void an_empty_row_has_a_life_of_a_year_so_that_nothing_is_divided_by_none() {
        assertThat(pump().number("material_life_years", "spare_1")).isEqualTo(1);
    }

    @Test
    void every_way_to_water_carries_the_pump() {
        Figures without = pump("material_rate[pump]=0 item/driver");
        Figures with = pump();
        for (String way : List.of("emitter", "tape", "dripline")) {
            assertThat(with.number("way_charges_yearly", way) - without.number("way_charges_yearly", way))
                    .isCloseTo(18, within(NEAR));
            assertThat(with.number("way_labour_yearly", way) - without.number("way_labour_yearly", way))
                    .isCloseTo((60 + 20) * FACTOR - 20 * 0.1, within(NEAR));
            assertThat(ofWay(with, way) - ofWay(without, way)).isCloseTo(800 * FACTOR + 200 * 0.1 + 30, within(NEAR));
        }
    }

    private static double ofWay(Figures f, String way) {
        Line parts = f.budget().line("material_way_yearly_cost");
        return IntStream.range(0, parts.size())
                .filter(cell -> parts.axes().stream()
                        .anyMatch(axis ->
                                axis.keys().get(parts.positionOf(cell).on(axis)).equals(way)))
                .mapToDouble(cell -> f.number(parts, cell))
                .sum();
    }

    @Test
    void plants_recover_over_their_life() {
        Figures f = pump("stock_life[tray_plant]=2 1", "stock_life_unit[tray_plant]=a", "stock_choice=tray_plant");
        double first = f.number("plants_first_cost");
        assertThat(first).isPositive();
        assertThat(f.number("crop_plants_life", "crop")).isEqualTo(2);
        assertThat(f.number("plants_yearly_cost")).isCloseTo(first * 0.121 / 0.21, within(NEAR * first));
    }
}
