package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.input.FundKind;
import org.junit.jupiter.api.Test;

/** What a lender would count of each kind of use. */
class SecurityKindsTest {

    @Test
    void cash_and_other_uses_do_not_count_and_the_rest_as_entered() {
        Budget plan = LoanPlan.of("");
        Figures f = Figures.of(Sample.with(plan, "security_share_equipment=0.6 1"));
        assertThat(f.number("security_share", "land")).isEqualTo(0.7);
        assertThat(f.number("security_share", "house")).isEqualTo(0.35);
        assertThat(f.number("security_share", "equipment")).isEqualTo(0.6);
        assertThat(f.number("security_share", "growing")).isEqualTo(0.1);
        assertThat(f.number("security_share", "plants")).isZero();
        assertThat(f.number("security_share", "cash")).isZero();
        assertThat(f.number("security_share", "other")).isZero();
    }

    @Test
    void keys_and_labels_stand_in_one_order() {
        Budget plan = LoanPlan.of("");
        Figures f = Figures.of(plan);
        for (int row = 0; row < FundKind.KEYS.size(); row++) {
            assertThat(f.text(plan.line("fund_kind"), row)).isEqualTo(FundKind.KEYS.get(row));
        }
        assertThat(f.text(plan.line("fund_kind_label"), 0)).isEqualTo("Land and site");
        assertThat(f.text(plan.line("fund_kind_label"), 6)).isEqualTo("Other");
    }
}
