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
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of yearly cash: arithmetic anyone can redo. */
class CashFlowLawsTest {

    /** Sums of a few thousand doubles of money, in another order. */
    private static final double RELATIVE = 1e-9;

    /** No rate of return is sought below it. */
    private static final double LOWEST_RATE = -0.99;

    private static final Budget SAMPLE = Sample.troughHouseWithRoom(12);

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
        assertThat(f.number("cash_cumulative", Integer.toString(net.length - 1)))
                .isCloseTo(sum, within(RELATIVE * f.number("startup_cash")));
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
            boolean isNumber = line.kind() == Kind.NUMBER;
            if (isCash && isNumber && !line.id().equals("cost_not_in_cash")) {
                assertThat(along(high, line.id())).as(line.id()).isEqualTo(along(low, line.id()));
            }
        }
        assertThat(high.number("net_present_value")).isLessThan(low.number("net_present_value"));
    }

    @Test
    void aPartIsBoughtAgainWhenItsLifeEndsAndASaleBringsAShareOfTheUnusedPart() {
        Figures f = Figures.of(Sample.with(SAMPLE, "plan_years=12 a", "material_resale[emitter]=0.4 1"));
        double change = 1.02 * 1300 * 30.0 / 100 * 1.09 + 1300 * (0.0067 + 0.002) * 18;
        assertThat(f.number("material_replaced", "emitter", "7")).isCloseTo(change, within(1e-8));
        assertThat(f.number("material_replaced", "emitter", "6")).isEqualTo(0);
        Figures six = Figures.of(Sample.with(SAMPLE, "plan_years=12 a", "material_life[emitter]=6 1"));
        assertThat(six.number("material_replaced", "emitter", "6")).isCloseTo(change, within(1e-8));
        assertThat(six.number("material_replaced", "emitter", "12"))
                .as("not in the last year")
                .isEqualTo(0);
        assertThat(f.number("material_residual", "emitter"))
                .isCloseTo(0.4 * 1.02 * 1300 * 30.0 / 100 * 1.09 * 2 / 7, within(1e-8));
    }

    /** Ten years of a film of one crop: the first with the start, then again each year but the last; taken out once more at the end. */
    @ParameterizedTest
    @CsvSource({"1, 1, 0", "2, 2, 1", "4, 4, 3"})
    void whatIsUsedUpIsBoughtAsOftenAsItIsUsedUpTheFirstTimeAtTheStart(int crops, int eachYear, int lastYear) {
        Figures f = Figures.of(Sample.with(
                SAMPLE, "plan_years=10 a", "crops_per_year=" + crops + " crop/a", "install_wage=18 money/h"));
        double metres = f.number("mulch_metres");
        double film = 1.05 * metres * (66.0 / 300 * 1.11 + 1.50 / 300) + metres * (0.033 + 0.02) * 18;
        double end = 1.05 * metres * 1.50 / 300 + metres * 0.02 * 18;
        assertThat(f.number("material_replaced", "mulch_film", "0")).isZero();
        assertThat(f.number("material_replaced", "mulch_film", "9")).isCloseTo(eachYear * film, within(1e-9));
        assertThat(f.number("material_replaced", "mulch_film", "10")).isCloseTo(lastYear * film, within(1e-9));
        assertThat(f.number("material_replaced", "mulch_film", "11")).isZero();
        assertThat(f.number("material_residual", "mulch_film")).isZero();
        assertThat(f.number("material_taking_out", "mulch_film")).isCloseTo(end, within(1e-9));
    }

    /** What stands is taken out in the last year: hours at the wage of installing, and disposal; salvage above zero comes in. */
    @Test
    void takingOutIsPaidInTheLastYear() {
        Figures f = Figures.of(Sample.with(SAMPLE, "plan_years=8 a"));
        assertThat(f.number("material_taking_out", "pump")).isCloseTo(1.0 * 18, within(1e-9));
        assertThat(f.number("material_residual", "pump")).isCloseTo(25, within(1e-9));
        assertThat(f.number("material_taking_out", "liner"))
                .isCloseTo(200 * 0.01 * 18 + 200 * 1.05 / 100 * 1.00, within(1e-9));
        assertThat(f.number("material_residual", "liner")).isZero();
        double out = IntStream.range(0, SAMPLE.line("material_taking_out").size())
                .mapToDouble(part -> f.number(SAMPLE.line("material_taking_out"), part))
                .sum();
        assertThat(f.number("cash_taking_out", "8")).isCloseTo(out, within(1e-9));
        for (String year : new String[] {"0", "7", "9"}) {
            assertThat(f.number("cash_taking_out", year)).as("year " + year).isZero();
        }
    }

    /** Nothing but the sale comes of a resale: the last year has it, and no other year moves. */
    @Test
    void aResaleMovesTheLastYearAlone() {
        Figures without = Figures.of(SAMPLE);
        Figures f = Figures.of(Sample.with(SAMPLE, "material_resale[support_stand]=0.5 1"));
        double more = 0.5 * f.number("material_exact_cost", "support_stand") * 10 / 20
                - 0.5 * f.number("material_salvage_value", "support_stand") * 10 / 20;
        double[] before = along(without, "cash_net");
        double[] after = along(f, "cash_net");
        for (int year = 0; year < after.length; year++) {
            double moved = year == 10 ? more : 0;
            assertThat(after[year] - before[year]).as("year %d", year).isCloseTo(moved, within(1e-8));
        }
        assertThat(more).isGreaterThan(100);
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
