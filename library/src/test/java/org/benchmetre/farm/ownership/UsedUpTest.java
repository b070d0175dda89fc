package org.benchmetre.farm.ownership;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Near;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What lives a year or less is an operating input with interest on operating capital, what lives longer is recovered; a life that is
 * typed over moves a part, its labour and its interest from one family to the other.
 */
class UsedUpTest {

    /** A few dozen operations on doubles of money. */
    private static final double NEAR = 1e-9;

    private static final int SEEDS = 300;

    /** A tank of 100 at no freight, laid in 2 hours and taken out in 1 at 20 an hour, 4 for disposal; nothing else has a rate. */
    private static final String[] TANK = {
        "material_rate[stock_tank]=1 item/driver",
        "material_price[stock_tank]=100 money/pack",
        "material_salvage[stock_tank]=-4 money/pack",
        "material_freight[stock_tank]=0 1",
        "material_sales_tax[stock_tank]=0 1",
        "material_repairs[stock_tank]=0 1/a",
        "material_life_unit[stock_tank]=a",
        "material_install_hours[stock_tank]=2 h/item",
        "material_remove_hours[stock_tank]=1 h/item",
        "install_wage=20 money/h",
        "recovery_rate=0.1 real/a",
        "insurance_rate=0.01 1/a",
        "property_tax_rate=0.02 1/a",
        "operating_rate=0.06 real/a",
        "operating_outstanding=0.5 1",
        "operating_months=8 mo",
        "operating_financed=1 1"
    };

    /** 0.5 x 0.06 x 8 / 12. */
    private static final double INTEREST = 0.02;

    private static final Budget SAMPLE = Sample.with(Sample.troughHouse(), TANK);
    private static final Figures WITHOUT = Figures.of(Sample.with(SAMPLE, "material_rate[stock_tank]=0 item/driver"));

    private static Figures life(double life) {
        return Figures.of(Sample.with(SAMPLE, "material_life[stock_tank]=" + life + " 1"));
    }

    private static void more(Figures f, String line, double expected) {
        assertThat(f.number(line) - WITHOUT.number(line)).as(line).isCloseTo(expected, within(NEAR));
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "0.5, 2", "0.25, 4"})
    void what_lives_a_year_or_less_is_bought_as_often_as_it_is_used_up_and_carries_interest(double life, double times) {
        Figures f = life(life);
        double expense = times * (100 + 4 + (2 + 1) * 20);
        more(f, "parts_used_up_total", times * 104);
        more(f, "parts_used_up_labour", times * 60);
        more(f, "operating_interest", expense * INTEREST);
        more(f, "operating_cost_total", expense * (1 + INTEREST));
        more(f, "ownership_cost_total", 0);
        more(f, "yearly_cost_total", expense * (1 + INTEREST));
        more(f, "used_up_cash", expense);
        more(f, "first_cost_total", 100 + 2 * 20);
        assertThat(f.number("budget_value", "used_up_water_supply")).isCloseTo(times * 104, within(NEAR));
        assertThat(f.number("budget_cash", "used_up_water_supply")).isCloseTo(times * 104, within(NEAR));
    }

    /** Two years at 10 %: 0.1 / (1 - 1 / 1.21) = 0.121 / 0.21 of cost a year, and insurance and property tax on average value. */
    @Test
    void what_lives_longer_is_recovered_and_carries_no_operating_interest() {
        Figures f = life(2);
        double recovery = 0.121 / 0.21;
        double ofSalvage = 0.1 / 0.21;
        double yearly = 100 * recovery + 4 * ofSalvage + 20 * (2 * recovery + ofSalvage) + (100 - 4) / 2.0 * 0.03;
        more(f, "parts_used_up_total", 0);
        more(f, "parts_used_up_labour", 0);
        more(f, "operating_cost_total", 0);
        more(f, "ownership_cost_total", yearly);
        more(f, "yearly_cost_total", yearly);
        more(f, "used_up_cash", 0);
        more(f, "first_cost_total", 100 + 2 * 20);
        assertThat(f.number("budget_value", "used_up_water_supply")).isZero();
    }

    @Test
    void every_irrigation_system_carries_what_it_uses_up() {
        for (String way : List.of("emitter", "tape", "dripline")) {
            double used = life(0.5).number("way_yearly_cost", way) - WITHOUT.number("way_yearly_cost", way);
            assertThat(used).as(way).isCloseTo(2 * 164 * (1 + INTEREST), within(NEAR));
        }
    }

    /** Tape of one crop of two a year is an operating input of the system that has it, and of no other. */
    @Test
    void tape_of_one_crop_is_an_operating_input_of_its_own_system() {
        Budget twoCrops = Sample.with(SAMPLE, "crops_per_year=2 crop/a", "material_life[tape]=2 1");
        Budget oneCrop = Sample.with(twoCrops, "crops_per_year=1 crop/a", "material_life[tape]=1 1");
        Budget lasting = Sample.with(twoCrops, "crops_per_year=1 crop/a", "material_life[tape]=2 1");
        Figures f = Figures.of(oneCrop);
        Figures chosen = Figures.of(Sample.with(oneCrop, "irrigation_choice=tape"));
        assertThat(Figures.of(twoCrops).number("material_used_up", "tape")).isEqualTo(1);
        assertThat(Figures.of(lasting).number("material_used_up", "tape")).isZero();
        double tape = f.number("way_used_up_yearly", "tape") - f.number("way_used_up_yearly", "emitter");
        assertThat(tape).isPositive();
        assertThat(f.number("way_used_up_yearly", "dripline"))
                .isCloseTo(f.number("way_used_up_yearly", "emitter"), within(NEAR));
        assertThat(chosen.number("parts_used_up_total"))
                .isCloseTo(f.number("way_used_up_yearly", "tape"), within(NEAR));
        assertThat(chosen.number("budget_value", "used_up_irrigation_line")).isCloseTo(tape, within(NEAR));
        assertThat(chosen.number("yearly_cost_total"))
                .isCloseTo(f.number("way_yearly_cost_before_losses", "tape"), within(1e-8));
        assertThat(f.number("way_differing_cost_per_metre", "tape")
                        - f.number("way_differing_cost_per_metre", "emitter"))
                .as("the causes of the difference")
                .isCloseTo(
                        f.number("way_yearly_cost_per_metre", "tape")
                                - f.number("way_yearly_cost_per_metre", "emitter"),
                        within(1e-8));
    }

    @ParameterizedTest
    @CsvSource({"1, crop, 1, true", "2, crop, 2, true", "1, crop, 0.5, false", "2, crop, 1, false", "2, a, 2, false"})
    void plants_are_used_up_within_a_year_or_recovered(double life, String unit, double crops, boolean used) {
        Figures f = Figures.of(Sample.with(
                SAMPLE,
                "stock_life[tray_plant]=" + life + " 1",
                "stock_life_unit[tray_plant]=" + unit,
                "crops_per_year=" + crops + " crop/a"));
        double first = f.number("plants_first_cost");
        assertThat(f.number("plants_used_up")).isCloseTo(used ? first : 0, within(NEAR * first));
        assertThat(f.number("plants_recovery")).isCloseTo(used ? 0 : first * 0.121 / 0.21, within(NEAR * first));
        assertThat(f.number("budget_value", "plants")).isEqualTo(f.number("plants_used_up"));
        assertThat(f.number("budget_value", "own_plants")).isEqualTo(f.number("plants_recovery"));
        assertThat(f.number("budget_cash", "own_plants")).isZero();
        assertThat(f.number("plants_yearly_cost")).isCloseTo(f.number("stock_yearly_cost", "tray_plant"), within(NEAR));
    }

    static List<SeededBlocks> seeded() {
        return List.of(blocks(Sample.troughHouse()), blocks(Sample.containerHouse()));
    }

    private static SeededBlocks blocks(Budget sample) {
        return new SeededBlocks(
                sample,
                SEEDS,
                List.of(
                        "material_life_years",
                        "material_recovery_yearly",
                        "material_used_up_yearly",
                        "material_quantity",
                        "parts_recovery_total",
                        "parts_used_up_total"));
    }

    @ParameterizedTest
    @MethodSource("seeded")
    void no_part_is_both_and_both_add_up(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            double[] life = all.along("material_life_years", seed);
            double[] recovered = all.along("material_recovery_yearly", seed);
            double[] used = all.along("material_used_up_yearly", seed);
            for (int part = 0; part < life.length; part++) {
                assertThat(life[part] > 1 ? used[part] : recovered[part]).isZero();
            }
            Near.adds(all.of("parts_recovery_total", seed), "recovered, case " + seed, recovered);
            Near.adds(all.of("parts_used_up_total", seed), "used up, case " + seed, used);
        }
    }
}
