package org.benchmetre.budget.run;

import java.util.Arrays;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Texts;

/**
 * Runs a program for a block of cases at once: one array a register, one plain loop an instruction. Arrays are made once and used
 * again; not for several threads.
 */
final class BlockRun {

    /** Cases in a block: large enough to pay for an instruction, small enough to stay near the processor. */
    static final int LANES = 256;

    private final Program program;
    private final Texts texts;
    private final double[][] registers;
    private final double[][][] arguments;

    BlockRun(Program program, Texts texts) {
        this.program = program;
        this.texts = texts;
        this.registers = new double[program.registers()][LANES];
        for (int i = 0; i < program.constants().length; i++) {
            Arrays.fill(registers[i], program.constants()[i]);
        }
        this.arguments = new double[program.operations().length][][];
        for (int i = 0; i < arguments.length; i++) {
            int[] from = program.arguments()[i];
            arguments[i] = new double[from.length][];
            for (int k = 0; k < from.length; k++) {
                arguments[i][k] = registers[from[k]];
            }
        }
    }

    /** Where the values of one input are put before a run. */
    double[] input(int index) {
        return registers[program.constants().length + index];
    }

    /** Where the values of one register are found after a run. */
    double[] register(int index) {
        return registers[index];
    }

    /** Computes the first cases of the block. */
    void run(int cases) {
        int to = program.firstResult();
        Function[] operations = program.operations();
        for (int i = 0; i < operations.length; i++) {
            operations[i].kernel().run(registers[to + i], arguments[i], cases, texts);
        }
    }
}
