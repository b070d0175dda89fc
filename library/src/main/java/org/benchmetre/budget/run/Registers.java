package org.benchmetre.budget.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;

/**
 * Hands out registers while a program is written: equal constants and equal instructions share one, and an instruction over
 * constants alone becomes a constant. While writing, a constant is a negative operand and all else a positive one.
 *
 * <p>What is folded keeps every bit: terms are never reordered, only zeros leave a sum and ones a product.
 */
final class Registers {

    /** Equal to another one that does the same to the same operands. */
    private static final class Instruction {

        private final Operation operation;
        private final int[] operands;
        private final int hash;

        Instruction(Operation operation, int[] operands) {
            this.operation = operation;
            this.operands = operands;
            this.hash = 31 * operation.ordinal() + Arrays.hashCode(operands);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Instruction that
                    && operation == that.operation
                    && Arrays.equals(operands, that.operands);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    private final Texts texts;
    private final List<Double> constants = new ArrayList<>();
    private final Map<Long, Integer> knownConstants = new HashMap<>();
    private final List<CellRef> inputs = new ArrayList<>();
    private final List<Instruction> instructions = new ArrayList<>();
    private final Map<Instruction, Integer> knownInstructions = new HashMap<>();
    private final int inputCount;

    Registers(Texts texts, List<CellRef> inputs) {
        this.texts = texts;
        this.inputs.addAll(inputs);
        this.inputCount = inputs.size();
    }

    int constant(double value) {
        Integer fresh = -constants.size() - 1;
        Integer known = knownConstants.putIfAbsent(Double.doubleToRawLongBits(value), fresh);
        if (known == null) {
            constants.add(value);
        }
        return known == null ? fresh : known;
    }

    int text(String text) {
        return constant(texts.code(text));
    }

    boolean isConstant(int operand) {
        return operand < 0;
    }

    double valueOf(int constantOperand) {
        return constants.get(-constantOperand - 1);
    }

    private boolean is(int operand, double value) {
        return isConstant(operand) && valueOf(operand) == value;
    }

    int apply(Operation operation, int... operands) {
        return allConstant(operands) ? folded(operation, operands) : simplified(operation, operands);
    }

    private boolean allConstant(int[] operands) {
        for (int operand : operands) {
            if (!isConstant(operand)) {
                return false;
            }
        }
        return true;
    }

    private int folded(Operation operation, int[] operands) {
        double[] values = Arrays.stream(operands).mapToDouble(this::valueOf).toArray();
        return constant(operation.body().of(values, texts));
    }

    private int simplified(Operation operation, int[] operands) {
        return switch (operation) {
            case IF -> isConstant(operands[0]) ? operands[is(operands[0], 0) ? 2 : 1] : written(operation, operands);
            case MULTIPLY ->
                is(operands[1], 1) ? operands[0] : is(operands[0], 1) ? operands[1] : written(operation, operands);
            case DIVIDE -> is(operands[1], 1) ? operands[0] : written(operation, operands);
            case AND -> decided(operation, operands, 0);
            case OR -> decided(operation, operands, 1);
            case SUM ->
                written(
                        operation,
                        Arrays.stream(operands)
                                .filter(operand -> !is(operand, 0))
                                .toArray());
            default -> written(operation, operands);
        };
    }

    /** A truth of all or any: one operand decides it, the other constants do not matter. */
    private int decided(Operation operation, int[] operands, double decisive) {
        for (int operand : operands) {
            if (is(operand, decisive)) {
                return constant(decisive);
            }
        }
        return written(
                operation,
                Arrays.stream(operands).filter(operand -> !isConstant(operand)).toArray());
    }

    private int written(Operation operation, int[] operands) {
        Instruction instruction = new Instruction(operation, operands);
        Integer fresh = inputCount + instructions.size();
        Integer known = knownInstructions.putIfAbsent(instruction, fresh);
        if (known == null) {
            instructions.add(instruction);
        }
        return known == null ? fresh : known;
    }

    Program program(Map<Line, int[]> outputs) {
        Operation[] operations = new Operation[instructions.size()];
        int[][] arguments = new int[operations.length][];
        for (int i = 0; i < operations.length; i++) {
            operations[i] = instructions.get(i).operation;
            arguments[i] = registers(instructions.get(i).operands);
        }
        Map<Line, int[]> shifted = new HashMap<>();
        outputs.forEach((line, operands) -> shifted.put(line, registers(operands)));
        double[] values = constants.stream().mapToDouble(Double::doubleValue).toArray();
        return new Program(values, List.copyOf(inputs), operations, arguments, Map.copyOf(shifted), texts);
    }

    private int[] registers(int[] operands) {
        int[] registers = new int[operands.length];
        for (int i = 0; i < registers.length; i++) {
            registers[i] = operands[i] < 0 ? -operands[i] - 1 : operands[i] + constants.size();
        }
        return registers;
    }
}
