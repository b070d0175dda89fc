package org.benchmetre.budget;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order in which cells can be computed: each after all it reads. Lines are ordered first, and only where lines read one another
 * in a circle their cells are looked at one by one: a balance that carries itself from period to period is no cycle; a cell that
 * reads itself is.
 */
public final class CellOrder {

    private final Map<Line, Formula> formulas = new HashMap<>();
    private final Map<CellRef, Boolean> done = new HashMap<>();
    private final List<CellRef> order = new ArrayList<>();
    private Set<Line> circle = Set.of();

    private CellOrder(Budget budget) {
        budget.lines().forEach(line -> budget.formula(line).ifPresent(formula -> formulas.put(line, formula)));
        for (LineOrder.Group group : LineOrder.of(formulas, budget.lines())) {
            if (group.isCircle()) {
                circle = new HashSet<>(group.lines());
            }
            for (Line line : group.lines()) {
                add(line, group.isCircle());
            }
        }
    }

    /**
     * All cells of a budget; worked out once for all budgets that differ only in what is entered.
     *
     * @param budget the budget
     * @return the order
     */
    public static CellOrder of(Budget budget) {
        return budget.once(CellOrder.class, () -> new CellOrder(budget));
    }

    /**
     * The cells in order.
     *
     * @return unchangeable
     */
    public List<CellRef> cells() {
        return Collections.unmodifiableList(order);
    }

    private void add(Line line, boolean isInCircle) {
        for (int cell = 0; cell < line.size(); cell++) {
            CellRef ref = new CellRef(line, cell);
            if (isInCircle) {
                visit(ref);
            } else {
                order.add(ref);
            }
        }
    }

    private record Open(CellRef cell, Iterator<CellRef> reads) {}

    private void visit(CellRef start) {
        if (done.containsKey(start)) {
            return;
        }
        Deque<Open> path = new ArrayDeque<>();
        open(path, start);
        while (!path.isEmpty()) {
            Open top = path.peek();
            if (!top.reads().hasNext()) {
                path.pop();
                done.put(top.cell(), true);
                order.add(top.cell());
                continue;
            }
            CellRef next = top.reads().next();
            if (!done.containsKey(next)) {
                open(path, next);
            } else if (!done.get(next)) {
                throw cycle(path, next);
            }
        }
    }

    private void open(Deque<Open> path, CellRef cell) {
        done.put(cell, false);
        Formula formula = formulas.get(cell.line());
        Iterator<CellRef> reads = Dependencies.of(cell.line(), formula, cell.cell()).stream()
                .filter(read -> circle.contains(read.line()))
                .iterator();
        path.push(new Open(cell, reads));
    }

    private static FormulaException cycle(Deque<Open> path, CellRef closing) {
        List<String> names = new ArrayList<>();
        names.add(closing.toString());
        for (Open open : path) {
            names.add(open.cell().toString());
            if (open.cell().equals(closing)) {
                break;
            }
        }
        Collections.reverse(names);
        return new FormulaException("A figure depends on itself: " + String.join(" reads ", names) + ".");
    }
}
