package org.benchmetre.farm.lending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.previous;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.profile.CropProfile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Income tax of a house of 10,000, equipment of 7,000, a trough of 700 and land of 5,000. */
class TaxTest {

    /** Half a unit of the last digit that the table of shares prints. */
    private static final Offset<Double> PRINTED = within(0.00005);

    /** Sums of thirty amounts of some thousands. */
    private static final Offset<Double> ROUNDING = within(1e-8);

    private static final int YEARS = 31;
    private static final Unit MONEY = Unit.MONEY_NOMINAL;
    private static final Unit YEAR = Unit.parse("a");
    private static final List<String> KINDS = List.of("land", "house", "equipment", "growing", "cash");
    private static final double[] COSTS = {5000, 10000, 7000, 700, 300};

    /** IRS Publication 946 table A-1, half-year convention, per cent of the cost: 7-year and 10-year property. */
    private static final double[] SEVEN = {14.29, 24.49, 17.49, 12.49, 8.93, 8.92, 8.93, 4.46};

    private static final double[] TEN = {10, 18, 14.4, 11.52, 9.22, 7.37, 6.55, 6.55, 6.56, 6.55, 3.28};

    private static Budget plan(double... income) {
        return plan(income, new double[0]);
    }

    private static Budget plan(double[] income, double[] bought) {
        return plan(COSTS, income, bought);
    }

    private static Budget plan(double[] costs, double[] income, double[] bought) {
        BudgetBuilder b = new BudgetBuilder("Test", "USD");
        FarmEntries entries = new FarmEntries(CropProfile.of("strawberry"));
        Axis years = Axis.periods(
                "year",
                "Year",
                IntStream.range(0, YEARS).mapToObj(Integer::toString).toList());
        Axis kinds = Axis.rows("fund_kind", "Kind", KINDS, 0);
        ScheduleBuilder s = b.schedule("Sheet", "Years");
        Line year = s.declare("year_number", "Year", YEAR, Kind.NUMBER, List.of(years), "");
        b.define(year, previous(year, number(-1, YEAR)).plus(number(1, YEAR)));
        Line cost = b.schedule("Sheet", "Kinds")
                .line(
                        "built_cost",
                        "Cost",
                        MONEY,
                        new Rows(
                                kinds,
                                DoubleStream.of(costs)
                                        .mapToObj(each -> number(each, MONEY))
                                        .toList()));
        TaxDepreciation depreciation = new TaxDepreciation(b, entries, years, year, kinds, cost);
        Line earned = s.line("income_before", "Income", MONEY, of(years, income));
        Line again = s.line("bought_again", "Bought again", MONEY, of(years, bought));
        new IncomeTax(b, depreciation, years, year, earned, again);
        return b.build();
    }

    /** Amounts from year 0 on, nothing after the last. */
    private static Formula of(Axis years, double[] amounts) {
        List<Formula> cells = new ArrayList<>(Collections.nCopies(years.size(), none(MONEY)));
        IntStream.range(0, amounts.length).forEach(i -> cells.set(i, number(amounts[i], MONEY)));
        return new Rows(years, cells);
    }

    private static double[] years(Figures f, String id) {
        Line line = f.budget().line(id);
        return IntStream.range(0, line.size())
                .mapToDouble(cell -> f.number(line, cell))
                .toArray();
    }

    private static double[] taxable(Figures f) {
        return DoubleStream.of(years(f, "tax_after_losses"))
                .map(income -> Math.max(0, income))
                .toArray();
    }

    private static double[] lossCarried(Figures f) {
        return DoubleStream.of(years(f, "tax_after_losses"))
                .map(income -> Math.max(0, -income))
                .toArray();
    }

    static Stream<Arguments> published() {
        return Stream.of(
                Arguments.of("equipment", 7, SEVEN), Arguments.of("house", 10, TEN), Arguments.of("growing", 7, SEVEN));
    }

    /** One kind alone, at a cost of 1: depreciation is the share. */
    @ParameterizedTest
    @MethodSource("published")
    void shares_of_a_class_are_those_of_the_published_table(String kind, int life, double[] percent) {
        double[] costs = new double[KINDS.size()];
        costs[KINDS.indexOf(kind)] = 1;
        Budget alone = plan(costs, new double[0], new double[0]);
        double[] found = years(
                Figures.of(Sample.with(alone, "tax_method=class_tables", "tax_life_" + kind + "=" + life + " a")),
                "tax_depreciation");
        for (int year = 0; year < YEARS; year++) {
            double share = year == 0 || year > percent.length ? 0 : percent[year - 1] / 100;
            assertThat(found[year]).as("year %d", year).isCloseTo(share, PRINTED);
        }
    }

    @Test
    void shares_of_a_class_add_up_to_one() {
        Figures f = Figures.of(plan());
        Line share = f.budget().line("tax_class_share");
        assertThat(share.axes().get(0).keys()).containsExactly("class_7", "class_10");
        for (int row = 0; row < 2; row++) {
            int first = row * YEARS;
            assertThat(IntStream.range(first, first + YEARS)
                            .mapToDouble(cell -> f.number(share, cell))
                            .sum())
                    .isCloseTo(1, within(1e-12));
        }
    }

    /** 10,000 over 10 years, 7,700 over 7: 1,000 + 1,100 a year for seven years, then 1,000 for three. */
    @Test
    void the_straight_line_takes_as_much_in_each_year_of_a_life() {
        double[] found = years(Figures.of(plan()), "tax_depreciation");
        assertThat(found[0]).isZero();
        for (int year = 1; year < YEARS; year++) {
            double expected = year <= 7 ? 2100 : year <= 10 ? 1000 : 0;
            assertThat(found[year]).as("year %d", year).isCloseTo(expected, ROUNDING);
        }
    }

    /** A life of 2.5 years takes two fifths twice and a fifth in the third year. */
    @Test
    void a_life_may_end_within_a_year() {
        double[] found = years(
                Figures.of(
                        Sample.with(plan(), "tax_life_equipment=2.5 a", "tax_life_house=1 a", "tax_life_growing=1 a")),
                "tax_depreciation");
        assertThat(found[1]).isCloseTo(10000 + 700 + 2800, ROUNDING);
        assertThat(found[2]).isCloseTo(2800, ROUNDING);
        assertThat(found[3]).isCloseTo(1400, ROUNDING);
        assertThat(found[4]).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"straight_line", "class_tables"})
    void all_that_has_a_life_is_depreciated_once_and_land_never(String method) {
        for (String life : List.of("1", "7", "10", "12.4")) {
            Budget set = Sample.with(
                    plan(), "tax_method=" + method, "tax_life_house=" + life + " a", "tax_life_growing=" + life + " a");
            assertThat(DoubleStream.of(years(Figures.of(set), "tax_depreciation"))
                            .sum())
                    .isCloseTo(17700, ROUNDING);
        }
    }

    @Test
    void tax_is_off_by_default() {
        Figures f = Figures.of(plan(0, 50000, -3000, 123456.78, 0.01));
        assertThat(years(f, "tax_of_year")).containsOnly(0.0);
        assertThat(f.text("tax_told")).isEqualTo("before tax");
        assertThat(Figures.of(Sample.with(f.budget(), "tax_rate=0.25 1")).text("tax_told"))
                .isEqualTo("after income tax");
    }

    /**
     * Depreciation is 2,100 a year for seven years. Incomes of 1,000, 100, 4,000 and 10,000, of which 500 buy something again in year 4:
     * year 1 loses 1,100, year 2 2,000 more; year 3 earns 1,900 and takes them off, 1,200 of loss stay; year 4 earns 7,400 and pays on
     * 6,200, a quarter: 1,550.
     */
    @Test
    void losses_are_carried_until_income_has_made_up_for_them() {
        double[] income = {-99999, 1000, 100, 4000, 10000};
        double[] bought = {-77, 0, 0, 0, 500};
        Figures f = Figures.of(Sample.with(plan(income, bought), "tax_rate=0.25 1"));
        assertThat(lossCarried(f)).startsWith(new double[] {0, 1100, 3100, 1200, 0}, ROUNDING);
        assertThat(taxable(f)).startsWith(new double[] {0, 0, 0, 0, 6200}, ROUNDING);
        assertThat(years(f, "tax_of_year")).startsWith(new double[] {0, 0, 0, 0, 1550}, ROUNDING);
        assertThat(lossCarried(f)[5]).isCloseTo(2100, ROUNDING);
    }

    @Test
    void tax_of_all_years_is_the_rate_on_income_where_no_year_loses() {
        double[] income = new double[YEARS];
        Arrays.fill(income, 1, YEARS, 20000);
        Figures f = Figures.of(Sample.with(plan(income, new double[0]), "tax_rate=0.3 1", "tax_method=class_tables"));
        assertThat(DoubleStream.of(years(f, "tax_of_year")).sum()).isCloseTo(0.3 * (30 * 20000 - 17700), ROUNDING);
        assertThat(lossCarried(f)).containsOnly(0.0);
    }
}
