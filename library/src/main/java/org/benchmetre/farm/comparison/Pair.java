package org.benchmetre.farm.comparison;

import org.benchmetre.budget.Line;

/**
 * Two irrigation systems that are held against each other.
 *
 * @param chosen key of the way that is counted
 * @param rival key of the way it is compared with
 */
public record Pair(Line chosen, Line rival) {}
