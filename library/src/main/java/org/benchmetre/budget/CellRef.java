package org.benchmetre.budget;

/**
 * One cell of a line.
 *
 * @param line the line
 * @param cell which of its cells, from 0
 */
public record CellRef(Line line, int cell) {

    @Override
    public String toString() {
        return line.address(cell);
    }
}
