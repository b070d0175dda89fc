package org.benchmetre.budget.run;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;

/**
 * A flat list of instructions over registers: first the constants, then the cells that vary, then one register for each
 * instruction. An instruction reads only registers before its own. Constants and instructions that no output needs are left out.
 *
 * @param constants values of the first registers
 * @param inputs the cells that vary, in the registers after the constants
 * @param operations what each instruction does
 * @param arguments the registers each instruction reads
 * @param outputs for each line wanted the register of each of its cells
 * @param texts the codes of texts in constants
 */
record Program(
        double[] constants,
        List<CellRef> inputs,
        Function[] operations,
        int[][] arguments,
        Map<Line, int[]> outputs,
        Texts texts)
        implements Serializable {

    int firstResult() {
        return constants.length + inputs.size();
    }

    int registers() {
        return firstResult() + operations.length;
    }
}
