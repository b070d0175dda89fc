package org.benchmetre.workbook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.benchmetre.budget.Bounds;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/** Seeded changes to the entries of any budget: numbers up or down by half within their bounds, choices at random. */
public final class Adjustments {

    private final Budget budget;
    private final SplittableRandom random;
    private final Map<Line, Map<Integer, Given>> changes = new LinkedHashMap<>();

    private Adjustments(Budget budget, long seed) {
        this.budget = budget;
        this.random = new SplittableRandom(seed);
    }

    /**
     * Changes to about a third of all filled entry cells.
     *
     * @param budget any budget
     * @param seed of the random numbers
     * @return for each entry line the new value by cell, as {@link Budget#with} takes it
     */
    public static Map<Line, Map<Integer, Given>> seeded(Budget budget, long seed) {
        Adjustments adjustments = new Adjustments(budget, seed);
        budget.lines().stream().filter(line -> budget.entry(line).isPresent()).forEach(adjustments::line);
        return adjustments.changes;
    }

    private void line(Line line) {
        for (int cell = 0; cell < line.size(); cell++) {
            Given given = budget.given(line).get(cell);
            if (given.filled() && random.nextInt(3) == 0) {
                Given changed = line.kind() == Kind.TEXT ? text(line) : number(line, given);
                if (changed != null) {
                    changes.computeIfAbsent(line, any -> new LinkedHashMap<>()).put(cell, changed);
                }
            }
        }
    }

    private Given text(Line line) {
        Entry entry = budget.entry(line).orElseThrow();
        List<String> texts = entry.keysOf() == null || !line.axes().isEmpty()
                ? entry.allowed()
                : budget.given(entry.keysOf()).stream()
                        .map(Given::text)
                        .filter(key -> !key.isEmpty())
                        .toList();
        return texts.isEmpty() ? null : Given.text(texts.get(random.nextInt(texts.size())));
    }

    private Given number(Line line, Given given) {
        Bounds bounds = budget.entry(line).orElseThrow().bounds();
        double typed = given.typed() * (0.5 + random.nextDouble());
        typed = bounds.whole() ? Math.rint(typed) : typed;
        Given changed = Given.typed(typed, given.typedIn(), line.unit());
        return bounds.refusal(changed.number(), line.unit()).isEmpty() ? changed : null;
    }
}
