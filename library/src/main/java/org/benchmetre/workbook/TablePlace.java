package org.benchmetre.workbook;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;

/**
 * Where the cells of a line stand: the first one, and the axis that runs down and the one that runs across from it.
 *
 * @param sheet name of the sheet
 * @param row row of the first cell, from 0
 * @param column column of the first cell, from 0
 * @param down the axis that runs down, or null
 * @param across the axis that runs across, or null
 */
record TablePlace(String sheet, int row, int column, Axis down, Axis across) {

    Spot spot(Line line, int cell) {
        return spot(line.positionOf(cell));
    }

    Spot spot(Position position) {
        int below = down == null ? 0 : position.on(down);
        int right = across == null ? 0 : position.on(across);
        return new Spot(sheet, row + below, column + right);
    }
}
