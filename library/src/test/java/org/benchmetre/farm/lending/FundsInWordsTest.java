package org.benchmetre.farm.lending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Fault;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of funds and loans: who pays, what secures loans, and what does not fit. */
class FundsInWordsTest {

    /** One loan with an amount, typed into the row that came empty. */
    private static final String[] BANK = {
        "loan_key[spare_1]=bank",
        "loan_label[spare_1]=Farm bank",
        "loan_rate[spare_1]=0.06 nominal/a",
        "loan_term[spare_1]=3 a",
        "loan_payments_a_year[spare_1]=1"
    };

    private static Budget blank;
    private static Budget lent;

    @BeforeAll
    static void read() {
        blank = Sample.with(Sample.with(Sample.troughHouse(), BANK), "owner_funds=1000 money_nominal");
        lent = Sample.with(blank, "loan_amount[spare_1]=6000 money_nominal");
    }

    private static Figures with(Budget budget, String... settings) {
        return Figures.of(settings.length == 0 ? budget : Sample.with(budget, settings));
    }

    @Test
    void a_loan_without_an_amount_brings_what_is_missing() {
        assertThat(with(blank).text("funds_sources_told"))
                .startsWith("The owner brings 1,000 ")
                .contains(", loans ")
                .endsWith(" Farm bank brings what is missing.");
        assertThat(with(blank).text("funds_owner_unused")).isEmpty();
        assertThat(with(blank).text("funds_cautions")).isEmpty();
    }

    @Test
    void the_owner_brings_what_is_missing_where_every_loan_has_an_amount_and_what_was_entered_is_not_used() {
        Figures f = with(lent);
        assertThat(f.text("funds_sources_told"))
                .contains("loans 6,000 ")
                .endsWith(" The owner brings what is missing.");
        assertThat(f.text("funds_owner_unused"))
                .startsWith("Every loan has an amount, so that the 1,000 ")
                .contains("are not used");
        assertThat(f.text("funds_cautions")).isEqualTo(f.text("funds_owner_unused"));
    }

    @Test
    void shares_of_uses_and_of_sources_are_all_of_it() {
        Figures f = with(lent, "grant_funds=3000 money_nominal");
        double sources = f.number("owner_share") + f.number("grants_share") + f.number("loans_share");
        assertThat(sources).isCloseTo(100, within(1e-9));
        double uses = 0;
        for (int row = 0; row < lent.line("start_use_share").size(); row++) {
            uses += f.number(lent.line("start_use_share"), row);
        }
        assertThat(uses).isCloseTo(100, within(1e-9));
    }

    /** With grants of a million nothing is left for the owner to bring. */
    @Test
    void sources_above_uses_are_warned_of() {
        Figures f = with(lent, "grant_funds=1000000 money_nominal");
        assertThat(f.text("funds_exceed")).startsWith("Sources exceed uses by ").endsWith(": lower a loan or a grant.");
        assertThat(f.text("funds_sources_told"))
                .startsWith("Loans and grants bring ")
                .endsWith(" more than the start takes: lower one of them.");
        assertThat(f.text("funds_cautions")).startsWith(f.text("funds_exceed") + " Every loan has an amount");
    }

    @Test
    void two_loans_without_an_amount_are_warned_of_and_share_what_is_missing() {
        Budget two = Sample.typedOver(
                blank,
                "loan_key[spare_2]=dealer",
                "loan_rate[spare_2]=0.06 nominal/a",
                "loan_term[spare_2]=3 a",
                "loan_payments_a_year[spare_2]=1");
        Figures f = Figures.of(two);
        assertThat(f.text("funds_two_blank"))
                .isEqualTo("2 loans have no amount and share what is missing: leave only one of them blank.");
        assertThat(two.warnings()).contains(two.line("funds_two_blank"), two.line("funds_exceed"));
        assertThat(f.number("loan_amount_counted", "spare_1"))
                .isPositive()
                .isEqualTo(f.number("loan_amount_counted", "spare_2"));
        assertThat(with(blank).text("funds_two_blank")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Janury, found \"Janury\"",
        "13, found \"13\"",
        "'', found nothing",
        "march, found \"march\"",
    })
    void a_month_in_which_cash_cannot_begin_is_refused_by_name(String month, String found) {
        assertThatThrownBy(
                        () -> Benchmetre.read(Sample.TROUGH_HOUSE, Optional.empty(), List.of("start_month=" + month)))
                .isInstanceOfSatisfying(
                        ScenarioException.class,
                        refused -> assertThat(refused.faults().faults())
                                .singleElement()
                                .extracting(Fault::message)
                                .asString()
                                .contains(
                                        found,
                                        "expected one of planting, jan, feb, mar, apr, may, jun, jul, aug, sep, oct, nov, dec for Cash"
                                                + " begins in (start_month)")
                                .matches(told -> told.contains("did you mean mar?") == month.equals("march")));
    }

    /** All of the security is the limit unless another is entered. */
    @Test
    void loans_above_the_limit_are_said_so() {
        double security = with(lent).number("security_total");
        String under = "loan_amount[spare_1]=" + 0.99 * security + " money_nominal";
        String over = "loan_amount[spare_1]=" + 1.01 * security + " money_nominal";
        assertThat(with(lent, under).text("funds_limit_told")).isEmpty();
        assertThat(with(lent, under).text("funds_security_told")).endsWith("loans are 99 % of it.");
        assertThat(with(lent, over).text("funds_limit_told")).startsWith("That is more than the 100 % ");
        assertThat(with(lent, over, "loan_to_value_limit=1.1 1").text("funds_limit_told"))
                .isEmpty();
    }

    @Test
    void without_a_loan_nothing_is_said_of_security_or_payments() {
        Figures f = Figures.of(Sample.troughHouse());
        assertThat(f.text("funds_security_told")).isEmpty();
        assertThat(f.text("funds_limit_told")).isEmpty();
        assertThat(f.text("loans_told")).startsWith("No loan is counted");
        assertThat(f.text("loans_end_told")).isEmpty();
        assertThat(f.number("loans_last_year")).isZero();
    }

    /** 6,000 at 6 % in three equal payments: 6000 times 0.06/(1 - 1.06^-3) = 2,245 a year, the last in year 3. */
    @Test
    void payments_are_told_with_the_year_of_the_last_one() {
        Figures f = with(lent);
        assertThat(f.number("loan_full_payment", "spare_1"))
                .isCloseTo(6000 * 0.06 / (1 - Math.pow(1.06, -3)), within(1e-8));
        assertThat(f.text("loans_told"))
                .contains(" take 2,245 ", "; the last payment falls in year 3.")
                .startsWith("Loans of 6,000 ");
        assertThat(f.text("loans_end_told")).isEmpty();
    }

    /** Equal principal of 2,000 and 6 % of 6,000 beside it; the plan ends a year before the loan. */
    @Test
    void the_first_of_falling_payments_is_told_and_what_is_owed_when_the_plan_ends() {
        Figures f = with(lent, "loan_kind[spare_1]=equal_principal", "plan_years=2 a");
        assertThat(f.number("loan_full_payment", "spare_1")).isCloseTo(2360, within(1e-9));
        assertThat(f.text("loans_end_told")).startsWith("At the end of the plan 2,000 ");
    }

    /** The pump lasts so many years; a loan of a year more outlives it, one of its life does not. */
    @Test
    void a_part_that_lasts_shorter_than_its_loan_is_warned_of() {
        Budget paid = Sample.with(lent, "material_paid_by[pump]=bank", "material_life[pump]=3 1");
        assertThat(with(paid).text(paid.line("material_outlived"), pump(paid))).isEmpty();
        Budget worn = Sample.with(paid, "material_life[pump]=2 1");
        assertThat(with(worn).text(worn.line("material_outlived"), pump(worn)))
                .isEqualTo("It lasts shorter than the loan that pays it.");
        assertThat(with(worn).number("material_loan_term", "pump")).isEqualTo(3);
    }

    private static int pump(Budget budget) {
        return budget.line("material_outlived").axes().get(0).indexOf("pump");
    }

    /** Parts of a kind count with its share, so that they add up to what is counted of the kind beside house by area and lists. */
    @Test
    void security_of_a_part_is_what_is_paid_times_the_share_of_its_kind() {
        Figures f = with(lent, "security_share_growing=0.2 1");
        assertThat(f.number("material_security", "trough"))
                .isCloseTo(0.2 * f.number("material_purchase_cost", "trough"), within(1e-9));
    }
}
