package org.benchmetre.budget;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The lines that some lines follow from, directly or through others, themselves included. */
final class Precedents {

    private Precedents() {}

    static Set<Line> of(Collection<Line> lines, Map<Line, Formula> formulas) {
        Set<Line> found = new LinkedHashSet<>(lines);
        Deque<Line> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            Formula formula = formulas.get(open.pop());
            if (formula != null) {
                Dependencies.linesOf(formula).stream().filter(found::add).forEach(open::push);
            }
        }
        return found;
    }
}
