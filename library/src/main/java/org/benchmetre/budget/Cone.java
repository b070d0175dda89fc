package org.benchmetre.budget;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lines between an entry and a target: those that move with the entry and that the target is made of. */
final class Cone {

    private final Set<Line> lines;

    private Cone(Set<Line> lines) {
        this.lines = lines;
    }

    static Cone between(Line entry, Line target, Map<Line, Formula> formulas) {
        Map<Line, Collection<Line>> reads = new HashMap<>();
        Map<Line, Collection<Line>> readers = new HashMap<>();
        formulas.forEach((line, formula) -> Dependencies.linesOf(formula).forEach(read -> {
            reads.computeIfAbsent(line, key -> new LinkedHashSet<>()).add(read);
            readers.computeIfAbsent(read, key -> new LinkedHashSet<>()).add(line);
        }));
        Set<Line> moved = reached(entry, readers);
        moved.retainAll(reached(target, reads));
        moved.remove(entry);
        return new Cone(moved);
    }

    private static Set<Line> reached(Line start, Map<Line, Collection<Line>> steps) {
        Set<Line> found = new LinkedHashSet<>(List.of(start));
        Deque<Line> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            for (Line next : steps.getOrDefault(open.pop(), List.of())) {
                if (found.add(next)) {
                    open.push(next);
                }
            }
        }
        return found;
    }

    boolean has(Line line) {
        return lines.contains(line);
    }
}
