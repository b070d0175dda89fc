package org.benchmetre.farm.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/** With a house of the price that is told, a year that lost money neither loses nor earns. */
class HouseThatPaysTest {

    private static Figures with(String... entered) {
        return Figures.of(Sample.with(Sample.troughHouse(), entered));
    }

    @Test
    void aHouseByAreaOfThatPriceIsPaidForJustSo() {
        String loss = "price_level=0.98 1";
        Figures f = with("house_cost_per_area=100 money/m2", loss);
        assertThat(f.number("returns_above_total")).isNegative();
        double most = f.number("house_that_pays");
        assertThat(most).isBetween(0.1, 99.0);
        assertThat(f.text("house_sentence"))
                .startsWith("The year would pay with a house whose parts cost at most ")
                .endsWith(" USD/m², where they cost 100.");
        Figures at = with("house_cost_per_area=" + most + " money/m2", loss);
        assertThat(at.number("returns_above_total")).isCloseTo(0, within(1e-8));
    }

    @Test
    void whatLosesWithoutAHouseSaysSo() {
        Figures f = with("house_cost_per_area=100 money/m2", "price_level=0.3 1");
        assertThat(f.number("house_that_pays")).isZero();
        assertThat(f.text("house_sentence")).isEqualTo("Not even a house for nothing would make the year pay.");
    }

    @Test
    void whatPaysOrHasNoHouseSaysNothing() {
        assertThat(with().text("house_sentence")).isEmpty();
        assertThat(with("price_level=0.3 1").text("house_sentence")).isEmpty();
    }
}
