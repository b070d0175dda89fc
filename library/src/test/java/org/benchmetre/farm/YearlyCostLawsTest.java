package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of yearly cost and margin: arithmetic anyone can redo. */
class YearlyCostLawsTest {

    /** Sums of a few hundred doubles of money, in another order. */
    private static final double RELATIVE = 1e-12;

    private static Budget sample;

    @BeforeAll
    static void read() {
        sample = Sample.troughHouse();
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void groupsSumToTheTotalAndUnitsTimesCountsAreTheTotal(long seed) {
        Figures f = Seeded.figures(sample, seed);
        double total = f.number("yearly_cost_total");
        Line group = sample.line("group_yearly_cost");
        double sum = IntStream.range(0, group.size())
                .mapToDouble(i -> f.number(group, i))
                .sum();
        assertThat(f.troubles()).isEmpty();
        assertThat(total).isPositive();
        assertThat(sum).isCloseTo(total, within(RELATIVE * total));
        assertThat(f.number("yearly_cost_per_metre") * f.number("bench_metres"))
                .isCloseTo(total, within(RELATIVE * total));
        assertThat(f.number("yearly_cost_per_plant") * f.number("plant_count"))
                .isCloseTo(total, within(RELATIVE * total));
        assertThat(f.number("yearly_cost_per_area") * f.number("house_area"))
                .isCloseTo(total, within(RELATIVE * total));
        assertThat(f.number("yearly_cost_per_kg") * f.number("yield_total")).isCloseTo(total, within(RELATIVE * total));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothingIsLeftAtTheBreakEvenPriceAndAtTheBreakEvenYield(long seed) {
        Budget budget = Seeded.figures(sample, seed).budget();
        Figures f = Figures.of(budget);
        double near = RELATIVE * 100 * f.number("yearly_cost_total");
        double level = f.number("price_level") * f.number("break_even_price") / f.number("price_average");
        Figures atPrice = Figures.of(Sample.typedOver(budget, "price_level=" + level + " 1"));
        assertThat(atPrice.number("returns_above_total")).isCloseTo(0, within(near));
        Line yield = budget.line("break_even_yield");
        if (!f.hasReason(yield, 0)) {
            double told = f.number(yield, 0) / f.number("yield_level");
            Figures atYield = Figures.of(Sample.typedOver(budget, "yield_per_plant=" + told + " g/(plant crop)"));
            assertThat(atYield.number("returns_above_total")).isCloseTo(0, within(near));
        }
    }

    @Test
    void aPriceThatPaysNothingBackHasNoBreakEvenYield() {
        Figures f = Figures.of(Sample.with(sample, "receipts_by=one_price", "fruit_price=1 money/kg"));
        assertThat(f.hasReason(sample.line("break_even_yield"), 0)).isTrue();
        assertThat(f.text("break_even_yield")).isEqualTo("no yield, or a kg leaves nothing");
    }

    @Test
    void withoutYieldThereIsNoCostPerKg() {
        Figures f = Figures.of(Sample.with(sample, "yield_per_plant=0 g/(plant crop)"));
        assertThat(f.text("yearly_cost_per_kg")).isEqualTo("no yield");
        assertThat(f.text("break_even_price")).isEqualTo("no yield");
    }

    @Test
    void theRecoveryRateMovesNoFirstCostAndNoReceipts() {
        Figures low = Figures.of(Sample.with(sample, "recovery_rate=0.02 real/a"));
        Figures high = Figures.of(Sample.with(sample, "recovery_rate=0.09 real/a"));
        for (String cash : new String[] {"first_cost_total", "purchase_cost", "receipts_total", "yield_costs_total"}) {
            assertThat(high.number(cash)).as(cash).isEqualTo(low.number(cash));
        }
        assertThat(high.number("yearly_cost_total")).isGreaterThan(low.number("yearly_cost_total"));
    }

    @Test
    void bothRulesOfOwnershipAgreeWithoutInterest() {
        Figures recovery = Figures.of(Sample.with(sample, "recovery_rate=0 real/a"));
        Figures straight = Figures.of(Sample.with(sample, "recovery_rate=0 real/a", "recovery_method=straight_line"));
        double total = recovery.number("yearly_cost_total");
        assertThat(straight.number("yearly_cost_total")).isCloseTo(total, within(RELATIVE * total));
    }
}
