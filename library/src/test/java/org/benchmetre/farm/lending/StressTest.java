package org.benchmetre.farm.lending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Faults;
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
            "shock_energy=0.25 1",
            "shock_interest=0.02 nominal/a",
            "shock_late=2 mo",
            "shock_lost_year=1 a");

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
}
