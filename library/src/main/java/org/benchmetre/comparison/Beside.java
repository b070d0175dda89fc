package org.benchmetre.comparison;

import org.benchmetre.budget.Line;

/**
 * A figure that every scenario has, and what each has more of it than the first.
 *
 * @param key what it is, such as {@code first_cost}
 * @param measure by what it is divided, such as {@code metre}; empty when by nothing
 * @param value the figure, along the scenarios; a reason where there is none
 * @param difference less the first scenario's, along the scenarios; a reason where one of the two has none
 */
public record Beside(String key, String measure, Line value, Line difference) {}
