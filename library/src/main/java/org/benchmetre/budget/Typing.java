package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/** Which units and kinds a function takes and what it gives. One rule serves every function of the same shape. */
@FunctionalInterface
interface Typing {

    /** Unit and kind of a result. */
    record Result(Unit unit, Kind kind) {}

    Result of(Function function, List<Formula> arguments);

    static Result alike(Function function, List<Formula> arguments) {
        return new Result(commonUnit(function, numbers(function, arguments)), Kind.NUMBER);
    }

    static Result product(Function function, List<Formula> arguments) {
        numbers(function, arguments);
        return new Result(arguments.get(0).unit().times(arguments.get(1).unit()), Kind.NUMBER);
    }

    static Result quotient(Function function, List<Formula> arguments) {
        numbers(function, arguments);
        return new Result(arguments.get(0).unit().over(arguments.get(1).unit()), Kind.NUMBER);
    }

    static Result power(Function function, List<Formula> arguments) {
        numbers(function, arguments);
        Formula base = arguments.get(0);
        Formula exponent = arguments.get(1);
        if (base instanceof Constant constant && constant.number() < 0) {
            throw new FormulaException("The base of a power is not negative, but found " + constant.number() + ".");
        }
        if (!exponent.unit().equals(Unit.ONE)) {
            throw new FormulaException("An exponent is a plain number, but found one in " + exponent.unit() + ".");
        }
        if (base.unit().equals(Unit.ONE)) {
            return new Result(Unit.ONE, Kind.NUMBER);
        }
        if (exponent instanceof Constant constant && constant.number() == Math.rint(constant.number())) {
            return new Result(base.unit().power((int) constant.number()), Kind.NUMBER);
        }
        throw new FormulaException("A power of " + base.unit()
                + " needs a whole constant exponent; divide by a reference quantity first.");
    }

    static Result plain(Function function, List<Formula> arguments) {
        Unit unit = commonUnit(function, numbers(function, arguments));
        if (!unit.equals(Unit.ONE)) {
            throw new FormulaException(function + " takes plain numbers, but found " + unit + ".");
        }
        return new Result(Unit.ONE, Kind.NUMBER);
    }

    static Result recovery(Function function, List<Formula> arguments) {
        numbers(function, arguments);
        Unit money = commonUnit(function, arguments.subList(2, 4));
        Unit wanted = Interest.rateOn(money);
        Unit rate = arguments.get(0).unit();
        if (!rate.equals(wanted)) {
            throw new FormulaException("A rate on " + money + " is in " + wanted + ", but found " + rate + " ("
                    + Words.of(arguments.get(0)) + ").");
        }
        Unit year = Unit.parse("a");
        if (!arguments.get(1).unit().equals(year)) {
            throw new FormulaException(
                    "A life is in a, but found " + arguments.get(1).unit() + ".");
        }
        return new Result(money.over(year), Kind.NUMBER);
    }

    static Result branch(Function function, List<Formula> arguments) {
        want(function, arguments.get(0), Kind.TRUTH);
        List<Formula> branches = arguments.subList(1, 3);
        Kind kind = branches.get(0).kind();
        if (kind == Kind.TRUTH || branches.get(1).kind() != kind) {
            throw new FormulaException("Both alternatives of a choice are of one kind, but found " + kind + " and "
                    + branches.get(1).kind() + ".");
        }
        return new Result(commonUnit(function, branches), kind);
    }

    static Result onlyIf(Function function, List<Formula> arguments) {
        want(function, arguments.get(0), Kind.TRUTH);
        want(function, arguments.get(1), Kind.NUMBER);
        want(function, arguments.get(2), Kind.TEXT);
        return new Result(arguments.get(1).unit(), Kind.OPTIONAL);
    }

    static Result optional(Function function, List<Formula> arguments) {
        want(function, arguments.get(0), Kind.OPTIONAL);
        return new Result(Unit.ONE, Kind.TRUTH);
    }

    static Result numberOr(Function function, List<Formula> arguments) {
        want(function, arguments.get(0), Kind.OPTIONAL);
        want(function, arguments.get(1), Kind.NUMBER);
        return new Result(commonUnit(function, arguments), Kind.NUMBER);
    }

    static Result truths(Function function, List<Formula> arguments) {
        arguments.forEach(argument -> want(function, argument, Kind.TRUTH));
        return new Result(Unit.ONE, Kind.TRUTH);
    }

    static Result compared(Function function, List<Formula> arguments) {
        commonUnit(function, numbers(function, arguments));
        return new Result(Unit.ONE, Kind.TRUTH);
    }

    static Result texts(Function function, List<Formula> arguments) {
        arguments.forEach(argument -> want(function, argument, Kind.TEXT));
        return new Result(Unit.ONE, Kind.TRUTH);
    }

    static Result joined(Function function, List<Formula> arguments) {
        arguments.forEach(argument -> want(function, argument, Kind.TEXT));
        return new Result(Unit.ONE, Kind.TEXT);
    }

    static Result shown(Function function, List<Formula> arguments) {
        numbers(function, arguments);
        if (!(arguments.get(1) instanceof Constant decimals) || !decimals.unit().equals(Unit.ONE)) {
            throw new FormulaException(
                    "Decimals of a number in a text are a constant, but found " + Words.of(arguments.get(1)) + ".");
        }
        return new Result(Unit.ONE, Kind.TEXT);
    }

    static Result inFoldsOnly(Function function, List<Formula> arguments) {
        throw new FormulaException(function + " is written over the rows of a line, by a fold, but found "
                + arguments.size() + " formulas.");
    }

    private static List<Formula> numbers(Function function, List<Formula> arguments) {
        arguments.forEach(argument -> want(function, argument, Kind.NUMBER));
        return arguments;
    }

    private static void want(Function function, Formula argument, Kind kind) {
        if (argument.kind() != kind) {
            throw new FormulaException(function + " wants a " + kind + ", but found a " + argument.kind() + ": "
                    + Words.of(argument) + ".");
        }
    }

    private static Unit commonUnit(Function function, List<Formula> arguments) {
        Unit first = arguments.get(0).unit();
        for (Formula argument : arguments) {
            if (!argument.unit().equals(first)) {
                throw new FormulaException(function + " wants one unit, but found " + first + " ("
                        + Words.of(arguments.get(0)) + ") and " + argument.unit() + " (" + Words.of(argument) + ").");
            }
        }
        return first;
    }
}
