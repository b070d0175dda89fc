package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;

/** Plant stock, season and receipts of the trough house, redone by hand. */
class PlantStockTest {

    /** Products of a dozen doubles, up to some thousands. */
    private static final double NEAR = 1e-9;

    private static final Budget SAMPLE = Sample.troughHouse();
    private static final Budget NO_DRY_PLANTS = Sample.with(
            SAMPLE,
            "killed_fruit_lost=0 1",
            "set_back_fruit_lost=0 1",
            "yield_per_plant=600 g/(plant crop)",
            "fruit_price=7 money/kg");

    @Test
    void eachLossBuysPlantsByItsOwnCause() {
        Figures f = Figures.of(SAMPLE);
        double set = 1300 * 1.02 / (1 - 0.05);
        assertThat(f.number("stock_plants_set", "bare_root")).isCloseTo(set, within(NEAR));
        assertThat(f.number("stock_plants_bought", "bare_root")).isCloseTo(set / (1 - 0.03), within(NEAR));
    }

    @Test
    void theLargestBreakReachedSetsThePriceOfAllPlants() {
        Figures ten = Figures.of(SAMPLE);
        Figures hundred = Figures.of(Sample.with(SAMPLE, "bench_count=100 bench"));
        Figures two = Figures.of(Sample.with(SAMPLE, "bench_count=2 bench"));
        assertThat(two.number("stock_price_paid", "tray_plant")).isEqualTo(0.62);
        assertThat(ten.number("stock_price_paid", "tray_plant")).isEqualTo(0.59);
        assertThat(hundred.number("stock_price_paid", "tray_plant")).isEqualTo(0.55);
        assertThat(hundred.number("stock_price_paid", "pre_grown")).isEqualTo(0.48);
        assertThat(ten.number("stock_price_paid", "spare_1")).isZero();
    }

    @Test
    void anEstablishedPlantPaysForPlantPotMediaLabourAndBench() {
        double growing = 0.09 + 0.6 * 0.08 + 0.006 * 18 + 6 * 0.30 / 50;
        double set = 1.01 / (1 - 0.015);
        assertThat(Figures.of(SAMPLE).number("stock_cost_per_established_plant", "pre_grown"))
                .isCloseTo(set / (1 - 0.01) * 0.48 * 1.08 + set * growing, within(NEAR));
    }

    @Test
    void withoutChannelsOneGradeAndNoLossesFruitTimesPriceIsReceipts() {
        Figures f = Figures.of(
                Sample.with(NO_DRY_PLANTS, "receipts_by=one_price", "harvest_losses=0 1", "cost_per_kg=1.2 money/kg"));
        assertThat(f.number("yield_total")).isCloseTo(1300 * 0.600 * 0.9, within(NEAR));
        assertThat(f.number("receipts_total")).isCloseTo(1300 * 0.600 * 0.9 * 7, within(NEAR));
        assertThat(f.number("yield_costs_total")).isCloseTo(1300 * 0.600 * 0.9 * (1.20 + 0.1 * 7), within(NEAR));
    }

    @Test
    void aChannelBringsItsShareOfAMonthAtThePricesOfBothGrades() {
        Figures f = Figures.of(NO_DRY_PLANTS);
        double share = f.number("channel_share", "wholesale");
        double price = f.number("channel_price", "wholesale", "feb");
        double sent = share * 0.14 * 1300 * 0.600 * 0.98 * 0.9;
        assertThat(share).isBetween(0.1, 0.9);
        assertThat(price).isGreaterThan(f.number("channel_price", "wholesale", "jul"));
        double worth = price * 0.98 * (0.9 + 0.1 * 0.6);
        double others = 0;
        for (String channel : Seeded.keys(NO_DRY_PLANTS, "channel_share")) {
            others += f.number("channel_weight", channel) * f.number("channel_price", channel, "feb");
        }
        others -= f.number("channel_weight", "wholesale") * price;
        double all = f.number("month_receipts", "feb") - others * f.number("month_yield", "feb");
        assertThat(all).isCloseTo(sent * worth, within(NEAR));
    }

    @Test
    void growersLearnInTheFirstTwoYears() {
        Figures f = Figures.of(SAMPLE);
        double full = f.number("receipts_total");
        assertThat(f.number("cash_receipts", "0")).isZero();
        assertThat(f.number("cash_receipts", "1")).isCloseTo(0.8 * full, within(NEAR));
        assertThat(f.number("cash_receipts", "2")).isCloseTo(0.9 * full, within(NEAR));
        assertThat(f.number("cash_receipts", "3")).isCloseTo(full, within(NEAR));
    }

    @Test
    void noKindIsTakenToYieldMoreUnlessTheScenarioSaysSoAndThenTheDoubtShows() {
        Budget budget = SAMPLE;
        Figures f = Figures.of(budget);
        for (String kind : new String[] {"bare_root", "tray_plant", "plug", "pre_grown"}) {
            assertThat(f.number("compared_fruit", kind)).isCloseTo(f.number("yield_total"), within(NEAR));
            assertThat(text(f, "compared_doubt", kind)).isEqualTo("Taken to yield as planned.");
        }
        assertThat(text(f, "compared_doubt", "spare_1")).isEmpty();
        var entered = budget.line("stock_yield_entered");
        Figures more = Figures.of(budget.with(Map.of(entered, Map.of(2, Given.number(1.1, entered.unit())))));
        assertThat(more.number("compared_fruit", "plug")).isCloseTo(1.1 * f.number("yield_total"), within(NEAR));
        assertThat(text(more, "compared_doubt", "plug")).startsWith("Doubt: few yields by stock are published");
    }

    private static String text(Figures f, String id, String key) {
        var line = f.budget().line(id);
        return f.text(line, line.axes().get(0).indexOf(key));
    }
}
