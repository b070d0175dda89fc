package org.benchmetre.budget;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lines between entries and targets: those that move with any of the entries and that any of the targets is made of. */
final class Cone {

    private final Set<Line> lines;

    private Cone(Set<Line> lines) {
        this.lines = lines;
    }

    static Cone between(Line entry, Line target, Map<Line, Formula> formulas) {
        return between(List.of(entry), List.of(target), formulas);
    }

    /** An entry is no part of it, nor what only another entry is made of, since each has a stand-in. */
    static Cone between(List<Line> entries, List<Line> targets, Map<Line, Formula> formulas) {
        Map<Line, Collection<Line>> reads = new HashMap<>();
        Map<Line, Collection<Line>> readers = new HashMap<>();
        formulas.forEach((line, formula) -> Dependencies.linesOf(formula).forEach(read -> {
            reads.computeIfAbsent(line, key -> new LinkedHashSet<>()).add(read);
            readers.computeIfAbsent(read, key -> new LinkedHashSet<>()).add(line);
        }));
        entries.forEach(reads::remove);
        Set<Line> moved = reached(entries, readers);
        moved.retainAll(reached(targets, reads));
        entries.forEach(moved::remove);
        return new Cone(moved);
    }

    private static Set<Line> reached(List<Line> starts, Map<Line, Collection<Line>> steps) {
        Set<Line> found = new LinkedHashSet<>(starts);
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
