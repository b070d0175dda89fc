package org.benchmetre.budget.run;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;

/**
 * Narrows a program to what some lines need and only the given cells move. All else is a constant with the value it has as the budget
 * stands, and of a choice that nothing moves only the side that is taken remains. The work grows with what the cells move, not with
 * the budget.
 */
final class Narrowing {

    private final Whole whole;
    private final Program program;
    private final Map<Integer, Integer> inputs = new HashMap<>();
    private final Registers registers;
    /** The instructions to be written, in order, and the operand of each. */
    private int[] kept;

    private int[] moved;

    private Narrowing(Whole whole, List<CellRef> varying) {
        this.whole = whole;
        this.program = whole.program();
        this.registers = new Registers(whole.texts().over(), varying);
        for (int i = 0; i < varying.size(); i++) {
            inputs.put(whole.registers(varying.get(i).line())[varying.get(i).cell()], i);
        }
    }

    /** The program for some cells that vary, each of them an input of the whole, and the wanted lines. */
    static Program program(Whole whole, List<CellRef> varying, Collection<Line> outputs) {
        Narrowing narrowing = new Narrowing(whole, varying);
        narrowing.keep(outputs);
        narrowing.write();
        Map<Line, int[]> wanted = new LinkedHashMap<>();
        outputs.forEach(line -> wanted.put(line, narrowing.operands(whole.registers(line))));
        return narrowing.registers.program(wanted);
    }

    private void keep(Collection<Line> outputs) {
        int[] start = inputs.keySet().stream().mapToInt(Integer::intValue).toArray();
        BitSet reached = whole.readers().reached(start);
        BitSet needed = new BitSet();
        outputs.forEach(line -> need(whole.registers(line), reached, needed));
        for (int i = needed.length() - 1; i >= 0; i = needed.previousSetBit(i - 1)) {
            need(program.arguments()[i], reached, needed);
        }
        kept = needed.stream().toArray();
        moved = new int[kept.length];
    }

    private void need(int[] read, BitSet reached, BitSet needed) {
        for (int register : read) {
            int instruction = register - program.firstResult();
            if (instruction >= 0 && reached.get(instruction)) {
                needed.set(instruction);
            }
        }
    }

    private void write() {
        for (int k = 0; k < kept.length; k++) {
            moved[k] = registers.apply(program.operations()[kept[k]], operands(program.arguments()[kept[k]]));
        }
    }

    private int[] operands(int[] from) {
        int[] operands = new int[from.length];
        for (int i = 0; i < operands.length; i++) {
            operands[i] = operand(from[i]);
        }
        return operands;
    }

    private int operand(int register) {
        int instruction = register - program.firstResult();
        if (instruction < 0) {
            Integer input = inputs.get(register);
            return input == null ? registers.constant(whole.value(register)) : input;
        }
        int place = Arrays.binarySearch(kept, instruction);
        return place < 0 ? registers.constant(whole.value(register)) : moved[place];
    }
}
