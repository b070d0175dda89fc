package org.benchmetre.budget;

import java.io.Serializable;

/**
 * One cell of a line.
 *
 * @param line the line
 * @param cell which of its cells, from 0
 */
public record CellRef(Line line, int cell) implements Serializable {

    @Override
    public String toString() {
        return line.address(cell);
    }
}
