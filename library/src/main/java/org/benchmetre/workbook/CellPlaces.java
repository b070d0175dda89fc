package org.benchmetre.workbook;

import org.benchmetre.budget.Addresses;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;

/**
 * Answers the formula printer from the plan: single values by name, all else (copies for a what-if table too) by absolute reference, with
 * the sheet where it is another one.
 *
 * @param plan where everything stands
 * @param here the sheet of the formula; empty for a formula that stands on none
 */
record CellPlaces(WorkbookPlan plan, String here) implements Addresses {

    @Override
    public String cell(Line line, int cell) {
        boolean named = line.axes().isEmpty() && !plan.budget().isRepeated(line);
        return named ? line.id() : plan.spot(line, cell).seenFrom(here);
    }

    @Override
    public String range(Line line, Axis axis, Position position) {
        TablePlace place = plan.place(line);
        Spot first = place.spot(position.with(axis, 0));
        Spot last = place.spot(position.with(axis, axis.size() - 1));
        return first.seenFrom(here) + (first.equals(last) ? "" : ":" + last.local());
    }

    @Override
    public boolean isDown(Line line, Axis axis) {
        return plan.place(line).down() == axis;
    }
}
