package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.entry.Quoted;
import org.benchmetre.budget.entry.Refusal;

/**
 * The low end of a range does not lie above the high one, where both are known.
 *
 * @param low the low end
 * @param high the high end
 */
record LowToHigh(Line low, Line high) implements Rule {

    @Override
    public Set<Line> lines() {
        return Set.of(low, high);
    }

    @Override
    public List<Refused> broken(Values values) {
        List<Refused> found = new ArrayList<>();
        for (int cell = 0; cell < low.size(); cell++) {
            Given least = values.of(low).get(cell);
            Given most = values.of(high).get(cell);
            if (least.filled() && most.filled() && least.number() > most.number()) {
                String expected = "at most the high end, " + Numbers.plain(most.number()) + ", for " + low.label()
                        + " (" + low.address(cell) + ")";
                String shown = Quoted.text(Numbers.plain(least.number()));
                found.add(new Refused(low, least.origin(), new Refusal(shown, expected)));
            }
        }
        return found;
    }
}
