package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/** An entry shows as many decimals as what stands in its cell takes. */
class NumberFormatsTest {

    /** A row of a table stands in the unit of its column: 7.5 % as 0.075. */
    @Test
    void a_percentage_in_a_table_keeps_its_digits() {
        Budget typed = Sample.with(
                Sample.troughHouse(),
                "loan_key[spare_1]=bank",
                "loan_amount[spare_1]=9000 money_nominal",
                "loan_rate[spare_1]=7.5 %.nominal/a",
                "loan_term[spare_1]=3 a");
        NumberFormats formats = new NumberFormats(Figures.of(typed));
        assertThat(formats.decimals(typed.line("loan_rate")).count()).isEqualTo(3);
    }

    /** A single value stands as it was typed. */
    @Test
    void a_percentage_alone_stands_as_it_was_typed() {
        Budget typed = Sample.with(Sample.troughHouse(), "first_grade_share=87.5 %");
        assertThat(new NumberFormats(Figures.of(typed)).typed(typed.line("first_grade_share")))
                .isEqualTo("0.0");
    }
}
