package org.benchmetre.budget.run;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;

/**
 * Which registers of a program follow from cells that searches fill, and from which; the others are known before any search has run.
 * Searches are told apart by a bit each; those after the first 63 share the last one.
 */
final class Reach {

    private static final int LAST = 63;

    private final Program program;
    private final long[] behind;
    private final Map<Line, Long> bits = new HashMap<>();

    private Reach(Budget budget, Program program) {
        this.program = program;
        this.behind = new long[program.registers()];
        for (Line line : budget.solved()) {
            bits.put(line, 1L << Math.min(bits.size(), LAST));
        }
        int input = program.constants().length;
        for (CellRef cell : program.inputs()) {
            behind[input++] = bits.getOrDefault(cell.line(), 0L);
        }
        for (int i = 0; i < program.operations().length; i++) {
            behind[program.firstResult() + i] = behindAny(program.arguments()[i]);
        }
    }

    /** The reach in a budget; worked out once for all budgets that share its program. */
    static Reach of(Budget budget) {
        return budget.once(Reach.class, () -> new Reach(budget, Unroller.program(budget)));
    }

    /** Whether a cell follows from what a search fills. */
    boolean covers(Line line, int cell) {
        return behind(line, cell) != 0;
    }

    /** The searches that a cell follows from, a bit each. */
    long behind(Line line, int cell) {
        int[] registers = program.outputs().get(line);
        return registers == null ? 0 : behind[registers[cell]];
    }

    /** Whether a line that a search fills is among those of some bits. */
    boolean isAmong(Line solved, long searches) {
        return (bits.getOrDefault(solved, 0L) & searches) != 0;
    }

    /** Whether any cell of some lines does. */
    boolean coversAny(Collection<Line> lines) {
        return lines.stream().anyMatch(line -> behindAny(program.outputs().get(line)) != 0);
    }

    private long behindAny(int[] registers) {
        long any = 0;
        for (int register : registers) {
            any |= behind[register];
        }
        return any;
    }
}
