package org.benchmetre.workbook;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;

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
        return adjustments.allowed();
    }

    /** Without the lines that break a rule between cells: random cells seldom fit one another. */
    private Map<Line, Map<Integer, Given>> allowed() {
        while (true) {
            Layer layer = new Layer();
            changes.forEach((line, cells) -> cells.forEach((cell, value) -> layer.put(line, cell, value)));
            Set<Line> broken = new HashSet<>();
            budget.gate().lay(layer, line -> false, no -> broken.add(no.line()));
            if (broken.isEmpty()) {
                return changes;
            }
            boolean fewer = changes.keySet().removeAll(broken)
                    || changes.keySet().removeIf(line -> sharesAxis(line, broken) || sharesRow(line, broken));
            if (!fewer) {
                throw new IllegalStateException("Nothing that was changed has to do with " + broken + ".");
            }
        }
    }

    /** Single values and the ends of their ranges stand in one row of their file. */
    private boolean sharesRow(Line line, Set<Line> broken) {
        Home home = home(line);
        return broken.stream()
                .map(this::home)
                .anyMatch(other -> other.table().equals(Home.SINGLE)
                        && other.table().equals(home.table())
                        && other.rows().equals(home.rows()));
    }

    private Home home(Line line) {
        return budget.entry(line).orElseThrow().home();
    }

    private static boolean sharesAxis(Line line, Set<Line> broken) {
        return broken.stream().anyMatch(other -> !Collections.disjoint(other.axes(), line.axes()));
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
        List<String> texts = entry.form().keysOf().isEmpty() || !line.axes().isEmpty()
                ? entry.allowed()
                : budget.given(budget.line(entry.form().keysOf())).stream()
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
        return bounds.takes(changed.number()) ? changed : null;
    }
}
