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

    private record Instruction(Operation operation, List<Integer> operands) {}

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
        return knownConstants.computeIfAbsent(Double.doubleToRawLongBits(value), bits -> {
            constants.add(value);
            return -constants.size();
        });
    }

    int text(String text) {
        return constant(texts.code(text));
    }

    /** An optional number that has a reason in place of a value. */
    int reason(String reason) {
        return constant(Texts.noNumber(texts.code(reason)));
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
        if (Arrays.stream(operands).allMatch(this::isConstant)) {
            double[] values = Arrays.stream(operands).mapToDouble(this::valueOf).toArray();
            return constant(operation.body().of(values, texts));
        }
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
        Instruction instruction =
                new Instruction(operation, Arrays.stream(operands).boxed().toList());
        return knownInstructions.computeIfAbsent(instruction, fresh -> {
            instructions.add(fresh);
            return inputCount + instructions.size() - 1;
        });
    }

    Program program(Map<Line, int[]> outputs) {
        int shift = constants.size();
        Map<Line, int[]> shifted = new HashMap<>();
        outputs.forEach((line, operands) -> shifted.put(
                line, Arrays.stream(operands).map(o -> register(o, shift)).toArray()));
        return new Program(
                constants.stream().mapToDouble(Double::doubleValue).toArray(),
                List.copyOf(inputs),
                instructions.stream().map(Instruction::operation).toArray(Operation[]::new),
                instructions.stream()
                        .map(i -> i.operands().stream()
                                .mapToInt(o -> register(o, shift))
                                .toArray())
                        .toArray(int[][]::new),
                Map.copyOf(shifted),
                texts);
    }

    private static int register(int operand, int shift) {
        return operand < 0 ? -operand - 1 : operand + shift;
    }
}
