package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of yearly cash: arithmetic anyone can redo. */
class CashFlowLawsTest {

    /** Sums of a few thousand doubles of money, in another order. */
    private static final double RELATIVE = 1e-9;

    /** No rate of return is sought below it. */
    private static final double LOWEST_RATE = -0.99;

    private static final Budget SAMPLE = Sample.troughHouse();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static double[] along(Figures f, String id) {
        Line line = f.budget().line(id);
        return IntStream.range(0, line.size())
                .mapToDouble(i -> f.number(line, i))
                .toArray();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void atTheRateOfReturnNothingIsWorthAnything(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        Line rate = f.budget().line("internal_rate_of_return");
        double[] net = along(f, "cash_net");
        double value = 0;
        double size = 0;
        for (int year = 0; year < net.length; year++) {
            double factor = f.hasReason(rate, 0) ? 0 : Math.pow(1 + f.number(rate, 0), -year);
            value += net[year] * factor;
            size += Math.abs(net[year]) * factor;
        }
        assertThat(f.troubles()).isEmpty();
        boolean pays = IntStream.range(0, net.length)
                        .mapToDouble(year -> net[year] * Math.pow(1 + LOWEST_RATE, -year))
                        .sum()
                > 0;
        assertThat(f.hasReason(rate, 0)).isEqualTo(f.number("irr_sign_changes") != 1 || !pays);
        assertThat(value).isCloseTo(0, within(RELATIVE * size));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cashSoFarEndsInTheSumOfAllCash(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        double[] net = along(f, "cash_net");
        double sum = IntStream.range(0, net.length).mapToDouble(i -> net[i]).sum();
        assertThat(f.number("cash_cumulative", "30")).isCloseTo(sum, within(RELATIVE * f.number("startup_cash")));
        assertThat(net[0]).isCloseTo(-f.number("startup_cash"), within(RELATIVE * f.number("startup_cash")));
        for (int year = (int) f.number("plan_years") + 1; year < net.length; year++) {
            assertThat(net[year]).as("year %d", year).isEqualTo(0);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void startUpIsFirstCostAndLeftovers(long seed) {
        Figures f = Seeded.figures(SAMPLE, seed);
        double exact = f.number("first_cost_total");
        double parts = f.number("leftover_value");
        double plants = f.number("plants_order_cost") - f.number("plants_first_cost");
        double beyond = f.number("startup_cash") - exact - parts - plants;
        assertThat(beyond).as("two amounts rounded up to cents").isBetween(-RELATIVE * exact, 0.02 + RELATIVE * exact);
        assertThat(plants).isBetween(-RELATIVE * exact, 0.02 + dearest(f));
    }

    /** A plant of the chosen kind with its freight. */
    private static double dearest(Figures f) {
        return f.number("plants_order_price") + f.number("plants_order_freight");
    }

    @Test
    void theRecoveryRateMovesNoCash() {
        Figures low = Figures.of(Sample.with(SAMPLE, "recovery_rate=0.02 real/a"));
        Figures high = Figures.of(Sample.with(SAMPLE, "recovery_rate=0.09 real/a"));
        for (Line line : SAMPLE.lines()) {
            boolean isCash = line.id().startsWith("cash_") || line.id().endsWith("_cash");
            if (isCash && !line.id().equals("cost_not_in_cash")) {
                assertThat(along(high, line.id())).as(line.id()).isEqualTo(along(low, line.id()));
            }
        }
        assertThat(high.number("net_present_value")).isLessThan(low.number("net_present_value"));
    }

    @Test
    void aPartIsBoughtAgainWhenItsLifeEndsAndLeavesTheUnusedPart() {
        Figures f = Figures.of(Sample.with(SAMPLE, "plan_years=12 a"));
        double change = 1.02 * 1300 * 30.0 / 100 * 1.09 + 1300 * (0.0067 + 0.002) * 18;
        assertThat(f.number("material_replaced", "emitter", "7")).isCloseTo(change, within(1e-8));
        assertThat(f.number("material_replaced", "emitter", "6")).isEqualTo(0);
        assertThat(f.number("material_replaced", "emitter", "14")).isEqualTo(0);
        assertThat(f.number("material_residual", "emitter"))
                .isCloseTo(1.02 * 1300 * 30.0 / 100 * 1.09 * 2 / 7, within(1e-8));
    }

    @Test
    void aPlanThatNeverPaysSaysNever() {
        Figures f = Figures.of(Sample.with(SAMPLE, "price_level=0.3 1"));
        assertThat(f.text("payback_years")).isEqualTo("never");
    }

    @Test
    void aPlanThatLosesNearlyAllHasNoRateOfReturn() {
        String[] dear = {"house_cost_per_area=100000 money/m2", "house_life=1 a", "plan_years=2 a"};
        Figures f = Figures.of(Sample.with(SAMPLE, dear));
        assertThat(f.hasReason(SAMPLE.line("internal_rate_of_return"), 0)).isTrue();
        assertThat(Figures.of(SAMPLE).hasReason(SAMPLE.line("internal_rate_of_return"), 0))
                .isFalse();
    }

    @Test
    void aRealRateOnMoneyOfALaterYearDoesNotConstruct() {
        ScheduleBuilder s = new BudgetBuilder("Test", "USD").schedule("Sheet", "Table");
        Line rate = s.entry("real_rate", "Rate", Unit.parse("real/a")).given(Given.number(0.05, Unit.parse("real/a")));
        Line life = s.entry("the_life", "Life", Unit.parse("a")).given(Given.number(5, Unit.parse("a")));
        Line cost = s.entry("nominal_cost", "Cost", Unit.MONEY_NOMINAL).given(Given.number(100, Unit.MONEY_NOMINAL));
        assertThatThrownBy(() -> Formulas.recovery(rate, life, cost, cost))
                .isInstanceOf(FormulaException.class)
                .hasMessage("A rate on money_nominal is in nominal/a, but found real/a (real_rate).");
    }
}
