package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FundCommandTest {

    private static Path sample(String name) {
        return Path.of("..", "samples", name);
    }

    private static List<CSVRecord> csv(Object... arguments) throws IOException {
        Ran ran = Ran.with(arguments);
        assertThat(ran.exit()).isZero();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        return format.parse(new StringReader(ran.out())).getRecords();
    }

    private static double value(List<CSVRecord> records, String line, String index) {
        return records.stream()
                .filter(each ->
                        each.get("line").equals(line) && each.get("index").equals(index))
                .mapToDouble(each -> Double.parseDouble(each.get("value")))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house", "two-crop-glasshouse"})
    void it_says_how_much_who_pays_and_when_it_is_paid_back_on_a_screen_or_two(String name) {
        Ran ran = Ran.with("fund", sample(name));

        assertThat(ran.exit()).isZero();
        assertThat(ran.errLines()).allSatisfy(line -> assertThat(line).startsWith("Warning: Quotations"));
        assertThat(ran.outLines())
                .hasSizeBetween(20, 60)
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(ran.out())
                .startsWith("Funds: How much, what for, and who pays?\nThe start takes ")
                .contains("The owner brings ", "\nLoans: What is borrowed, and when is it paid back?\nLoans of ")
                .contains("In full: price --page NAME, of ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"trough-house", "container-house", "two-crop-glasshouse"})
    void csv_has_uses_and_sources_that_agree_and_loans_that_are_paid_back(String name) throws IOException {
        List<CSVRecord> records = csv("fund", sample(name), "--csv");

        double uses = value(records, "uses_total", "");
        assertThat(value(records, "sources_total", "")).isCloseTo(uses, within(1e-9 * uses));
        assertThat(records)
                .filteredOn(each -> each.get("line").equals("loan_last_year"))
                .isNotEmpty();
        assertThat(records).extracting(each -> each.get("line")).doesNotContain("first_cost_total", "way_key");
    }

    @Test
    void a_sum_that_is_set_is_brought_less_by_the_loan_that_balances() throws IOException {
        List<CSVRecord> before = csv("fund", Ran.SAMPLE, "--csv");
        List<CSVRecord> after = csv("fund", Ran.SAMPLE, "--csv", "--set", "owner_funds=25000");

        assertThat(value(after, "loan_amount_counted", "equipment"))
                .isEqualTo(value(before, "loan_amount_counted", "equipment"));
        assertThat(value(after, "loan_amount_counted", "house"))
                .isLessThan(value(before, "loan_amount_counted", "house") - 999);
    }

    @Test
    void without_loans_the_owner_pays_and_nothing_is_said_of_payments() {
        Ran ran = Ran.with("fund", Path.of("..", "templates", "starter"));

        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains(" USD (100 %).\n", "No loan is counted")
                .doesNotContain("A lender would count", "what is missing");
    }

    @Test
    void what_is_wrong_with_sources_is_said() {
        Ran ran = Ran.with("fund", Ran.SAMPLE, "--set", "grant_funds=90000");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("Sources exceed uses by ", "lower a loan or a grant");
    }
}
