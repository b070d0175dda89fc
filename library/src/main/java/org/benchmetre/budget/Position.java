package org.benchmetre.budget;

import java.io.Serializable;

/**
 * Where each axis stands while one cell of a formula is looked at. Immutable; setting an axis again covers the earlier setting.
 */
public final class Position implements Serializable {

    private static final long serialVersionUID = 1L;

    /** No axis set: the position of a single value. */
    public static final Position NONE = new Position(null, 0, null);

    private final Axis axis;
    private final int index;
    private final Position rest;

    private Position(Axis axis, int index, Position rest) {
        this.axis = axis;
        this.index = index;
        this.rest = rest;
    }

    /**
     * The same with one axis set.
     *
     * @param on the axis
     * @param at its row, from 0
     * @return the new position
     */
    public Position with(Axis on, int at) {
        return new Position(on, at, this);
    }

    /**
     * Where an axis stands.
     *
     * @param wanted the axis
     * @return its row, from 0
     * @throws FormulaException when the axis is not set
     */
    public int on(Axis wanted) {
        for (Position at = this; at != NONE; at = at.rest) {
            if (at.axis == wanted) {
                return at.index;
            }
        }
        throw new FormulaException("Axis " + wanted + " is not set here.");
    }
}
