package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.unit.Ratio;
import org.benchmetre.budget.unit.Unit;

/**
 * A number with its unit, or a text, written in the formula itself.
 *
 * @param kind number or text
 * @param number the number; 0 for a text
 * @param text the text; empty for a number
 * @param unit the unit of the number
 */
public record Constant(Kind kind, double number, String text, Unit unit) implements Formula {

    /** Refuses numbers that are not finite. */
    public Constant {
        if (!Double.isFinite(number)) {
            throw new FormulaException("A constant is finite, but found " + number + ".");
        }
    }

    /**
     * A number.
     *
     * @param value finite
     * @param unit its unit
     * @return the constant
     */
    public static Constant number(double value, Unit unit) {
        return new Constant(Kind.NUMBER, value + 0.0, "", unit);
    }

    /**
     * A text.
     *
     * @param value any text
     * @return the constant
     */
    public static Constant text(String value) {
        return new Constant(Kind.TEXT, 0, value, Unit.ONE);
    }

    /** Multiplies or divides by the factor between two units, whichever is written with fewer digits. */
    static Formula conversion(Formula formula, Unit target) {
        Ratio factor = formula.unit().factorTo(target);
        Unit step = target.over(formula.unit());
        double times = factor.toDouble();
        double over = Ratio.ONE.over(factor).toDouble();
        if (Numbers.plain(over).length() < Numbers.plain(times).length()) {
            return formula.over(number(over, Unit.ONE.over(step)));
        }
        return formula.times(number(times, step));
    }

    /**
     * Whether this is the number one.
     *
     * @return true for a number equal to 1, whatever its unit
     */
    public boolean isOne() {
        return kind == Kind.NUMBER && number == 1;
    }

    @Override
    public List<Axis> axes() {
        return List.of();
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.constant(this);
    }
}
