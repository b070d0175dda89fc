package org.benchmetre.budget.unit;

/** A unit that is unknown, badly written, or of another dimension than the place it is put to. */
public final class UnitException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * A whole sentence with the units in question.
     *
     * @param message what is wrong
     */
    public UnitException(String message) {
        super(message);
    }
}
