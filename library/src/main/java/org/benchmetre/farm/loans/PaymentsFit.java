package org.benchmetre.farm.loans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.rule.Breach;
import org.benchmetre.farm.input.FarmTable;

/**
 * A loan has a whole number of payments, and the schedule has room for all of them.
 *
 * @param term the term of each loan, a
 * @param payments how many payments a year, as a word
 * @param room payments that the schedule has rows for
 */
record PaymentsFit(Line term, Line payments, int room) implements Rule {

    /** What is left of a term in months that is written in years with eight digits. */
    private static final double NEAR = 1e-5;

    @Override
    public Set<Line> lines() {
        return Set.of(term, payments);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int loan = 0; loan < term.size(); loan++) {
            Given years = values.of(term).get(loan);
            if (years.filled()) {
                String aYear = values.of(payments).get(loan).text();
                wrong(loan, years, aYear.isEmpty() ? FarmTable.USUAL_PAYMENTS : Integer.parseInt(aYear), values)
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Refused> wrong(int loan, Given years, int aYear, Values values) {
        double count = years.number() * aYear;
        double whole = Math.rint(count);
        String shown = Breach.shown(years, values.currency());
        if (!(Math.abs(count - whole) <= NEAR) || whole == 0) {
            return Optional.of(Breach.of(
                    term,
                    loan,
                    years,
                    shown,
                    "a term of whole payments, which come " + (aYear == 1 ? "once" : aYear + " times") + " a year,"));
        }
        return whole > room
                ? Optional.of(Breach.of(
                        term,
                        loan,
                        years,
                        shown + ", which takes " + Numbers.shown(whole) + " payments",
                        "at most " + room
                                + " payments, as many as the schedule has rows; to have more, write the term in "
                                + FarmTable.LOANS.file() + ", not elsewhere,"))
                : Optional.empty();
    }
}
