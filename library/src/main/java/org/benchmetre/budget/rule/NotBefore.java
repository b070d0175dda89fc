package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;

/**
 * Of two days of one row the second is not before the first. Where either is blank nothing is asked.
 *
 * @param first dates as texts, year first, so that they sort as in time
 * @param last dates along the same axis
 */
public record NotBefore(Line first, Line last) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(first, last);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < last.size(); cell++) {
            Given from = values.of(first).get(cell);
            Given until = values.of(last).get(cell);
            if (from.filled() && until.filled() && until.text().compareTo(from.text()) < 0) {
                String expected = "a date not before " + from.text() + " of " + first.label();
                found.add(Breach.of(last, cell, until, Breach.shown(until, values.currency()), expected));
            }
        }
        return found;
    }
}
