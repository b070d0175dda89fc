package org.benchmetre.budget;

import java.util.Map;
import org.benchmetre.budget.entry.Given;

/** Values that no gate has looked at, as a reader may type them into a workbook: for tests of formulas at their ends. */
public final class TypedOver {

    private TypedOver() {}

    /** The budget with the values in it. */
    public static Budget of(Budget budget, Map<Line, Map<Integer, Given>> changes) {
        Layer layer = new Layer();
        changes.forEach((line, cells) -> cells.forEach((cell, value) -> layer.put(line, cell, value)));
        return budget.laid(layer);
    }
}
