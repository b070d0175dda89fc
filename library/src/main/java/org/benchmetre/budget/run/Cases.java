package org.benchmetre.budget.run;

import java.io.Serializable;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;

/**
 * One budget for many cases, in which a few entry cells vary. Made once, then run as often as wanted; immutable and serialisable.
 * Only what the wanted lines need is computed.
 */
public final class Cases implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Program program;
    private final List<Line> outputs;

    private Cases(Program program, List<Line> outputs) {
        this.program = program;
        this.outputs = List.copyOf(outputs);
    }

    /**
     * Prepares a budget for many cases. Solved lines keep in every case what their searches find on the budget as it stands.
     *
     * @param budget the budget; cells that do not vary keep its values
     * @param varying entry cells that differ from case to case
     * @param outputs the lines wanted
     * @return the prepared program
     * @throws FormulaException when a varying cell is not an entry
     */
    public static Cases of(Budget budget, List<CellRef> varying, List<Line> outputs) {
        return new Cases(Narrowing.program(budget, varying, outputs), outputs);
    }

    /**
     * A run of its own with its own working memory, for one thread.
     *
     * @return the run
     */
    public Run start() {
        return new Run(program);
    }

    /**
     * The lines wanted.
     *
     * @return in the order they were named
     */
    public List<Line> outputs() {
        return outputs;
    }

    /**
     * How many instructions one case takes.
     *
     * @return the length of the program
     */
    public int instructions() {
        return program.operations().length;
    }

    /** Working memory for running cases. Not for several threads. */
    public static final class Run {

        private final Program program;
        private final Texts texts;
        private BlockRun block;
        private SingleRun single;

        private Run(Program program) {
            this.program = program;
            this.texts = program.texts().copy();
        }

        /**
         * The number that stands for a text in the inputs.
         *
         * @param text any text
         * @return its code in this run
         */
        public double code(String text) {
            return texts.code(text);
        }

        /**
         * The text that a number in the outputs stands for.
         *
         * @param code the output of a text line
         * @return the text
         */
        public String text(double code) {
            return texts.text(code);
        }

        /**
         * Computes many cases, in blocks.
         *
         * @param inputs for each varying cell its value in each case
         * @param wanted a line among the outputs
         * @param cell which of its cells
         * @return its value in each case; an optional number without a value is a NaN
         * @throws FormulaException when the line is not among the outputs or the inputs are not as many as the varying cells
         */
        public double[] blocks(double[][] inputs, Line wanted, int cell) {
            double[][] one = blocks(inputs, List.of(new CellRef(wanted, cell)));
            return one[0];
        }

        /**
         * Computes many cases, in blocks, for several output cells in one pass.
         *
         * @param inputs for each varying cell its value in each case
         * @param wanted output cells
         * @return for each wanted cell its value in each case
         * @throws FormulaException when a line is not among the outputs or the inputs are not as many as the varying cells
         */
        public double[][] blocks(double[][] inputs, List<CellRef> wanted) {
            checkCount(inputs.length);
            if (block == null) {
                block = new BlockRun(program, texts);
            }
            int cases = inputs.length == 0 ? 1 : inputs[0].length;
            double[][] results = new double[wanted.size()][cases];
            for (int start = 0; start < cases; start += BlockRun.LANES) {
                int count = Math.min(BlockRun.LANES, cases - start);
                for (int i = 0; i < inputs.length; i++) {
                    System.arraycopy(inputs[i], start, block.input(i), 0, count);
                }
                block.run(count);
                for (int k = 0; k < results.length; k++) {
                    System.arraycopy(block.register(register(wanted.get(k))), 0, results[k], start, count);
                }
            }
            return results;
        }

        /**
         * Computes one case.
         *
         * @param inputs the value of each varying cell
         * @param wanted output cells
         * @return the value of each wanted cell
         * @throws FormulaException when a line is not among the outputs or the inputs are not as many as the varying cells
         */
        public double[] one(double[] inputs, List<CellRef> wanted) {
            checkCount(inputs.length);
            if (single == null) {
                single = new SingleRun(program, texts);
            }
            double[] registers = single.run(inputs);
            return wanted.stream()
                    .mapToDouble(cell -> registers[register(cell)])
                    .toArray();
        }

        private int register(CellRef cell) {
            int[] registers = program.outputs().get(cell.line());
            if (registers == null) {
                throw new FormulaException("Line " + cell.line() + " is not among the outputs of this run.");
            }
            return registers[cell.cell()];
        }

        private void checkCount(int found) {
            if (found != program.inputs().size()) {
                throw new FormulaException(
                        "This run varies " + program.inputs().size() + " cells, but found values for " + found + ".");
            }
        }
    }
}
