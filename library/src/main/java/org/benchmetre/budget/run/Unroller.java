package org.benchmetre.budget.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Call;
import org.benchmetre.budget.CellOrder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Constant;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Fold;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Lookup;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.Previous;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.Walk;

/**
 * Turns a budget into a program in which every entered cell and every one that a search fills varies, so that one program serves all budgets of
 * the same lines and formulas.
 */
final class Unroller {

    private final Budget budget;
    private final Registers registers;
    private final Map<Line, int[]> operands = new HashMap<>();

    private final Set<CellRef> cut;

    private Unroller(Budget budget, List<CellRef> cut, Texts texts) {
        this.budget = budget;
        this.cut = new HashSet<>(cut);
        List<CellRef> inputs = new ArrayList<>();
        for (Line line : budget.lines()) {
            int[] cells = new int[line.size()];
            operands.put(line, cells);
            if (budget.formula(line).isEmpty()) {
                for (int cell = 0; cell < cells.length; cell++) {
                    cells[cell] = inputs.size();
                    inputs.add(new CellRef(line, cell));
                }
            }
        }
        for (CellRef cell : this.cut) {
            if (budget.formula(cell.line()).isPresent()) {
                operands.get(cell.line())[cell.cell()] = inputs.size();
                inputs.add(cell);
            }
        }
        this.registers = new Registers(texts, inputs);
        CellOrder.of(budget).cells().forEach(this::write);
    }

    /** All lines of a budget. */
    static Program program(Budget budget) {
        return budget.once(Program.class, () -> {
            Unroller all = new Unroller(budget, List.of(), new Texts());
            return all.registers.program(all.operands);
        });
    }

    /** Some lines of a budget, for which cells that have a formula are inputs all the same. */
    static Program program(Budget budget, List<CellRef> cut, List<Line> outputs, Texts known) {
        Unroller some = new Unroller(budget, cut, known.over());
        Map<Line, int[]> wanted = new HashMap<>();
        outputs.forEach(line -> wanted.put(line, some.operands.get(line)));
        cut.forEach(cell -> wanted.put(cell.line(), some.operands.get(cell.line())));
        return some.registers.program(wanted);
    }

    private void write(CellRef cell) {
        Line line = cell.line();
        Formula formula = budget.formula(line).orElse(null);
        if (formula != null && !cut.contains(cell)) {
            operands.get(line)[cell.cell()] = formula.walk(new Lowering(line.positionOf(cell.cell())));
        }
    }

    /** Writes the instructions of one cell's formula. */
    private final class Lowering implements Walk<Integer> {

        private final Position position;

        Lowering(Position position) {
            this.position = position;
        }

        @Override
        public Integer line(Line line) {
            return at(line, position);
        }

        private int at(Line line, Position where) {
            return operands.get(line)[line.cellAt(where)];
        }

        @Override
        public Integer constant(Constant constant) {
            return constant.kind() == Kind.TEXT
                    ? registers.text(constant.text())
                    : registers.constant(constant.number());
        }

        @Override
        public Integer call(Call call) {
            int[] arguments = new int[call.arguments().size()];
            for (int i = 0; i < arguments.length; i++) {
                arguments[i] = call.arguments().get(i).walk(this);
            }
            return registers.apply(call.function(), arguments);
        }

        @Override
        public Integer fold(Fold fold) {
            List<Line> lines = fold.lines();
            int[][] rows = new int[lines.size()][fold.axis().size()];
            for (int row = 0; row < fold.axis().size(); row++) {
                Position there = position.with(fold.axis(), row);
                for (int k = 0; k < rows.length; k++) {
                    rows[k][row] = at(lines.get(k), there);
                }
            }
            int beside = fold.tag() == null ? 0 : fold.tag().walk(this);
            return fold.gather().write(registers, rows, beside);
        }

        @Override
        public Integer lookup(Lookup lookup) {
            int key = lookup.key().walk(this);
            int result = registers.constant(Double.NaN);
            for (int row = lookup.axis().size() - 1; row >= 0; row--) {
                Position there = position.with(lookup.axis(), row);
                int same = registers.apply(Function.SAME_TEXT, at(lookup.keys(), there), key);
                result = registers.apply(Function.IF, same, at(lookup.values(), there), result);
            }
            return result;
        }

        @Override
        public Integer element(Element element) {
            return at(element.line(), position.with(element.axis(), element.index()));
        }

        @Override
        public Integer previous(Previous previous) {
            int period = position.on(previous.axis());
            return period == 0
                    ? previous.initial().walk(this)
                    : at(previous.line(), position.with(previous.axis(), period - 1));
        }

        @Override
        public Integer rows(Rows rows) {
            Formula own = rows.formulas().get(position.on(rows.axis()));
            return own.walk(this);
        }
    }
}
