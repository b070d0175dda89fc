package org.benchmetre.budget.run;

import java.util.Collection;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;

/** Which registers of a program follow from cells that searches fill; the others are known before any search has run. */
final class Reach {

    private final Program program;
    private final boolean[] reached;

    private Reach(Budget budget, Program program) {
        this.program = program;
        this.reached = new boolean[program.registers()];
        int input = program.constants().length;
        for (CellRef cell : program.inputs()) {
            reached[input++] = budget.isSolved(cell.line());
        }
        for (int i = 0; i < program.operations().length; i++) {
            reached[program.firstResult() + i] = isAnyReached(program.arguments()[i]);
        }
    }

    /** The reach in a budget; worked out once for all budgets that share its program. */
    static Reach of(Budget budget) {
        return budget.once(Reach.class, () -> new Reach(budget, Unroller.program(budget)));
    }

    /** Whether a cell follows from what a search fills. */
    boolean covers(Line line, int cell) {
        int[] registers = program.outputs().get(line);
        return registers != null && reached[registers[cell]];
    }

    /** Whether any cell of some lines does. */
    boolean coversAny(Collection<Line> lines) {
        return lines.stream().anyMatch(line -> isAnyReached(program.outputs().get(line)));
    }

    private boolean isAnyReached(int[] registers) {
        for (int register : registers) {
            if (reached[register]) {
                return true;
            }
        }
        return false;
    }
}
