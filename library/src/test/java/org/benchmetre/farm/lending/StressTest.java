package org.benchmetre.farm.lending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.decision.HowFar;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Coverage and cash in each case of the stress, against a plan in which the same changes are entered. */
class StressTest {

    /** Sums of some hundred amounts of some thousands. */
    private static final Offset<Double> ROUNDING = within(1e-6);

    /** The listed sizes of common entries.csv, in the order of the changes. */
    private static final List<String> LISTED = List.of(
            "shock_price=-0.1 1",
            "shock_yield=-0.1 1",
            "shock_wage=0.1 1",
            "shock_energy=0.3 1",
            "shock_interest=0.02 nominal/a",
            "shock_late=2 mo",
            "shock_lost_year=1 a");

    /** A break size is exact to this share of the limit, or of what the plan takes to build. */
    private static final double SHARE = 1e-4;

    private static final int COVERAGE = 0;
    private static final int CASH = 1;
    private static final int YEAR = 2;
    private static final int CONTINUOUS = 5;

    private static final List<String> CASES = List.of("price", "yield", "wage", "energy", "interest", "late", "lost");

    static Budget of(Path folder) {
        return Sample.read(folder, new Faults());
    }

    static Stream<Arguments> cases() {
        return Sample.GIVEN.stream()
                .flatMap(folder -> Stream.of(new String[0], new String[] {
                            "tax_rate=0.3 1", "shock_price=0.05 1", "shock_late=10 mo", "shock_lost_year=2 a"
                        })
                        .map(entered -> Arguments.of(folder, entered)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void each_case_is_the_plan_with_its_changes_entered(Path folder, String[] entered) {
        Budget budget = Sample.with(of(folder), entered);
        Figures figures = Figures.of(budget);
        boolean isChanged = entered.length > 0;
        for (int row = 0; row < CASES.size(); row++) {
            holds(figures, CASES.get(row), isChanged ? over(LISTED.get(row)) : LISTED.get(row));
        }
        holds(
                figures,
                "together",
                LISTED.stream().map(each -> isChanged ? over(each) : each).toArray(String[]::new));
        holds(figures, "plan");
    }

    /** On top of what is entered; no more than 11 months late, and another lost year in place of the first. */
    private static String over(String listed) {
        return listed.replace("shock_price=-0.1 1", "shock_price=-0.05 1").replace("shock_late=2", "shock_late=11");
    }

    private static void holds(Figures figures, String row, String... settings) {
        Figures set = Figures.of(Sample.with(figures.budget(), settings));
        assertThat(figures.number("stress_coverage_counted", row))
                .as(row)
                .isCloseTo(set.number("coverage_lowest"), ROUNDING);
        assertThat(figures.number("stress_cash_low", row)).as(row).isCloseTo(set.number("cash_low_point"), ROUNDING);
        assertThat(figures.number("stress_cash_least", row)).as(row).isCloseTo(set.number("cash_least"), ROUNDING);
    }

    /** Month by month: what was there, and what comes in less what goes out. */
    @ParameterizedTest
    @MethodSource("cases")
    void cash_runs_on_by_what_is_shown_of_each_month_and_year(Path folder, String[] entered) {
        Figures f = Figures.of(Sample.with(of(folder), entered));
        double cash = f.number("working_capital");
        for (int month = 1; month <= 24; month++) {
            String key = Integer.toString(month);
            cash += f.number("month_net", key);
            assertThat(f.number("month_cash", key)).as(key).isCloseTo(cash, ROUNDING);
        }
        assertThat(f.number("year_cash", "2")).isCloseTo(cash, ROUNDING);
        for (int year = 1; year <= 5; year++) {
            String key = Integer.toString(year);
            double left = f.number("year_collected", key)
                    + f.number("year_own", key)
                    - f.number("year_selling", key)
                    - f.number("year_labour", key)
                    - f.number("year_energy", key)
                    - f.number("year_running", key)
                    - f.number("year_bought", key)
                    - f.number("debt_interest", key)
                    - f.number("debt_principal", key)
                    - f.number("year_draw", key)
                    - f.number("tax_of_year", key);
            assertThat(f.number("year_net", key)).as(key).isCloseTo(left, ROUNDING);
        }
    }

    /** What was searched is entered: coverage is then at the limit, or cash at nothing, to a ten-thousandth. */
    @ParameterizedTest
    @MethodSource("breaks")
    void what_breaks_a_plan_is_where_its_figure_meets_the_limit(Path folder, String[] entered) {
        Budget budget = Sample.with(of(folder), entered);
        Figures f = Figures.of(budget);
        double limit = f.number("coverage_limit");
        double scale = f.number("uses_total");
        Line found = budget.line("break_found");
        for (int row = 0; row < CONTINUOUS; row++) {
            for (int told = 0; told < HowFar.ANSWERS; told++) {
                int cell = row * HowFar.ANSWERS + told;
                if (told == YEAR || f.hasReason(found, cell)) {
                    continue;
                }
                Figures set = Figures.of(budget.with(Map.of(
                        budget.line("shock_" + CASES.get(row)),
                        Map.of(
                                0,
                                Given.number(
                                        f.number(found, cell),
                                        budget.line("shock_" + CASES.get(row)).unit())))));
                if (told == CASH) {
                    assertThat(set.number("cash_least")).isCloseTo(0, within(SHARE * scale));
                } else {
                    assertThat(set.number("coverage_lowest")).isCloseTo(limit, within(SHARE * limit));
                }
                if (told == COVERAGE) {
                    assertThat(set.text("coverage_lowest_year")).isEqualTo(Integer.toString((int)
                            f.number(found, row * HowFar.ANSWERS + YEAR)));
                }
            }
        }
    }

    static Stream<Arguments> breaks() {
        return Sample.SAMPLES.stream()
                .flatMap(folder -> Stream.of(
                                new String[0],
                                new String[] {"coverage_limit=0.5 1", "tax_rate=0.3 1", "working_capital=60000 money"})
                        .map(entered -> Arguments.of(folder, entered)));
    }

    /** Whole months and years are looked at one by one: none before the one found breaks the plan, and that one does. */
    @ParameterizedTest
    @MethodSource("breaks")
    void the_first_month_and_the_first_year_that_break_a_plan_are_the_first(Path folder, String[] entered) {
        Budget budget = Sample.with(of(folder), entered);
        Figures f = Figures.of(budget);
        first(f, "late", "shock_late", "mo", 11);
        first(f, "lost", "shock_lost_year", "a", 5);
    }

    private static void first(Figures f, String row, String entry, String unit, int most) {
        double limit = f.number("coverage_limit");
        boolean isBelow = f.number("coverage_lowest") < limit;
        boolean isShort = f.number("cash_least") < 0;
        Line found = f.budget().line("break_found");
        int at = CASES.indexOf(row) * HowFar.ANSWERS;
        double coverage = isBelow ? 0 : Double.NaN;
        double cash = isShort ? 0 : Double.NaN;
        for (int value = 1; value <= most; value++) {
            Figures set = Figures.of(Sample.with(f.budget(), entry + "=" + value + " " + unit));
            coverage = Double.isNaN(coverage) && set.number("coverage_lowest") < limit ? value : coverage;
            cash = Double.isNaN(cash) && set.number("cash_least") < 0 ? value : cash;
        }
        same(f, found, at + COVERAGE, coverage, most);
        same(f, found, at + CASH, cash, most);
    }

    private static void same(Figures f, Line found, int cell, double wanted, int most) {
        if (wanted > 0) {
            assertThat(f.number(found, cell)).isEqualTo(wanted);
        } else if (!f.hasReason(found, cell)) {
            assertThat(f.number(found, cell)).isGreaterThan(most);
        }
    }

    @Test
    void the_first_to_break_is_named_and_what_holds_no_longer_is_told_first() {
        assertThat(first(Sample.SAMPLES.get(0)))
                .startsWith("Coverage is 0.73 in year 1 as planned, below 1.25: it takes fruit prices ")
                .contains(" higher to reach it. Next to break: with fruit prices ")
                .endsWith(" lower, cash runs out.");
        assertThat(first(Sample.SAMPLES.get(1)))
                .isEqualTo("First to break: with the first harvest 1 month late, cash runs out; "
                        + "coverage falls below 1.25 when 2 months late.");
        assertThat(first(Sample.SAMPLES.get(1), "stress_late=0 mo"))
                .isEqualTo("First to break: with the crop lost in year 1, coverage falls below 1.25 in year 1; "
                        + "cash runs out when lost in year 1.");
        assertThat(first(Sample.SAMPLES.get(1), "stress_late=0 mo", "coverage_limit=1.9 1"))
                .startsWith("First to break: with fruit prices ")
                .contains(" % lower, coverage falls below 1.90 in year 1; cash runs out at 14.2 % lower.");
        assertThat(first(Sample.STARTER)).startsWith("Cash runs short by ").endsWith(" USD as planned. ");
        assertThat(first(Sample.STARTER, "working_capital=10000 money"))
                .startsWith("First to break: with ")
                .endsWith(", cash runs out.");
        assertThat(first(Sample.STARTER, "working_capital=100000000 money"))
                .isEqualTo("No change alone, as far as Stress looks, uses up the cash.");
    }

    private static String first(Path folder, String... settings) {
        return Figures.of(Sample.with(of(folder), settings)).text("stress_first");
    }

    @Test
    void sizes_say_when_they_are_out_of_date_and_changes_that_are_entered_are_warned_of() {
        Budget budget = of(Sample.SAMPLES.get(0));
        Figures f = Figures.of(budget);
        assertThat(f.text("stress_state")).contains("as filled on these entries");
        assertThat(f.text("stress_changed")).isEmpty();
        Line price = budget.line("shock_price");
        Figures typed = f.typedOver(Map.of(price, Map.of(0, Given.number(0.01, price.unit()))));
        assertThat(typed.text("stress_state")).startsWith("Out of date: ");
        assertThat(typed.text("stress_first"))
                .contains("with the changes entered")
                .endsWith("write the workbook again.");
        assertThat(typed.text("stress_changed"))
                .isEqualTo("Some are entered on Stress: cash and statements are shown under them.");
    }
}
