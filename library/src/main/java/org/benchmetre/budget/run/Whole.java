package org.benchmetre.budget.run;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;

/** A budget computed as it stands: the program of its formulas, run once on what is entered and found. Immutable. */
final class Whole {

    private final Program program;
    private final Texts texts;
    private final double[] registers;
    private Readers readers;

    private Whole(Program program, Texts texts, double[] inputs) {
        this.program = program;
        this.texts = texts;
        this.registers = new SingleRun(program, texts).run(inputs);
    }

    /** All lines of a budget before any search, computed once for each budget; whatever follows from a search is not to be read. */
    static Whole of(Budget budget) {
        return budget.here(Whole.class, () -> of(budget, SearchResults.NOTHING));
    }

    /** All lines of a budget, with what searches found on its entries or on others. */
    static Whole of(Budget budget, SearchResults found) {
        return of(budget, found, line -> true);
    }

    /** The same with what some of the searches found; whatever follows from another one is not to be read. */
    static Whole of(Budget budget, SearchResults results, Predicate<Line> wanted) {
        Program program = Unroller.program(budget);
        Texts texts = program.texts().over();
        double[] inputs = new double[program.inputs().size()];
        for (int i = 0; i < inputs.length; i++) {
            CellRef cell = program.inputs().get(i);
            boolean isLeft = budget.isSolved(cell.line()) && !wanted.test(cell.line());
            inputs[i] = known(budget, isLeft ? SearchResults.NOTHING : results, cell, texts);
        }
        return new Whole(program, texts, inputs);
    }

    /** All lines of a budget; searches have run where some lines follow from one. */
    static Whole reaching(Budget budget, Collection<Line> lines) {
        return Reach.of(budget).coversAny(lines) ? of(budget, SearchResults.of(budget)) : of(budget);
    }

    /**
     * Some lines of a budget, with cells that are given although they have a formula. They have the values here that their formulas
     * give.
     */
    static Whole of(Budget budget, List<CellRef> cut, List<Line> outputs) {
        Whole all = reaching(budget, outputs);
        Program program = Unroller.program(budget, cut, outputs, all.texts);
        double[] inputs = new double[program.inputs().size()];
        for (int i = 0; i < inputs.length; i++) {
            CellRef cell = program.inputs().get(i);
            inputs[i] = all.value(cell.line(), cell.cell());
        }
        return new Whole(program, program.texts(), inputs);
    }

    /** The same with other values in some cells, which are inputs here. */
    Whole at(List<CellRef> cells, double[] values, Texts known) {
        int start = program.constants().length;
        double[] inputs = Arrays.copyOfRange(registers, start, program.firstResult());
        for (int i = 0; i < values.length; i++) {
            CellRef cell = cells.get(i);
            inputs[registers(cell.line())[cell.cell()] - start] = values[i];
        }
        return new Whole(program, known, inputs);
    }

    private static double known(Budget budget, SearchResults found, CellRef cell, Texts texts) {
        Line line = cell.line();
        if (budget.isSolved(line)) {
            Solved solved = found.in(cell);
            if (line.kind() == Kind.TEXT) {
                return texts.code(solved.reason());
            }
            boolean none = !solved.hasNumber();
            return none && line.kind() == Kind.OPTIONAL
                    ? Texts.noNumber(texts.code(solved.reason()))
                    : none ? 0 : solved.number();
        }
        Given given = budget.given(line).get(cell.cell());
        return line.kind() == Kind.TEXT ? texts.code(given.text()) : given.number();
    }

    Program program() {
        return program;
    }

    /** What the codes in the registers stand for; not to be added to. */
    Texts texts() {
        return texts;
    }

    /** Which instructions read each register. */
    synchronized Readers readers() {
        if (readers == null) {
            readers = new Readers(program);
        }
        return readers;
    }

    /** What a register holds. */
    double value(int register) {
        return registers[register];
    }

    /** What a cell holds. */
    double value(Line line, int cell) {
        return registers[registers(line)[cell]];
    }

    /** What a cell shows: a text, the reason in place of an optional number, or the number with every digit. */
    String text(Line line, int cell) {
        double value = value(line, cell);
        if (line.kind() == Kind.TEXT) {
            return texts.text(value);
        }
        if (hasReason(line, cell)) {
            return texts.reason(value);
        }
        return Double.isFinite(value) ? Numbers.plain(value) : "not a finite number";
    }

    /** Whether an optional number has a reason in place of a value. */
    boolean hasReason(Line line, int cell) {
        return line.kind() == Kind.OPTIONAL && Texts.isNoNumber(value(line, cell));
    }

    /** The registers of the cells of a line. */
    int[] registers(Line line) {
        int[] cells = program.outputs().get(line);
        if (cells == null) {
            throw new FormulaException("Line " + line + " is not a line of this budget.");
        }
        return cells;
    }
}
