package org.benchmetre.budget.run;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Instructions;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;

/**
 * Hands out registers while a program is written: equal constants and equal instructions share one, and an instruction over
 * constants alone becomes a constant. While writing, a constant is a negative operand and all else a positive one.
 *
 * <p>What is folded keeps every bit: terms are never reordered, only zeros leave a sum and ones a product.
 */
final class Registers implements Instructions {

    private final Texts texts;
    private final ConstantSet constants = new ConstantSet();
    private final List<CellRef> inputs;
    private final InstructionSet written = new InstructionSet();

    Registers(Texts texts, List<CellRef> inputs) {
        this.texts = texts;
        this.inputs = List.copyOf(inputs);
    }

    @Override
    public int constant(double value) {
        return -constants.place(value) - 1;
    }

    int text(String text) {
        return constant(texts.code(text));
    }

    private static boolean isConstant(int operand) {
        return operand < 0;
    }

    private double valueOf(int constantOperand) {
        return constants.value(-constantOperand - 1);
    }

    private boolean is(int operand, double value) {
        return isConstant(operand) && valueOf(operand) == value;
    }

    @Override
    public int apply(Function function, int... operands) {
        return allConstant(operands) ? folded(function, operands) : simplified(function, operands);
    }

    private static boolean allConstant(int[] operands) {
        for (int operand : operands) {
            if (!isConstant(operand)) {
                return false;
            }
        }
        return true;
    }

    private int folded(Function function, int[] operands) {
        double[] values = new double[operands.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = valueOf(operands[i]);
        }
        return constant(function.body().of(values, texts));
    }

    private int simplified(Function function, int[] operands) {
        return switch (function) {
            case IF -> isConstant(operands[0]) ? operands[is(operands[0], 0) ? 2 : 1] : write(function, operands);
            case MULTIPLY ->
                is(operands[1], 1) ? operands[0] : is(operands[0], 1) ? operands[1] : write(function, operands);
            case DIVIDE -> is(operands[1], 1) ? operands[0] : write(function, operands);
            case AND -> decided(function, operands, 0);
            case OR -> decided(function, operands, 1);
            case SUM -> total(operands);
            case SUM_PRODUCT -> products(operands);
            case SUM_WHERE -> chosen(operands);
            default -> write(function, operands);
        };
    }

    /** A truth of all or any: one operand decides it, the other constants do not matter. */
    private int decided(Function function, int[] operands, double decisive) {
        for (int operand : operands) {
            if (is(operand, decisive)) {
                return constant(decisive);
            }
        }
        return write(
                function,
                Arrays.stream(operands).filter(operand -> !isConstant(operand)).toArray());
    }

    /** A sum without its zeros; the constants it begins with are added up, since they are the first terms anyhow. */
    private int total(int[] terms) {
        double start = 0;
        int next = 0;
        while (isConstant(terms[next])) {
            start += valueOf(terms[next++]);
        }
        int[] kept = new int[terms.length - next + 1];
        int count = 0;
        if (start != 0) {
            kept[count++] = constant(start);
        }
        for (; next < terms.length; next++) {
            if (!is(terms[next], 0)) {
                kept[count++] = terms[next];
            }
        }
        return write(Function.SUM, Arrays.copyOf(kept, count));
    }

    /** A sum of products in which those of constants are worked out, and left out where they are zero. */
    private int products(int[] pairs) {
        int[] kept = new int[pairs.length];
        int count = 0;
        for (int i = 0; i < pairs.length; i += 2) {
            boolean isKnown = isConstant(pairs[i]) && isConstant(pairs[i + 1]);
            double product = isKnown ? valueOf(pairs[i]) * valueOf(pairs[i + 1]) : Double.NaN;
            if (product != 0) {
                kept[count++] = isKnown ? constant(product) : pairs[i];
                kept[count++] = isKnown ? constant(1) : pairs[i + 1];
            }
        }
        return write(Function.SUM_PRODUCT, Arrays.copyOf(kept, count));
    }

    /** Terms that are never chosen leave the sum; where no choice is open, it is a plain one. */
    private int chosen(int[] pairs) {
        int[] kept = new int[pairs.length];
        int[] terms = new int[pairs.length / 2];
        int count = 0;
        boolean isOpen = false;
        for (int i = 0; i < pairs.length; i += 2) {
            if (!is(pairs[i], 0) && !is(pairs[i + 1], 0)) {
                kept[2 * count] = pairs[i];
                kept[2 * count + 1] = pairs[i + 1];
                terms[count++] = pairs[i + 1];
                isOpen |= !isConstant(pairs[i]);
            }
        }
        return isOpen
                ? write(Function.SUM_WHERE, Arrays.copyOf(kept, 2 * count))
                : apply(Function.SUM, Arrays.copyOf(terms, count));
    }

    private int write(Function function, int[] operands) {
        return inputs.size() + written.place(function, operands);
    }

    /** The program for the cells of some lines; what they do not need is left out. */
    Program program(Map<Line, int[]> outputs) {
        Packing packing = new Packing(constants, inputs.size(), written);
        outputs.values().forEach(packing::need);
        packing.settle();
        Map<Line, int[]> registers = new HashMap<>();
        outputs.forEach((line, operands) -> registers.put(line, packing.registers(operands)));
        return new Program(
                packing.constants(), inputs, packing.functions(), packing.arguments(), Map.copyOf(registers), texts);
    }
}
