package org.benchmetre.page;

import org.benchmetre.budget.Line;

/**
 * The order of the rows of a table: that of a line's size as written, the largest first.
 *
 * @param line a number line along the rows
 * @param most how many rows are shown
 */
public record BySize(Line line, int most) {}
