package org.benchmetre.budget;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * The order in which lines can be computed: each after all it reads. Lines that read one another in a circle, such as a balance and
 * its interest, are one group, and so is a line that reads itself; whether their cells go round in a circle too is not seen here.
 *
 * <p>Found by R. Tarjan's search for strongly connected parts (SIAM Journal on Computing 1, 1972), with a stack of its own, so that
 * a chain of any length fits.
 */
final class LineOrder {

    /** Lines to be computed together; a circle when they read one another or themselves. */
    record Group(List<Line> lines, boolean isCircle) {}

    private static final class Visit {
        private final Line line;
        private final int number;
        private final Iterator<Line> reads;
        private int lowest;
        private boolean readsItself;

        Visit(Line line, int number, Iterator<Line> reads) {
            this.line = line;
            this.number = number;
            this.lowest = number;
            this.reads = reads;
        }
    }

    private final Map<Line, Formula> formulas;
    private final Map<Line, Integer> numbers = new HashMap<>();
    private final Map<Line, Boolean> waiting = new HashMap<>();
    private final Deque<Line> open = new ArrayDeque<>();
    private final List<Group> groups = new ArrayList<>();

    private LineOrder(Map<Line, Formula> formulas) {
        this.formulas = formulas;
    }

    /** Some lines and all they read, each group after those it reads. */
    static List<Group> of(Map<Line, Formula> formulas, Collection<Line> lines) {
        LineOrder order = new LineOrder(formulas);
        lines.forEach(order::visit);
        return order.groups;
    }

    private void visit(Line start) {
        if (numbers.containsKey(start)) {
            return;
        }
        Deque<Visit> path = new ArrayDeque<>();
        path.push(begin(start));
        while (!path.isEmpty()) {
            Visit top = path.peek();
            if (top.reads.hasNext()) {
                Line read = top.reads.next();
                top.readsItself |= read == top.line;
                if (!numbers.containsKey(read)) {
                    path.push(begin(read));
                } else if (waiting.get(read)) {
                    top.lowest = Math.min(top.lowest, numbers.get(read));
                }
            } else {
                path.pop();
                close(top);
                if (!path.isEmpty()) {
                    path.peek().lowest = Math.min(path.peek().lowest, top.lowest);
                }
            }
        }
    }

    private Visit begin(Line line) {
        int number = numbers.size();
        numbers.put(line, number);
        waiting.put(line, true);
        open.push(line);
        Formula formula = formulas.get(line);
        Iterator<Line> reads = formula == null
                ? Collections.emptyIterator()
                : Dependencies.linesOf(formula).iterator();
        return new Visit(line, number, reads);
    }

    private void close(Visit visit) {
        if (visit.lowest != visit.number) {
            return;
        }
        List<Line> lines = new ArrayList<>();
        Line last;
        do {
            last = open.pop();
            waiting.put(last, false);
            lines.add(last);
        } while (last != visit.line);
        Collections.reverse(lines);
        groups.add(new Group(lines, lines.size() > 1 || visit.readsItself));
    }
}
