package org.benchmetre.budget.unit;

/** A unit that is unknown, badly written, or of another dimension than the place it is put to. */
public final class UnitException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String unknown;

    /**
     * A whole sentence with the units in question.
     *
     * @param message what is wrong
     */
    public UnitException(String message) {
        super(message);
        this.unknown = "";
    }

    /**
     * A word that stands for no unit.
     *
     * @param text the unit as written
     * @param unknown the word
     */
    UnitException(String text, String unknown) {
        super("Unit '" + unknown + "'" + (text.equals(unknown) ? "" : " in '" + text + "'") + " is unknown.");
        this.unknown = unknown;
    }

    /**
     * The word that stands for no unit.
     *
     * @return empty when something else is wrong
     */
    public String unknown() {
        return unknown;
    }
}
