package org.benchmetre.budget;

/**
 * One way of going through a formula, with a method for each kind of node.
 *
 * @param <R> what a node answers
 */
public interface Walk<R> {

    /**
     * A reference to another line.
     *
     * @param line the line
     * @return the walk's answer
     */
    R line(Line line);

    /**
     * A number or text written in the formula.
     *
     * @param constant the constant
     * @return the walk's answer
     */
    R constant(Constant constant);

    /**
     * An operator or function over formulas.
     *
     * @param call the call
     * @return the walk's answer
     */
    R call(Call call);

    /**
     * A sum or the like along an axis.
     *
     * @param fold the fold
     * @return the walk's answer
     */
    R fold(Fold fold);

    /**
     * The row of a table whose key matches.
     *
     * @param lookup the lookup
     * @return the walk's answer
     */
    R lookup(Lookup lookup);

    /**
     * One fixed row or period of a line.
     *
     * @param element the element
     * @return the walk's answer
     */
    R element(Element element);

    /**
     * The period before.
     *
     * @param previous the reference back
     * @return the walk's answer
     */
    R previous(Previous previous);

    /**
     * A formula of its own for each row.
     *
     * @param rows the rows
     * @return the walk's answer
     */
    R rows(Rows rows);
}
