package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;

/**
 * Of two cells of a row one is filled and one is blank, wherever a third is filled: a flow falls in a month or in a year. Spare rows may
 * have neither.
 *
 * @param one an entry
 * @param other an entry along the same axis
 * @param with where this one is filled, one of them must be
 */
public record OneOfTwo(Line one, Line other, Line with) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(one, other, with);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < one.size(); cell++) {
            Given first = values.of(one).get(cell);
            Given second = values.of(other).get(cell);
            Given beside = values.of(with).get(cell);
            if (first.filled() && second.filled()) {
                String both = "nothing, since " + one.label() + " is given,";
                found.add(Breach.of(other, cell, second, Breach.shown(second, values.currency()), both));
            } else if (beside.filled() && !first.filled() && !second.filled() && !one.isSpare(cell)) {
                String neither = "a value here or for " + other.label() + ", since " + with.label() + " is given,";
                found.add(Breach.of(one, cell, Breach.placed(first, beside), "nothing", neither));
            }
        }
        return found;
    }
}
