package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.budget.entry.Given;

/** Where everything of a budget stands: worked out before anything is written, since formulas point forward too. */
final class WorkbookPlan {

    private final Budget budget;
    private final Map<String, SheetPlan> sheets = new LinkedHashMap<>();
    private final Map<Line, TablePlace> places = new LinkedHashMap<>();

    private WorkbookPlan(Budget budget) {
        this.budget = budget;
    }

    static WorkbookPlan of(Budget budget) {
        WorkbookPlan plan = new WorkbookPlan(budget);
        for (Schedule schedule : budget.schedules()) {
            SheetPlan sheet = plan.sheets.computeIfAbsent(schedule.sheet(), name -> new SheetPlan(name, budget));
            sheet.add(schedule);
            plan.settle(sheet, sheet.boxes().get(sheet.boxes().size() - 1));
        }
        return plan;
    }

    private void settle(SheetPlan sheet, Box box) {
        Schedule schedule = box.schedule();
        int first = Layout.of(schedule) == Layout.TABLE && sheet.hasNameColumn(schedule) ? 1 : 0;
        for (int i = 0; i < schedule.lines().size(); i++) {
            Line line = schedule.lines().get(i);
            places.put(line, place(sheet.name(), box, line, i, first + i));
        }
    }

    private static TablePlace place(String sheet, Box box, Line line, int order, int column) {
        int table = box.table();
        return switch (Layout.of(box.schedule())) {
            case LIST -> new TablePlace(sheet, table + 1 + order, ColumnWidths.LIST_VALUE, null, null);
            case TABLE -> new TablePlace(sheet, table + 2, column, line.axes().get(0), null);
            case PERIODS ->
                new TablePlace(
                        sheet,
                        table + 1 + order,
                        ColumnWidths.PERIOD_FIRST,
                        null,
                        line.axes().get(0));
            case BLOCKS -> {
                int top = table + order * SheetPlan.blockHeight(line);
                yield new TablePlace(
                        sheet, top + 2, ColumnWidths.PERIOD_FIRST, SheetPlan.down(line), SheetPlan.across(line));
            }
        };
    }

    Budget budget() {
        return budget;
    }

    Collection<SheetPlan> sheets() {
        return sheets.values();
    }

    SheetPlan sheet(String name) {
        if (!sheets.containsKey(name)) {
            throw new IllegalArgumentException(
                    "There is no sheet '" + name + "'; the sheets are " + String.join(", ", sheets.keySet()) + ".");
        }
        return sheets.get(name);
    }

    TablePlace place(Line line) {
        return places.get(line);
    }

    Spot spot(Line line, int cell) {
        return places.get(line).spot(line, cell);
    }

    /** The cell to type in: beside the value where the entry was given in another unit, else the value's own. */
    Spot typedSpot(Line line, int cell) {
        Spot value = spot(line, cell);
        return isConverted(line) ? new Spot(value.sheet(), value.row(), ColumnWidths.LIST_ENTRY) : value;
    }

    /** Whether a single value was given in a unit that is not its line's, or on a scale with another zero. */
    boolean isConverted(Line line) {
        if (!line.axes().isEmpty() || budget.entry(line).isEmpty()) {
            return false;
        }
        Given given = budget.given(line).get(0);
        return given.filled()
                && !(given.typedIn().equals(line.unit())
                        && given.typedIn().zero() == line.unit().zero());
    }

    /** The header cells or names along an axis of a line, for whoever needs to point at them. */
    List<Spot> names(Line line, Axis axis) {
        TablePlace place = place(line);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < axis.size(); i++) {
            spots.add(
                    axis == place.down()
                            ? new Spot(place.sheet(), place.row() + i, 0)
                            : new Spot(place.sheet(), headerRow(line, place), place.column() + i));
        }
        return spots;
    }

    private int headerRow(Line line, TablePlace place) {
        if (place.down() != null) {
            return place.row() - 1;
        }
        return sheet(place.sheet()).box(line).table();
    }
}
