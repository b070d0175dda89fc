package org.benchmetre.budget.run;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Texts;

/** Runs a program for one case. In a class of its own: loaded beside the kernels it would slow them for good. */
final class SingleRun {

    private final Program program;
    private final Texts texts;
    private final double[] registers;
    private final Map<Integer, double[]> arguments = new HashMap<>();

    SingleRun(Program program, Texts texts) {
        this.program = program;
        this.texts = texts;
        this.registers = new double[program.registers()];
        System.arraycopy(program.constants(), 0, registers, 0, program.constants().length);
    }

    /** Computes all registers; what is returned is used again by the next run. */
    double[] run(double[] inputs) {
        System.arraycopy(inputs, 0, registers, program.constants().length, inputs.length);
        int to = program.firstResult();
        Function[] operations = program.operations();
        for (int i = 0; i < operations.length; i++) {
            registers[to + i] = result(operations[i], program.arguments()[i]);
        }
        return registers;
    }

    private double result(Function function, int[] from) {
        switch (function) {
            case ADD:
                return registers[from[0]] + registers[from[1]];
            case SUBTRACT:
                return registers[from[0]] - registers[from[1]];
            case MULTIPLY:
                return registers[from[0]] * registers[from[1]];
            case DIVIDE:
                return registers[from[0]] / registers[from[1]];
            case IF:
                return registers[from[0]] != 0 ? registers[from[1]] : registers[from[2]];
            default:
                double[] values = arguments.computeIfAbsent(from.length, double[]::new);
                for (int i = 0; i < values.length; i++) {
                    values[i] = registers[from[i]];
                }
                return function.body().of(values, texts);
        }
    }
}
