package org.benchmetre.budget;

/** A formula or budget that cannot be built: units that do not add, a name used twice, a cycle. A wrong call, never wrong data. */
public final class FormulaException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * A whole sentence with the names and units in question.
     *
     * @param message what is wrong
     */
    public FormulaException(String message) {
        super(message);
    }
}
