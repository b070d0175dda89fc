package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every loan, of all kinds, over seeded ones. */
class LoanLawsTest {

    /** Some hundred sums of doubles, against the size of the loan. */
    private static final double NEAR = 1e-9;

    private static final int YEARS = 30;
    private static final String HEADER =
            "loan,amount,rate,term,payments_per_year,kind,interest_only_months,balloon,first_month";

    /** A loan as drawn. */
    private record Drawn(double amount, double rate, int payments, int aYear, int first, boolean rounded, String row) {

        static Drawn of(long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            double amount = Math.rint(random.nextDouble(1_000, 500_000) * 100) / 100;
            double rate = random.nextInt(8) == 0 ? 0 : random.nextDouble(0.15);
            int aYear = List.of(1, 4, 12).get(random.nextInt(3));
            int years = random.nextInt(1, YEARS);
            String kind = random.nextBoolean() ? "equal_payment" : "equal_principal";
            int only = random.nextBoolean() ? 0 : random.nextInt(years * 12);
            double balloon = random.nextBoolean() ? 0 : amount * random.nextDouble();
            int first = random.nextBoolean() ? 0 : random.nextInt(1, 12);
            String row = String.format(
                    Locale.ROOT,
                    "bank,%s,%s,%d,%d,%s,%d,%s,%s",
                    amount,
                    rate,
                    years,
                    aYear,
                    kind,
                    only,
                    balloon,
                    first == 0 ? "" : Integer.toString(first));
            return new Drawn(amount, rate, years * aYear, aYear, first, random.nextBoolean(), row);
        }
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_loan_is_paid_back(long seed) {
        Drawn loan = Drawn.of(seed);
        String farm = loan.rounded() ? "line,value,unit,source\nloan_rounding,each_payment,,\n" : "";
        Figures f = Figures.of(LoanPlan.with(farm, HEADER, loan.row()));
        double principal = 0;
        double interest = 0;
        double worth = 0;
        double period = 1 + loan.rate() / loan.aYear();
        for (int k = 1; k <= loan.payments(); k++) {
            double paid = at(f, "loan_principal", k);
            assertThat(paid).isGreaterThanOrEqualTo(-NEAR * loan.amount());
            assertThat(at(f, "loan_balance", k)).isBetween(0.0, loan.amount());
            principal += paid;
            interest += at(f, "loan_interest", k);
            worth += (paid + at(f, "loan_interest", k)) / Math.pow(period, k);
        }
        assertThat(principal).isCloseTo(loan.amount(), within(NEAR * loan.amount()));
        assertThat(at(f, "loan_balance", loan.payments())).isZero();
        double years = 0;
        double back = 0;
        for (int y = 0; y <= YEARS; y++) {
            years += f.number("interest_of_year", Integer.toString(y));
            back += f.number("principal_of_year", Integer.toString(y));
        }
        assertThat(years).isCloseTo(interest, within(NEAR * (interest + loan.amount())));
        assertThat(back).isCloseTo(loan.amount(), within(NEAR * loan.amount()));
        assertThat(f.number("debt_at_year_end", Integer.toString(YEARS))).isZero();
        if (!loan.rounded() && loan.first() == 0) {
            assertThat(worth).isCloseTo(loan.amount(), within(NEAR * loan.amount()));
        }
        months(f, loan);
    }

    /** Years end with their month; what a month pays is what the year pays less what the others do. */
    private static void months(Figures f, Drawn loan) {
        for (int year = 1; year <= 2; year++) {
            double interest = 0;
            double principal = 0;
            for (int month = 12 * year - 11; month <= 12 * year; month++) {
                interest += f.number("interest_in_month", Integer.toString(month));
                principal += f.number("principal_in_month", Integer.toString(month));
            }
            String key = Integer.toString(year);
            assertThat(interest).isCloseTo(f.number("interest_of_year", key), within(NEAR * loan.amount()));
            assertThat(principal).isCloseTo(f.number("principal_of_year", key), within(NEAR * loan.amount()));
        }
    }

    private static double at(Figures f, String line, int payment) {
        return f.number(line, "bank", Integer.toString(payment));
    }
}
