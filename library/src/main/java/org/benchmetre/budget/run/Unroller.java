package org.benchmetre.budget.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Call;
import org.benchmetre.budget.CellOrder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Constant;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Fold;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Lookup;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.Previous;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.Walk;

/**
 * Turns a whole budget into a program in which every entered cell and every one that a search fills varies, so that one program serves all budgets of
 * the same lines and formulas.
 */
final class Unroller {

    private final Budget budget;
    private final Registers registers;
    private final Map<Line, int[]> operands = new HashMap<>();

    private Unroller(Budget budget) {
        this.budget = budget;
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
        this.registers = new Registers(new Texts(), inputs);
    }

    static Program program(Budget budget) {
        return budget.once(Program.class, () -> {
            Unroller unroller = new Unroller(budget);
            CellOrder.of(budget).cells().forEach(unroller::write);
            return unroller.registers.program(unroller.operands);
        });
    }

    private void write(CellRef cell) {
        Line line = cell.line();
        budget.formula(line)
                .ifPresent(formula ->
                        operands.get(line)[cell.cell()] = formula.walk(new Lowering(line.positionOf(cell.cell()))));
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
            return registers.apply(Operation.of(call.function()), arguments);
        }

        @Override
        public Integer fold(Fold fold) {
            Axis axis = fold.axis();
            int[] terms = new int[axis.size()];
            for (int row = 0; row < terms.length; row++) {
                terms[row] = term(fold, position.with(axis, row));
            }
            return switch (fold.gather()) {
                case LEAST -> chained(Operation.MIN, terms);
                case GREATEST -> chained(Operation.MAX, terms);
                case PRESENT_VALUE -> discounted(terms, fold.tag().walk(this));
                case RATE_OF_RETURN -> registers.apply(Operation.RATE_OF_RETURN, terms);
                default -> registers.apply(Operation.SUM, terms);
            };
        }

        private int term(Fold fold, Position row) {
            int first = at(fold.lines().get(0), row);
            return switch (fold.gather()) {
                case SUM, LEAST, GREATEST, PRESENT_VALUE, RATE_OF_RETURN -> first;
                case SUM_PRODUCT ->
                    registers.apply(Operation.MULTIPLY, first, at(fold.lines().get(1), row));
                case SUM_WHERE -> tagged(fold, row, first);
                case COUNT_WHERE -> tagged(fold, row, registers.constant(1));
            };
        }

        private int tagged(Fold fold, Position row, int value) {
            int same = registers.apply(
                    Operation.SAME_TEXT, at(fold.tags(), row), fold.tag().walk(this));
            return registers.apply(Operation.IF, same, value, registers.constant(0));
        }

        private int discounted(int[] flows, int rate) {
            int growth = registers.apply(Operation.ADD, registers.constant(1), rate);
            int value = flows[flows.length - 1];
            for (int year = flows.length - 2; year >= 0; year--) {
                int later = registers.apply(Operation.DIVIDE, value, growth);
                value = registers.apply(Operation.ADD, later, flows[year]);
            }
            return value;
        }

        private int chained(Operation operation, int[] terms) {
            int result = terms[0];
            for (int i = 1; i < terms.length; i++) {
                result = registers.apply(operation, result, terms[i]);
            }
            return result;
        }

        @Override
        public Integer lookup(Lookup lookup) {
            int key = lookup.key().walk(this);
            int result = registers.constant(Double.NaN);
            for (int row = lookup.axis().size() - 1; row >= 0; row--) {
                Position there = position.with(lookup.axis(), row);
                int same = registers.apply(Operation.SAME_TEXT, at(lookup.keys(), there), key);
                result = registers.apply(Operation.IF, same, at(lookup.values(), there), result);
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
