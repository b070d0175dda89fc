package org.benchmetre.farm.lending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.SeededBlocks;
import org.benchmetre.farm.input.Sheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of funds, cash and statements whatever is entered: plain accounting, on the samples and on a thousand seeded scenarios of them. */
class LendingLawsTest {

    private static final int SEEDS = 340;

    /** Sums of some hundred amounts in another order. */
    private static final double ROUNDING = 1e-9;

    private static final List<String> FIGURES = List.of(
            "uses_total",
            "sources_total",
            "owner_total",
            "owner_funds",
            "balancing_amount",
            "balancing_loans",
            "plan_years",
            "funds_working_capital",
            "month_net",
            "month_cash",
            "month_collected",
            "year_collected",
            "year_net",
            "year_cash",
            "year_draw",
            "year_own",
            "income_after_tax",
            "balance_equity",
            "balance_assets",
            "balance_debts",
            "debt_owed",
            "debt_principal",
            "loans_total");

    /** Sheets of what the farm costs and returns, which loans may not move. */
    private static final Set<String> ECONOMIC = Set.of(
            Sheets.SUMMARY,
            Sheets.ENTRIES,
            Sheets.MATERIALS,
            Sheets.IRRIGATION,
            Sheets.CROP,
            Sheets.OPERATIONS,
            Sheets.BUDGET,
            Sheets.WHAT_IF);

    private static final List<SeededBlocks> ALL = all().toList();

    static List<SeededBlocks> samples() {
        return ALL;
    }

    private static Stream<SeededBlocks> all() {
        return Sample.SAMPLES.stream()
                .map(Sample::of)
                .flatMap(sample -> Stream.of(
                        new SeededBlocks(sample, SEEDS, FIGURES),
                        blocks(sample, "start_month=jan"),
                        blocks(sample, "start_month=jul", "shock_late=3 mo", "sales_terms=75 d"),
                        blocks(sample, "shock_lost_year=2 a", "tax_rate=0.3 1", "owner_draw=9000 money/a"),
                        blocks(sample, "plan_years=1 a"),
                        blocks(sample, "plan_years=2 a", "start_month=apr")));
    }

    private static SeededBlocks blocks(Budget sample, String... settings) {
        return new SeededBlocks(Sample.with(sample, settings), 4, FIGURES);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void sourcesAreUses(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            double uses = all.of("uses_total", seed);
            assertThat(all.of("sources_total", seed)).as("seed %d", seed).isCloseTo(uses, within(ROUNDING * uses));
            if (all.of("balancing_amount", seed) > 0) {
                assertThat(all.of("owner_total", seed))
                        .as("what the owner entered, seed %d", seed)
                        .isCloseTo(all.of("owner_funds", seed), within(ROUNDING * uses));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void monthsAddToTheirYearAndCashGoesOn(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            double[] net = all.along("month_net", seed);
            double[] cash = all.along("month_cash", seed);
            double size = DoubleStream.of(cash).map(Math::abs).max().orElse(0) + all.of("uses_total", seed);
            double before = all.of("funds_working_capital", seed);
            for (int month = 0; month < net.length; month++) {
                before += net[month];
                assertThat(cash[month])
                        .as("month %d, seed %d", month + 1, seed)
                        .isCloseTo(before, within(ROUNDING * size));
            }
            for (int year = 1; year <= Math.min(2, all.of("plan_years", seed)); year++) {
                double sum =
                        DoubleStream.of(net).skip(12L * (year - 1)).limit(12).sum();
                double paid = DoubleStream.of(all.along("month_collected", seed))
                        .skip(12L * (year - 1))
                        .limit(12)
                        .sum();
                String key = Integer.toString(year);
                String what = "year " + year + ", seed " + seed;
                assertThat(all.of("year_net", key, seed)).as(what).isCloseTo(sum, within(ROUNDING * size));
                assertThat(all.of("year_collected", key, seed)).as(what).isCloseTo(paid, within(ROUNDING * size));
                assertThat(all.of("year_cash", key, seed))
                        .as(what)
                        .isCloseTo(cash[12 * year - 1], within(ROUNDING * size));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void equityMovesByIncomeDrawAndCashOfOnesOwnAlone(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            double[] equity = all.along("balance_equity", seed);
            double[] assets = all.along("balance_assets", seed);
            double[] debts = all.along("balance_debts", seed);
            double[] income = all.along("income_after_tax", seed);
            double[] draw = all.along("year_draw", seed);
            double[] own = all.along("year_own", seed);
            double size = DoubleStream.of(assets).max().orElse(0)
                    + DoubleStream.of(debts).max().orElse(0);
            double uses = all.of("uses_total", seed);
            assertThat(assets[0]).as("built and kept, seed %d", seed).isCloseTo(uses, within(ROUNDING * uses));
            for (int year = 0; year <= all.of("plan_years", seed); year++) {
                String what = "year " + year + ", seed " + seed;
                assertThat(assets[year]).as(what).isCloseTo(debts[year] + equity[year], within(ROUNDING * size));
                double moved = year == 0 ? equity[0] : equity[year - 1] + income[year] + own[year] - draw[year];
                assertThat(equity[year]).as(what).isCloseTo(moved, within(ROUNDING * size));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void whatIsPaidBackIsNoLongerOwed(SeededBlocks all) {
        for (int seed = 0; seed < all.cases(); seed++) {
            double[] owed = all.along("debt_owed", seed);
            double[] principal = all.along("debt_principal", seed);
            double loans = all.of("loans_total", seed);
            assertThat(owed[0]).isCloseTo(loans, within(ROUNDING * loans));
            for (int year = 1; year <= all.of("plan_years", seed); year++) {
                assertThat(owed[year])
                        .as("year %d, seed %d", year, seed)
                        .isCloseTo(owed[year - 1] - principal[year], within(ROUNDING * loans));
            }
        }
    }

    /** What is said of the loan behind each part stands beside the parts, and is no part of the economic budget. */
    private static final String LOAN_OF_PART = "material_loan";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "loan_amount[equipment]=4000 money_nominal",
                "loan_rate[house]=0.11 nominal/a",
                "loan_term[house]=6 a",
                "loan_fee[equipment]=0.03 1",
                "loan_interest_only[house]=24 mo",
                "loan_balloon[equipment]=2000 money_nominal",
                "loan_kind[house]=equal_principal",
                "loan_rounding=each_payment",
                "owner_funds=9000 money_nominal",
                "building_months=9 mo",
                "working_capital=11000 money"
            })
    void noLoanMovesTheEconomicBudget(String setting) {
        Budget house = Sample.of(Sample.SAMPLES.get(0));
        Figures before = Figures.of(house);
        Figures after = Figures.of(Sample.with(house, setting));
        int compared = 0;
        for (Schedule schedule : house.schedules()) {
            for (Line line : ECONOMIC.contains(schedule.sheet()) ? schedule.lines() : List.<Line>of()) {
                boolean isOfLoan = line.id().startsWith(LOAN_OF_PART);
                if (line.kind() == Kind.NUMBER && !house.isSolved(line) && !isOfLoan) {
                    assertThat(along(after, line)).as(line.id()).isEqualTo(along(before, line));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(500);
        assertThat(along(after, house.line("month_cash"))).isNotEqualTo(along(before, house.line("month_cash")));
    }

    @Test
    void theRateOfCapitalRecoveryMovesNoCash() {
        Budget house = Sample.of(Sample.SAMPLES.get(0));
        Figures low = Figures.of(Sample.with(house, "recovery_rate=0.02 real/a"));
        Figures high = Figures.of(Sample.with(house, "recovery_rate=0.09 real/a"));
        for (String id : FIGURES) {
            assertThat(along(high, house.line(id))).as(id).isEqualTo(along(low, house.line(id)));
        }
        assertThat(high.number("yearly_cost_total")).isGreaterThan(low.number("yearly_cost_total"));
    }

    private static double[] along(Figures f, Line line) {
        return IntStream.range(0, line.size())
                .mapToDouble(i -> f.number(f.budget().line(line.id()), i))
                .toArray();
    }
}
