package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Workbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;

/**
 * What somebody types over in a cell of a written workbook.
 *
 * @param spot the cell
 * @param value a Double, or a String; an empty one leaves the cell blank
 */
record Typing(Spot spot, Object value) {

    /**
     * Changes as they are typed into the workbook of a budget.
     *
     * @param plan where everything that was written stands
     * @param changes for each entry line the new value by cell
     * @return one for each cell
     */
    static List<Typing> of(WorkbookPlan plan, Map<Line, Map<Integer, Given>> changes) {
        Budget budget = plan.budget();
        List<Typing> all = new ArrayList<>();
        changes.forEach((line, cells) -> cells.forEach((cell, given) -> all.add(new Typing(
                plan.typedSpot(line, cell),
                value(plan, line, given, budget.given(line).get(cell))))));
        return all;
    }

    /**
     * What brings the cells of changes back to what was written.
     *
     * @param plan where everything that was written stands
     * @param changes what was typed
     * @return one for each cell
     */
    static List<Typing> back(WorkbookPlan plan, Map<Line, Map<Integer, Given>> changes) {
        Budget budget = plan.budget();
        List<Typing> all = new ArrayList<>();
        changes.forEach((line, cells) -> cells.keySet().forEach(cell -> {
            Given before = budget.given(line).get(cell);
            all.add(new Typing(plan.typedSpot(line, cell), value(plan, line, before, before)));
        }));
        return all;
    }

    /** What is typed for a value, where another one was written before. */
    static Object value(WorkbookPlan plan, Line line, Given given, Given before) {
        if (line.kind() == Kind.TEXT) {
            return plan.homes().isWorded(line) ? plan.homes().shown(line, given.text()) : given.text();
        }
        if (!given.filled()) {
            return ValueCells.mayBeBlank(line) ? "" : (Object) given.number();
        }
        return plan.isConverted(line) ? inUnitOf(before, given) : given.number();
    }

    /** The number to type where the unit beside it is the one that was typed before. */
    private static double inUnitOf(Given before, Given given) {
        return given.typedIn().equals(before.typedIn())
                ? given.typed()
                : given.typedIn().convertLevel(given.typed(), before.typedIn());
    }

    /** Types into an open workbook. */
    void into(Workbook workbook) {
        Cell cell = workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column());
        if (value instanceof Double number) {
            cell.setCellValue(number);
        } else if (value.equals("")) {
            cell.setBlank();
        } else {
            cell.setCellValue((String) value);
        }
    }
}
