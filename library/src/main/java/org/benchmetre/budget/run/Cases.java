package org.benchmetre.budget.run;

import java.io.Serializable;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;

/**
 * One budget for many cases, in which the cells of a cut are given anew in each case: entries, or figures in the middle of the budget
 * such as the receipts of each year, whose formulas then do not count. Only what the wanted lines need between the cut and themselves
 * is computed. What they need beside the cut keeps its value in the budget. Made once, then run as often as wanted; immutable and
 * serialisable.
 */
public final class Cases implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Budget budget;
    private final List<CellRef> cut;
    private final List<Line> outputs;
    private final Program program;

    private Cases(Budget budget, List<CellRef> cut, List<Line> outputs) {
        this.budget = budget;
        this.cut = List.copyOf(cut);
        this.outputs = List.copyOf(outputs);
        this.program = Narrowing.program(whole(this.outputs), this.cut, this.outputs);
    }

    /**
     * Prepares a budget for many cases. Solved lines keep in every case what their searches find on the budget as it stands.
     *
     * @param budget the budget; cells that are not in the cut keep its values
     * @param cut the cells that are given anew in each case: of entries, formulas or solved lines
     * @param outputs the lines wanted
     * @return the prepared program
     * @throws FormulaException when a line is not one of the budget
     */
    public static Cases of(Budget budget, List<CellRef> cut, List<Line> outputs) {
        return new Cases(budget, cut, outputs);
    }

    private Whole whole(List<Line> lines) {
        boolean givesFormulas =
                cut.stream().anyMatch(cell -> budget.formula(cell.line()).isPresent());
        return givesFormulas ? Whole.of(budget, cut, lines) : Whole.reaching(budget, lines);
    }

    /**
     * A run of its own with its own working memory, for one thread.
     *
     * @return the run
     */
    public Run start() {
        return new Run(this);
    }

    /**
     * The cells that are given anew in each case.
     *
     * @return in the order in which their values are given
     */
    public List<CellRef> cut() {
        return cut;
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

        private final Cases cases;
        private final Program program;
        private final Texts texts;
        private Whole all;
        private BlockRun block;
        private SingleRun single;

        private Run(Cases cases) {
            this.cases = cases;
            this.program = cases.program;
            this.texts = program.texts().over();
        }

        /**
         * The number that stands for a text in the inputs; the same in every run.
         *
         * @param text any text
         * @return its code
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
         * @param inputs for each cell of the cut its value in each case
         * @param wanted a line among the outputs
         * @param cell which of its cells
         * @return its value in each case; an optional number without a value is a NaN
         * @throws FormulaException when the line is not among the outputs or the inputs are not as many as the cells of the cut
         */
        public double[] blocks(double[][] inputs, Line wanted, int cell) {
            double[][] one = blocks(inputs, List.of(new CellRef(wanted, cell)));
            return one[0];
        }

        /**
         * Computes many cases, in blocks, for several output cells in one pass.
         *
         * @param inputs for each cell of the cut its value in each case
         * @param wanted output cells
         * @return for each wanted cell its value in each case
         * @throws FormulaException when a line is not among the outputs or the inputs are not as many as the cells of the cut
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
         * @param inputs the value of each cell of the cut
         * @param wanted output cells
         * @return the value of each wanted cell
         * @throws FormulaException when a line is not among the outputs or the inputs are not as many as the cells of the cut
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

        /**
         * Computes any number of cases, some hundred at a time, so that no more of them than that are held in memory. Cases are
         * taken from the iterator as chunks are asked for.
         *
         * @param cases for each case the value of each cell of the cut
         * @param wanted output cells
         * @param check looks at the values before they are run; a case that it refuses is not run
         * @return the chunks, in the order of the cases; to be used up before this run is used for anything else
         * @throws FormulaException when asked for a chunk with a case whose values are not as many as the cells of the cut
         */
        public Iterator<Chunk> chunks(Iterator<double[]> cases, List<CellRef> wanted, CaseCheck check) {
            return new Chunks(this, cases, wanted, check);
        }

        /**
         * Why wanted cells have no finite value in a case: the cells behind them where the trouble begins, one sentence each. The
         * whole budget is computed for it.
         *
         * @param inputs the value of each cell of the cut
         * @param wanted output cells
         * @return empty when all their values are finite or reasons
         * @throws FormulaException when the inputs are not as many as the cells of the cut
         */
        public List<String> troubles(double[] inputs, List<CellRef> wanted) {
            checkCount(inputs.length);
            if (all == null) {
                all = cases.whole(List.copyOf(cases.budget.lines()));
            }
            Whole whole = all.at(cases.cut, inputs, texts);
            return new Troubles(cases.budget, whole, Set.copyOf(cases.cut)).behind(wanted);
        }

        Cases cases() {
            return cases;
        }

        Texts texts() {
            return texts;
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
