package org.benchmetre.budget.run;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.entry.Given;

/** A budget computed as it stands: the program of its formulas, run once on what is entered and on what searches found. */
final class Whole {

    /** What stands in the cells of a solved line before its search has run. */
    private static final Solved NOT_SEARCHED = Solved.none("not searched");

    private final Budget budget;
    private final Map<Line, List<Solved>> found;
    private final Program program;
    private final Texts texts;
    private final double[] registers;

    private Whole(Budget budget, Map<Line, List<Solved>> found) {
        this.budget = budget;
        this.found = found;
        this.program = Unroller.program(budget);
        this.texts = program.texts().copy();
        this.registers = new SingleRun(program, texts)
                .run(program.inputs().stream().mapToDouble(this::known).toArray());
    }

    /** The budget before any search; whatever follows from one is not to be read. */
    static Whole of(Budget budget) {
        return new Whole(budget, Map.of());
    }

    /** Another budget of the same lines, with what the searches of this one found. */
    Whole on(Budget other) {
        return new Whole(other, found);
    }

    /** The same after all searches have run on the entries of the budget. */
    Whole searched() {
        Map<Line, List<Solved>> all = new HashMap<>();
        budget.solved()
                .forEach(line -> all.put(line, checked(line, budget.search(line).find(budget))));
        return new Whole(budget, all);
    }

    private static List<Solved> checked(Line line, List<Solved> found) {
        if (found.size() != line.size()) {
            throw new FormulaException("Line " + line + " has " + line.size() + " cells, but its search found "
                    + found.size() + " values.");
        }
        for (Solved each : found) {
            if (line.kind() == Kind.NUMBER && !each.hasNumber()) {
                throw new FormulaException(
                        "Line " + line + " takes numbers alone, but its search found '" + each.reason() + "'.");
            }
        }
        return List.copyOf(found);
    }

    private double known(CellRef cell) {
        Line line = cell.line();
        if (budget.isSolved(line)) {
            return solved(line, found.containsKey(line) ? found.get(line).get(cell.cell()) : NOT_SEARCHED);
        }
        Given given = budget.given(line).get(cell.cell());
        return line.kind() == Kind.TEXT ? texts.code(given.text()) : given.number();
    }

    private double solved(Line line, Solved solved) {
        if (solved.hasNumber()) {
            return solved.number();
        }
        return line.kind() == Kind.NUMBER ? 0 : Texts.noNumber(texts.code(solved.reason()));
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
        int[] cells = program.outputs().get(line);
        if (cells == null) {
            throw new FormulaException("Line " + line + " is not a line of this budget.");
        }
        return cells;
    }
}
