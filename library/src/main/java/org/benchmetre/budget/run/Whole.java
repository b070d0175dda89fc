package org.benchmetre.budget.run;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.entry.Given;

/** A budget computed as it stands: the program of its formulas, run once on what is entered and filled. */
final class Whole {

    private final Budget budget;
    private final Program program;
    private final Texts texts;
    private final double[] registers;

    private Whole(Budget budget, Program program) {
        this.budget = budget;
        this.program = program;
        this.texts = program.texts().copy();
        this.registers = new SingleRun(program, texts)
                .run(program.inputs().stream().mapToDouble(this::known).toArray());
    }

    static Whole of(Budget budget) {
        return new Whole(budget, Unroller.program(budget));
    }

    private double known(CellRef cell) {
        Line line = cell.line();
        if (budget.isSolved(line)) {
            Solved solved = budget.solved(line).get(cell.cell());
            return solved.hasNumber() ? solved.number() : Texts.noNumber(texts.code(solved.reason()));
        }
        Given given = budget.given(line).get(cell.cell());
        return line.kind() == Kind.TEXT ? texts.code(given.text()) : given.number();
    }

    Program program() {
        return program;
    }

    /** What the codes in the registers stand for. */
    Texts texts() {
        return texts;
    }

    /** What a register holds. */
    double value(int register) {
        return registers[register];
    }

    /** What a cell holds. */
    double value(Line line, int cell) {
        return registers[registers(line)[cell]];
    }

    /** The registers of the cells of a line. */
    int[] registers(Line line) {
        int[] found = program.outputs().get(line);
        if (found == null) {
            throw new FormulaException("Line " + line + " is not a line of this budget.");
        }
        return found;
    }
}
