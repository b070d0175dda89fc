package org.benchmetre.budget;

/** Where a fold writes what it does, as functions over the values of single cells. Operands are numbers that this hands out. */
public interface Instructions {

    /**
     * A number that is the same in every case.
     *
     * @param value the number
     * @return its operand
     */
    int constant(double value);

    /**
     * The result of a function.
     *
     * @param function what is done
     * @param operands over what
     * @return its operand
     */
    int apply(Function function, int... operands);
}
