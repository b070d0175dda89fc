package org.benchmetre.page;

/**
 * One or two panels side by side.
 *
 * @param left the first panel, {@link Panel#NONE} where there is none
 * @param right the second panel, {@link Panel#NONE} where there is none
 */
public record Panels(Panel left, Panel right) {

    /** No panels at all. */
    public static final Panels NONE = new Panels(Panel.NONE, Panel.NONE);
}
