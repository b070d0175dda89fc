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
import java.util.Optional;

/**
 * The order in which cells can be computed: each after all it reads. Found by depth-first search with a stack of its own, so that a
 * chain of any length fits. A balance that carries itself from period to period is no cycle; a cell that reads itself is.
 */
public final class CellOrder {

    private final Map<Line, Formula> formulas = new HashMap<>();
    private final Map<CellRef, Boolean> done = new HashMap<>();
    private final List<CellRef> order = new ArrayList<>();

    private CellOrder(Budget budget) {
        budget.lines().forEach(line -> budget.formula(line).ifPresent(formula -> formulas.put(line, formula)));
    }

    /**
     * All cells of a budget; worked out once for all budgets that differ only in what is entered.
     *
     * @param budget the budget
     * @return the order
     */
    public static CellOrder of(Budget budget) {
        return budget.once(CellOrder.class, () -> {
            CellOrder order = new CellOrder(budget);
            order.visit(budget.lines());
            return order;
        });
    }

    /**
     * The cells that some lines of a budget need, themselves included.
     *
     * @param budget the budget
     * @param wanted lines of it
     * @return each cell after all it reads
     */
    public static List<CellRef> of(Budget budget, Collection<Line> wanted) {
        CellOrder order = new CellOrder(budget);
        order.visit(wanted);
        return order.cells();
    }

    /**
     * The cells in their order.
     *
     * @return each cell after all it reads
     */
    public List<CellRef> cells() {
        return Collections.unmodifiableList(order);
    }

    /** Visits the cells the wanted lines need; throws with the whole cycle when there is one. */
    private void visit(Collection<Line> wanted) {
        for (Line line : wanted) {
            for (int cell = 0; cell < line.size(); cell++) {
                visit(new CellRef(line, cell));
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
        Optional<Formula> formula = Optional.ofNullable(formulas.get(cell.line()));
        Iterator<CellRef> reads = formula.map(
                        f -> Dependencies.of(cell.line(), f, cell.cell()).iterator())
                .orElse(Collections.emptyIterator());
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
