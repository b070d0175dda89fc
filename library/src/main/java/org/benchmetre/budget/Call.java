package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * An operator or function over formulas, elementwise.
 *
 * @param function what is done
 * @param arguments over what
 * @param unit unit of the result
 * @param kind kind of the result
 * @param axes axes of the result
 */
public record Call(Function function, List<Formula> arguments, Unit unit, Kind kind, List<Axis> axes)
        implements Formula {

    /** Keeps its own copy of the lists. */
    public Call {
        arguments = List.copyOf(arguments);
        axes = List.copyOf(axes);
    }

    static Call of(Function function, Formula... arguments) {
        List<Formula> all = List.of(arguments);
        Typing.Result result = function.typing().of(function, all);
        return new Call(function, all, result.unit(), result.kind(), Formula.axesOf(all));
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.call(this);
    }
}
