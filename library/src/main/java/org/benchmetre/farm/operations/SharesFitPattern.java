package org.benchmetre.farm.operations;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.rule.Breach;

/**
 * Tasks that go by months have shares of months, and no others have.
 *
 * @param pattern how a task is spread over the year
 * @param share shares of the months, by task and month
 */
record SharesFitPattern(Line pattern, Line share) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(pattern, share);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        int months = share.axes().get(1).size();
        for (int row = 0; row < pattern.size(); row++) {
            Given spread = values.of(pattern).get(row);
            boolean shared = values.of(share).subList(row * months, (row + 1) * months).stream()
                    .anyMatch(Given::filled);
            boolean byMonths = spread.text().equals(Tasks.MONTHS);
            if (byMonths && !shared) {
                String expected = "shares of months that add up to 1";
                found.add(Breach.of(
                        share,
                        row * months,
                        Breach.placed(values.of(share).get(row * months), spread),
                        "no share in any month",
                        expected));
            }
            if (shared && spread.filled() && !byMonths) {
                String shown = Breach.shown(spread, values.currency()) + " beside shares of months";
                found.add(Breach.of(pattern, row, spread, shown, Tasks.MONTHS + " or nothing"));
            }
        }
        return found;
    }
}
