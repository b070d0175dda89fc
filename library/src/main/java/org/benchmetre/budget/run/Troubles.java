package org.benchmetre.budget.run;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Words;

/** The cells whose value is not a finite number although all they read is: where the trouble begins, one sentence each. */
final class Troubles {

    private static final int SHOWN = 6;

    private final Budget budget;
    private final Whole whole;
    private final Set<CellRef> given;

    /** The troubles of a computed budget, in which some cells are given although they may have a formula. */
    Troubles(Budget budget, Whole whole, Set<CellRef> given) {
        this.budget = budget;
        this.whole = whole;
        this.given = given;
    }

    /** In all lines, in order of definition. */
    List<String> all() {
        List<String> found = new ArrayList<>();
        for (Line line : budget.lines()) {
            for (int cell = 0; cell < line.size(); cell++) {
                CellRef ref = new CellRef(line, cell);
                if (isTrouble(ref) && troubledReads(ref).isEmpty()) {
                    found.add(sentence(ref));
                }
            }
        }
        return found;
    }

    /** In some cells and whatever they follow from. */
    List<String> behind(Collection<CellRef> cells) {
        List<String> found = new ArrayList<>();
        Set<CellRef> seen = new LinkedHashSet<>();
        cells.stream().filter(this::isTrouble).forEach(seen::add);
        Deque<CellRef> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            CellRef cell = open.pop();
            List<CellRef> reads = troubledReads(cell);
            if (reads.isEmpty()) {
                found.add(sentence(cell));
            }
            reads.stream().filter(seen::add).forEach(open::add);
        }
        return found;
    }

    private boolean isTrouble(CellRef cell) {
        return !Double.isFinite(whole.value(cell.line(), cell.cell())) && !whole.hasReason(cell.line(), cell.cell());
    }

    private List<CellRef> troubledReads(CellRef cell) {
        return reads(cell).stream().filter(this::isTrouble).toList();
    }

    private List<CellRef> reads(CellRef cell) {
        if (given.contains(cell)) {
            return List.of();
        }
        return budget.formula(cell.line())
                .map(formula -> List.copyOf(Dependencies.of(cell.line(), formula, cell.cell())))
                .orElse(List.of());
    }

    private String sentence(CellRef cell) {
        Line line = cell.line();
        String what = line.label() + " (" + cell + ") ";
        if (given.contains(cell)) {
            return what + "is given as " + whole.value(line, cell.cell()) + ".";
        }
        List<String> reads = reads(cell).stream()
                .limit(SHOWN)
                .map(read -> read + " = " + whole.text(read.line(), read.cell()))
                .toList();
        return what + "has no finite value: its formula "
                + budget.formula(line).map(Words::of).orElse("") + " reads " + String.join(", ", reads) + ".";
    }
}
