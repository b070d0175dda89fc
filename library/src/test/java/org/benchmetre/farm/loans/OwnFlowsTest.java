package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.entry.Given;
import org.junit.jupiter.api.Test;

/** Flows of cash of one's own. */
class OwnFlowsTest {

    private static final OneSection SECTION = new OneSection(OwnFlows::new);
    private static final String FLOWS = "flow,label,month,year,amount,source\n"
            + "grant,Grant for young growers,6,,8000,letter of award\n"
            + "roof,,,12,-4500.50,\n";

    private static List<Double> numbers(Budget budget, String line) {
        return budget.given(budget.line(line)).stream().map(Given::number).toList();
    }

    @Test
    void a_flow_falls_in_a_month_or_in_a_year() {
        Budget budget = SECTION.read(OwnFlows.FILE, FLOWS);
        assertThat(numbers(budget, "flow_month")).containsExactly(6.0, 0.0, 0.0, 0.0);
        assertThat(numbers(budget, "flow_year")).containsExactly(0.0, 12.0, 0.0, 0.0);
        assertThat(numbers(budget, "flow_amount")).containsExactly(8000.0, -4500.5, 0.0, 0.0);
        assertThat(budget.given(budget.line("flow_label")))
                .extracting(Given::text)
                .startsWith("Grant for young growers", "Roof");
        assertThat(budget.given(budget.line("flow_source")))
                .extracting(Given::text)
                .startsWith("letter of award", "");
    }

    @Test
    void what_is_written_reads_as_the_same() {
        Budget budget = SECTION.read(OwnFlows.FILE, FLOWS);
        Budget again = SECTION.again(budget);
        for (String line : List.of("flow_month", "flow_year", "flow_amount")) {
            assertThat(numbers(again, line)).isEqualTo(numbers(budget, line));
            assertThat(again.given(again.line(line)))
                    .extracting(Given::filled)
                    .isEqualTo(budget.given(budget.line(line)).stream()
                            .map(Given::filled)
                            .toList());
        }
    }

    /** What stands among the single values says its unit. */
    @Test
    void an_amount_is_read_by_its_address_in_money_of_its_year() {
        for (String unit : List.of("USD_nominal", "USD (nominal)", "")) {
            Budget budget = SECTION.read(Map.of(
                    OwnFlows.FILE,
                    FLOWS,
                    "farm.csv",
                    "line,value,unit\nflow_amount[roof],-5000," + unit + "\nflow_month[spare_1],3,mo\n"
                            + "flow_amount[spare_1],100," + unit + "\n"));
            assertThat(numbers(budget, "flow_amount")).containsExactly(8000.0, -5000.0, 100.0, 0.0);
            assertThat(numbers(SECTION.again(budget), "flow_amount")).containsExactly(8000.0, -5000.0, 100.0, 0.0);
        }
    }

    @Test
    void both_a_month_and_a_year_is_one_too_many() {
        assertThat(SECTION.faults(OwnFlows.FILE, "flow,month,year,amount\ngrant,6,1,8000\n"))
                .containsExactly("cash.csv, row 2, column year: found \"1 yr\", expected nothing, since Month is given,"
                        + " for Year (flow_year[grant]).");
    }

    @Test
    void neither_a_month_nor_a_year_is_nowhere() {
        String expected = "found nothing, expected a value here or for Year, since Amount is given, for Month"
                + " (flow_month[grant]).";
        assertThat(SECTION.faults(OwnFlows.FILE, "flow,month,year,amount\ngrant,,,8000\n"))
                .containsExactly("cash.csv, row 2, column month: " + expected);
        assertThat(SECTION.faults(OwnFlows.FILE, "flow,amount\ngrant,8000\n"))
                .singleElement()
                .asString()
                .startsWith("cash.csv, row 2")
                .endsWith(expected);
    }

    @Test
    void months_and_years_are_whole_and_within_the_plan() {
        assertThat(SECTION.faults(
                        OwnFlows.FILE, "flow,month,year,amount\none,25,,1\ntwo,,31,1\nthree,0.5,,1\nfour,1,,\n"))
                .containsExactly(
                        "cash.csv, row 2, column month: found \"25 mo\", expected a whole number from 1 to 24 mo for Month"
                                + " (flow_month[one]).",
                        "cash.csv, row 3, column year: found \"31 yr\", expected a whole number from 1 to 30 yr for Year"
                                + " (flow_year[two]).",
                        "cash.csv, row 4, column month: found \"0.5 mo\", expected a whole number from 1 to 24 mo for"
                                + " Month (flow_month[three]).",
                        "cash.csv, row 5, column amount: found nothing, expected a number in USD (nominal) for Amount"
                                + " (flow_amount[four]).");
    }
}
