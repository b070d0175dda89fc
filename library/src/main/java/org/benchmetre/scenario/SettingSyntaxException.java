package org.benchmetre.scenario;

/** A setting or an address that does not follow the form. Whether its names exist is not looked at. */
public final class SettingSyntaxException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * A whole sentence with the text and the form it should have.
     *
     * @param message what is wrong
     */
    public SettingSyntaxException(String message) {
        super(message);
    }
}
