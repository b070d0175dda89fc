package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.workbook.Adjustments;
import org.benchmetre.workbook.LibreOfficeReferee;
import org.benchmetre.workbook.PoiReferee;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What others recalculate of loans: as read, after seeded changes, rounded, and with a spare row filled in part. */
class LoansInAWorkbookTest {

    private static final int SEEDS = 8;

    private static final Budget PLAN = LoanPlan.of(
            "loan,label,amount,rate,term,payments_per_year,kind,interest_only_months,balloon,fee,security,first_month",
            "bank,Farm bank,150000 USD,6.5 %,10,4,equal_principal,12,20000,0.01,land house,6",
            "pump,Dealer,9000,0.09,4,12,,,,,equipment,");

    private static List<Map<Line, Map<Integer, Given>>> cases() {
        List<Map<Line, Map<Integer, Given>>> cases = new ArrayList<>(List.of(Map.of()));
        for (int seed = 1; seed <= SEEDS; seed++) {
            cases.add(Adjustments.seeded(PLAN, seed));
        }
        cases.add(Map.of(PLAN.line("loan_rounding"), Map.of(0, Given.text("each_payment"))));
        cases.add(Map.of(PLAN.line("loan_amount"), typed("loan_amount", 1234.5)));
        cases.add(Map.of(
                PLAN.line("loan_amount"),
                typed("loan_amount", 1234.5),
                PLAN.line("loan_rate"),
                typed("loan_rate", 0.1),
                PLAN.line("loan_term"),
                typed("loan_term", 2)));
        return cases;
    }

    /** Typed into the last row, which came empty. */
    private static Map<Integer, Given> typed(String line, double number) {
        return Map.of(
                PLAN.line(line).size() - 1, Given.number(number, PLAN.line(line).unit()));
    }

    /** Nobody refuses what is typed into a workbook: 20 years of months where there is room for 48 payments. */
    @Test
    void a_term_without_room_is_warned_of_and_paid_back_all_the_same() {
        Budget typed = Sample.typedOver(PLAN, "loan_term[pump]=20 a");
        Figures f = Figures.of(typed);
        assertThat(f.text(typed.line("loan_room"), 1)).contains("write the term in loans.csv");
        assertThat(Figures.of(PLAN).text(PLAN.line("loan_room"), 1)).isEmpty();
        assertThat(f.number("loan_payment_count", "pump")).isEqualTo(48);
        assertThat(f.number("loan_balance", "pump", "48")).isZero();
    }

    @Test
    void poi_agrees() throws IOException {
        PoiReferee referee = new PoiReferee(PLAN);
        cases().forEach(referee::add);
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void libre_office_agrees(@TempDir Path folder) throws IOException {
        LibreOfficeReferee.require();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book book = referee.book(PLAN);
        cases().forEach(book::add);
        assertThat(referee.differences()).isEmpty();
    }
}
