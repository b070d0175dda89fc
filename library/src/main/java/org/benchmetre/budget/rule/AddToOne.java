package org.benchmetre.budget.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Refused;
import org.benchmetre.budget.Rule;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;

/**
 * Shares add up to one along an axis, for each position of the other. Where no cell is filled there is nothing to add.
 *
 * @param line shares
 * @param along the axis they add up along
 * @param what the shares, in words
 */
public record AddToOne(Line line, Axis along, String what) implements Rule {

    /** What is left when thirds are written with seven digits. */
    private static final double NEAR = 1e-6;

    private static final double SHOWN = 1e9;

    @Override
    public Set<Line> lines() {
        return Set.of(line);
    }

    @Override
    public List<Refused> broken(Values values) {
        Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
        for (int cell = 0; cell < line.size(); cell++) {
            groups.computeIfAbsent(other(cell), any -> new ArrayList<>()).add(cell);
        }
        List<Refused> found = new ArrayList<>();
        for (List<Integer> cells : groups.values()) {
            List<Integer> filled = cells.stream()
                    .filter(cell -> values.of(line).get(cell).filled())
                    .toList();
            double sum = filled.stream()
                    .mapToDouble(cell -> values.of(line).get(cell).number())
                    .sum();
            if (!filled.isEmpty() && !(Math.abs(sum - 1) <= NEAR)) {
                int first = filled.get(0);
                String shown = what + " that add up to " + Numbers.plain(Math.rint(sum * SHOWN) / SHOWN);
                Given given = values.of(line).get(first);
                found.add(Breach.of(line, first, given, shown, what + " that add up to 1"));
            }
        }
        return found;
    }

    private int other(int cell) {
        int position = 0;
        for (Axis axis : line.axes()) {
            position = axis.equals(along) ? position : line.positionOf(cell).on(axis);
        }
        return line.axes().size() == 1 ? 0 : position;
    }
}
