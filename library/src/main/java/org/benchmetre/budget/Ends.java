package org.benchmetre.budget;

import java.io.Serializable;

/**
 * The entries that hold the usual range of another one.
 *
 * @param low the low end
 * @param high the high end
 */
public record Ends(Line low, Line high) implements Serializable {}
