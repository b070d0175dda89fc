package org.benchmetre.budget.run;

import org.benchmetre.budget.Function;

/** Lays out what was written as a program: only what is needed keeps a register, constants first, then inputs, then instructions. */
final class Packing {

    private final ConstantSet known;
    private final int inputs;
    private final InstructionSet written;
    private final int[] constantPlaces;
    private final int[] places;
    private int constantCount;
    private int count;

    Packing(ConstantSet known, int inputs, InstructionSet written) {
        this.known = known;
        this.inputs = inputs;
        this.written = written;
        this.constantPlaces = new int[known.size()];
        this.places = new int[written.size()];
    }

    /** Marks operands as needed. */
    void need(int[] operands) {
        for (int operand : operands) {
            if (operand < 0) {
                constantPlaces[-operand - 1] = 1;
            } else if (operand >= inputs) {
                places[operand - inputs] = 1;
            }
        }
    }

    /** Marks what the needed instructions read, and numbers all that is needed. */
    void settle() {
        for (int i = places.length - 1; i >= 0; i--) {
            if (places[i] != 0) {
                need(written.operands(i));
            }
        }
        constantCount = numbered(constantPlaces);
        count = numbered(places);
    }

    private static int numbered(int[] marks) {
        int next = 0;
        for (int i = 0; i < marks.length; i++) {
            marks[i] = marks[i] == 0 ? -1 : next++;
        }
        return next;
    }

    double[] constants() {
        double[] values = new double[constantCount];
        for (int i = 0; i < constantPlaces.length; i++) {
            if (constantPlaces[i] >= 0) {
                values[constantPlaces[i]] = known.value(i);
            }
        }
        return values;
    }

    Function[] functions() {
        Function[] functions = new Function[count];
        for (int i = 0; i < places.length; i++) {
            if (places[i] >= 0) {
                functions[places[i]] = written.function(i);
            }
        }
        return functions;
    }

    int[][] arguments() {
        int[][] arguments = new int[count][];
        for (int i = 0; i < places.length; i++) {
            if (places[i] >= 0) {
                arguments[places[i]] = registers(written.operands(i));
            }
        }
        return arguments;
    }

    int[] registers(int[] operands) {
        int[] registers = new int[operands.length];
        for (int i = 0; i < registers.length; i++) {
            registers[i] = register(operands[i]);
        }
        return registers;
    }

    private int register(int operand) {
        if (operand < 0) {
            return constantPlaces[-operand - 1];
        }
        return constantCount + (operand < inputs ? operand : inputs + places[operand - inputs]);
    }
}
