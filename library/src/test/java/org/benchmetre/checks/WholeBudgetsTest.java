package org.benchmetre.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.benchmetre.Plan;
import org.benchmetre.ScenarioException;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Published budgets of whole farms, row by row and in total: {@code whole_budgets.csv} says as what each printed row is entered, which
 * figure shows it and what that must be, to half a unit of the last printed digit.
 */
class WholeBudgetsTest {

    private static Map<String, List<CSVRecord>> budgets() throws IOException {
        return PublishedFiles.rows("whole_budgets.csv").stream()
                .collect(Collectors.groupingBy(row -> row.get("budget"), LinkedHashMap::new, Collectors.toList()));
    }

    @TestFactory
    Stream<DynamicNode> each_row_and_the_total_are_as_printed() throws IOException, ScenarioException {
        List<DynamicNode> all = new ArrayList<>();
        for (Map.Entry<String, List<CSVRecord>> budget : budgets().entrySet()) {
            Plan plan = WholeBudget.plan(budget.getValue());
            all.add(DynamicContainer.dynamicContainer(
                    budget.getKey(),
                    budget.getValue().stream()
                            .filter(row -> !row.get("reads").isEmpty())
                            .map(row -> DynamicTest.dynamicTest(row.get("row"), () -> agrees(row, plan)))));
        }
        return all.stream();
    }

    private static void agrees(CSVRecord row, Plan plan) throws ScenarioException {
        String expected = row.get("expected");
        double allowed = row.get("within").isEmpty()
                ? PublishedRow.halfOfLastDigit(expected)
                : Double.parseDouble(row.get("within"));
        List<String> settings = row.get("settings").isEmpty() ? List.of() : List.of(row.get("settings"));
        assertThat(plan.with(settings).quantity(row.get("reads")).value())
                .isCloseTo(Double.parseDouble(expected), within(allowed));
    }

    @Test
    void every_row_names_its_source_and_says_why_where_the_printed_digits_do_not_decide() throws IOException {
        assertThat(PublishedFiles.rows("whole_budgets.csv"))
                .hasSizeGreaterThan(50)
                .allSatisfy(row -> {
                    assertThat(row.get("source")).isNotBlank();
                    assertThat(row.get("within").isEmpty())
                            .isEqualTo(row.get("reason").isEmpty());
                });
    }

    /** What the rows do not name costs nothing: costs are the printed rows and no more. */
    @Test
    void what_a_source_does_not_charge_is_nothing() throws IOException, ScenarioException {
        Plan plan = WholeBudget.plan(budgets().get("kinokawa"));
        for (String row : List.of("care", "replanting", "water", "electricity", "heating", "operating_interest")) {
            assertThat(plan.quantity("budget_value[" + row + "]").value())
                    .as(row)
                    .isZero();
        }
        assertThat(plan.quantity("labour_hours_total").value()).isPositive();
        assertThat(plan.quantity("budget_value[work_of_family]").value()).isZero();
    }
}
