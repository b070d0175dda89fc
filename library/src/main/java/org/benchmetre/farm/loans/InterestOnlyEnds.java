package org.benchmetre.farm.loans;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;
import org.benchmetre.farm.input.Months;

/**
 * Months in which only interest is paid end before the loan does.
 *
 * @param months how many, mo
 * @param term of the loan, a
 */
record InterestOnlyEnds(Line months, Line term) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(months, term);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int loan = 0; loan < months.size(); loan++) {
            Given only = values.of(months).get(loan);
            Given years = values.of(term).get(loan);
            if (only.filled() && years.filled() && !(only.number() < years.number() * Months.IN_A_YEAR)) {
                String limit = Breach.shown(years, values.currency());
                found.add(Breach.of(
                        months,
                        loan,
                        only,
                        Breach.shown(only, values.currency()),
                        "fewer months than the term of the loan, " + limit + ", has,"));
            }
        }
        return found;
    }
}
