package org.benchmetre.budget.run;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;

/**
 * Narrows the program of a whole budget to what some lines need and only the given cells move. All else has the value it has in the
 * budget as it stands, what searches find included, and of a choice that nothing moves only the side that is taken remains.
 */
final class Narrowing {

    private final Whole whole;
    private final Program program;
    private final int[] moved;
    private final boolean[] varies;
    private final boolean[] needed;
    private final Registers registers;

    private Narrowing(Whole whole, List<CellRef> varying) {
        this.whole = whole;
        this.program = whole.program();
        this.moved = new int[program.registers()];
        this.varies = new boolean[moved.length];
        this.needed = new boolean[moved.length];
        this.registers = new Registers(whole.texts(), varying);
        for (int i = 0; i < varying.size(); i++) {
            CellRef cell = varying.get(i);
            int register = whole.registers(cell.line())[cell.cell()];
            varies[register] = true;
            moved[register] = i;
        }
    }

    /** The program for some varying entry cells and the wanted lines. */
    static Program program(Budget budget, List<CellRef> varying, Collection<Line> outputs) {
        varying.forEach(cell -> budget.given(cell.line()));
        Whole plain = Whole.of(budget);
        Whole whole = Reach.of(budget).coversAny(outputs) ? plain.searched() : plain;
        Narrowing narrowing = new Narrowing(whole, varying);
        narrowing.findWhatVaries();
        narrowing.findWhatIsNeeded(outputs);
        return narrowing.written(outputs);
    }

    private void findWhatVaries() {
        for (int i = 0; i < program.operations().length; i++) {
            varies[program.firstResult() + i] = varies(program.operations()[i], program.arguments()[i]);
        }
    }

    private boolean varies(Operation operation, int[] from) {
        if (isSettled(operation, from)) {
            return varies[taken(from)];
        }
        for (int register : from) {
            if (varies[register]) {
                return true;
            }
        }
        return false;
    }

    /** Whether this is a choice that nothing moves. */
    private boolean isSettled(Operation operation, int[] from) {
        return operation == Operation.IF && !varies[from[0]];
    }

    private int taken(int[] from) {
        return from[whole.value(from[0]) != 0 ? 1 : 2];
    }

    private void findWhatIsNeeded(Collection<Line> outputs) {
        for (Line line : outputs) {
            for (int register : whole.registers(line)) {
                needed[register] = true;
            }
        }
        for (int i = program.operations().length - 1; i >= 0; i--) {
            int register = program.firstResult() + i;
            int[] from = program.arguments()[i];
            if (needed[register] && varies[register]) {
                if (isSettled(program.operations()[i], from)) {
                    needed[taken(from)] = true;
                } else {
                    for (int read : from) {
                        needed[read] = true;
                    }
                }
            }
        }
    }

    private Program written(Collection<Line> outputs) {
        for (int i = 0; i < program.operations().length; i++) {
            int register = program.firstResult() + i;
            if (needed[register] && varies[register]) {
                Operation operation = program.operations()[i];
                int[] from = program.arguments()[i];
                moved[register] =
                        isSettled(operation, from) ? operand(taken(from)) : registers.apply(operation, operands(from));
            }
        }
        Map<Line, int[]> wanted = new LinkedHashMap<>();
        outputs.forEach(line -> wanted.put(line, operands(whole.registers(line))));
        return registers.program(wanted);
    }

    private int[] operands(int[] from) {
        int[] operands = new int[from.length];
        for (int i = 0; i < from.length; i++) {
            operands[i] = operand(from[i]);
        }
        return operands;
    }

    private int operand(int register) {
        return varies[register] ? moved[register] : registers.constant(whole.value(register));
    }
}
