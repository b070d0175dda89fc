package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Page;

/** Where everything stands, pages and workings: worked out before anything is written, since formulas point forward too. */
final class WorkbookPlan {

    private final Budget budget;
    private final Homes homes;
    private final WordLists lists = new WordLists();
    private final List<PagePlan> pages = new ArrayList<>();
    private final Map<String, SheetPlan> sheets = new LinkedHashMap<>();
    private final Map<Line, TablePlace> places = new LinkedHashMap<>();
    private final Map<Line, String> shownOn = new HashMap<>();

    private WorkbookPlan(Figures figures) {
        this.budget = figures.budget();
        this.homes = new Homes(figures);
    }

    static WorkbookPlan of(Figures figures, List<Page> pages) {
        WorkbookPlan plan = new WorkbookPlan(figures);
        NumberFormats formats = new NumberFormats(figures);
        pages.forEach(page -> plan.pages.add(new PagePlan(page, pages, plan.homes, figures, formats)));
        plan.pages.forEach(plan::keepWhatIsShown);
        for (Schedule schedule : plan.budget.schedules()) {
            List<Line> left =
                    schedule.lines().stream().filter(plan::hasWorkings).toList();
            if (!left.isEmpty()) {
                plan.add(new Schedule(schedule.sheet(), schedule.title(), schedule.note(), left));
            }
        }
        return plan;
    }

    private void keepWhatIsShown(PagePlan page) {
        for (PageCell cell : page.cells()) {
            if (cell.content() instanceof PageCell.Shown shown) {
                shownOn.putIfAbsent(shown.ref().line(), page.name());
            }
            if (cell.link() != null) {
                shownOn.putIfAbsent(cell.link(), page.name());
            }
        }
        page.charts().forEach(chart -> chart.chart().values().forEach(line -> shownOn.putIfAbsent(line, page.name())));
    }

    /** Whether the line's own cells stand in the workings. */
    private boolean hasWorkings(Line line) {
        if (homes.has(line) && !homes.isApart(line)) {
            places.put(line, homes.place(line));
            return false;
        }
        return true;
    }

    private void add(Schedule schedule) {
        SheetPlan sheet = sheets.computeIfAbsent(schedule.sheet(), name -> new SheetPlan(name, this));
        sheet.add(schedule);
        settle(sheet, sheet.boxes().get(sheet.boxes().size() - 1));
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

    Homes homes() {
        return homes;
    }

    WordLists lists() {
        return lists;
    }

    List<PagePlan> pages() {
        return pages;
    }

    Collection<SheetPlan> sheets() {
        return sheets.values();
    }

    TablePlace place(Line line) {
        return places.get(line);
    }

    Spot spot(Line line, int cell) {
        return places.get(line).spot(line, cell);
    }

    /** The first page that shows a line of a schedule, else the first of all. */
    Optional<String> pageOf(Schedule schedule) {
        return schedule.lines().stream()
                .map(shownOn::get)
                .filter(Objects::nonNull)
                .findFirst()
                .or(() -> pages.stream().map(PagePlan::name).findFirst());
    }

    /** The cell to type in: on a page, beside the value where the entry was given in another unit, else the value's own. */
    Spot typedSpot(Line line, int cell) {
        if (homes.has(line)) {
            return homes.spot(line, cell);
        }
        Spot value = spot(line, cell);
        return isConverted(line) ? new Spot(value.sheet(), value.row(), ColumnWidths.LIST_ENTRY) : value;
    }

    /** Whether a single value was given in a unit that is not its line's, or on a scale with another zero. */
    boolean isConverted(Line line) {
        return homes.isConverted(line);
    }

    /** Whether an entry is typed where its line stands in the workings, since no page has it. */
    boolean isTypedInWorkings(Line line) {
        return budget.entry(line).isPresent() && !homes.has(line);
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
        return sheets.get(place.sheet()).box(line).table();
    }
}
