package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * One immutable expression over lines. Its unit, kind and axes are known when it is built, and what does not fit does not build:
 * metres do not add to litres, money of today does not add to money of a later year.
 *
 * <p>Formulas are elementwise: along an axis that both sides have, row meets row; a single value meets every row. Everything that
 * is done with a formula (evaluate, find what it depends on, print it for a spreadsheet, explain it) is a {@link Walk}.
 */
public sealed interface Formula extends Serializable
        permits Line, Constant, Call, Fold, Lookup, Element, Previous, Rows {

    /**
     * The unit of the result; 1 for texts and truths.
     *
     * @return the unit
     */
    Unit unit();

    /**
     * What the result is.
     *
     * @return number, optional number, truth or text
     */
    Kind kind();

    /**
     * What the result repeats along.
     *
     * @return none, one or two axes
     */
    List<Axis> axes();

    /**
     * Hands this node to the method of the walk that fits it.
     *
     * @param walk what to do
     * @param <R> what the walk answers
     * @return the walk's answer
     */
    <R> R walk(Walk<R> walk);

    /**
     * Sum.
     *
     * @param other of the same unit
     * @return this + other
     * @throws FormulaException when the units differ
     */
    default Formula plus(Formula other) {
        return Call.of(Function.ADD, this, other);
    }

    /**
     * Difference.
     *
     * @param other of the same unit
     * @return this - other
     * @throws FormulaException when the units differ
     */
    default Formula minus(Formula other) {
        return Call.of(Function.SUBTRACT, this, other);
    }

    /**
     * Product.
     *
     * @param other any number
     * @return this * other
     */
    default Formula times(Formula other) {
        return Call.of(Function.MULTIPLY, this, other);
    }

    /**
     * Quotient. Where the divisor can be zero, guard it with {@link Formulas#when}.
     *
     * @param other any number
     * @return this / other
     */
    default Formula over(Formula other) {
        return Call.of(Function.DIVIDE, this, other);
    }

    /**
     * Power of a plain number that is not negative, or whole power of any unit.
     *
     * @param exponent a plain number; a whole constant when this has a unit
     * @return this ^ exponent
     */
    default Formula power(Formula exponent) {
        return Call.of(Function.POWER, this, exponent);
    }

    /**
     * Converts to another unit of the same dimension; the workbook shows the plain factor.
     *
     * @param target the unit wanted
     * @return the same quantity in the target unit
     * @throws org.benchmetre.budget.unit.UnitException when the dimensions differ
     */
    default Formula in(Unit target) {
        return Constant.conversion(this, target);
    }

    /**
     * Gives a number the name of what it counts, without changing it: the metres of bench that a driver counts, the whole number of
     * intervals that are plants.
     *
     * @param target any unit
     * @return the same number in the target unit
     */
    default Formula counting(Unit target) {
        return times(Constant.number(1, target.over(unit())));
    }

    /**
     * Rounded up to a whole number: {@code ROUNDUP(ROUND(x,6),0)}.
     *
     * @return the whole number, in this unit
     */
    default Formula wholeUp() {
        return Call.of(Function.WHOLE_UP, this);
    }

    /**
     * Rounded down to a whole number: {@code INT(ROUND(x,6))}.
     *
     * @return the whole number, in this unit
     */
    default Formula wholeDown() {
        return Call.of(Function.WHOLE_DOWN, this);
    }

    /**
     * Whether a number is above zero. Meant for entries and guards, not for differences of sums.
     *
     * @return a truth
     */
    default Formula isPositive() {
        return Call.of(Function.POSITIVE, this);
    }

    /**
     * Whether this is more than the other by more than a millionth: {@code ROUND(x-y,6)>0}.
     *
     * @param other of the same unit
     * @return a truth
     */
    default Formula exceeds(Formula other) {
        return Call.of(Function.EXCEEDS, this, other);
    }

    /**
     * Whether two texts are the same, without regard to case.
     *
     * @param other a text
     * @return a truth
     */
    default Formula is(Formula other) {
        return Call.of(Function.SAME_TEXT, this, other);
    }

    /**
     * Whether a text is the given word, without regard to case.
     *
     * @param word any text
     * @return a truth
     */
    default Formula is(String word) {
        return is(Constant.text(word));
    }

    /**
     * Whether a date, written year first, is earlier than another; the empty text is earlier than all.
     *
     * @param other a text of the same form
     * @return a truth
     */
    default Formula isBefore(Formula other) {
        return Call.of(Function.BEFORE, this, other);
    }

    /**
     * Whether a text is not empty.
     *
     * @return a truth
     */
    default Formula isFilled() {
        return Call.of(Function.FILLED, this);
    }

    /**
     * Whether this optional number has a value.
     *
     * @return a truth
     */
    default Formula hasNumber() {
        return Call.of(Function.HAS_NUMBER, this);
    }

    /**
     * The value of this optional number, or another where it has none: {@code IF(ISNUMBER(x),x,y)}.
     *
     * @param otherwise a number of the same unit
     * @return a number
     */
    default Formula numberOr(Formula otherwise) {
        return Call.of(Function.NUMBER_OR, this, otherwise);
    }

    /**
     * Whether a list of keys, apart by spaces, has the given one.
     *
     * @param key a text
     * @return a truth
     */
    default Formula hasKey(Formula key) {
        return Call.of(Function.HAS_KEY, this, key);
    }

    /**
     * The axes of several formulas together.
     *
     * @param parts formulas
     * @return every axis once, in order of first use
     * @throws FormulaException when there are more than two
     */
    static List<Axis> axesOf(List<? extends Formula> parts) {
        return Axis.union(parts.stream().map(Formula::axes).toList());
    }
}
