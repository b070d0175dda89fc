package org.benchmetre.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Column;
import org.benchmetre.page.EntryTable;

/**
 * Places the entries of a table. Rows of a table run down, periods across, as they do in the workings, since a formula cannot gather what
 * runs down together with what runs across. A short table that is too wide for the page goes on below in a second band; of a long one,
 * columns in which nothing is typed are folded away.
 */
final class EntryTablePlanner {

    /** Rows from which on a wide table is one band that prints on several pages, and its headings stay in sight. */
    private static final int LONG = 14;

    private static final int NAME_WIDTH = 24;
    private static final int WIDE_NAME = 30;
    private static final int WIDE_SOURCE = 60;
    private static final int BAND_WIDTH = 10;
    private static final int MOST_COLUMNS = 13;
    private static final int SOURCE_SPAN = 4;
    private static final int PERIOD_WIDTH = 8;
    private static final int UNIT_WIDTH = 12;

    private final PagePlan plan;
    private int row;

    /** Columns of one line, side by side or one below the other. */
    private record Run(Line line, List<Column> columns) {}

    EntryTablePlanner(PagePlan plan, int row) {
        this.plan = plan;
        this.row = row;
    }

    /** Answers the first row below the table. */
    int place(EntryTable block) {
        List<Run> runs = runs(block.columns().stream()
                .filter(column -> !plan.isHomedElsewhere(column.line()))
                .toList());
        if (Layout.runsAcross(block.axis())) {
            periods(block.axis(), runs);
        } else {
            bands(block.axis(), runs);
        }
        return row;
    }

    private static List<Run> runs(List<Column> columns) {
        List<Run> runs = new ArrayList<>();
        for (Column column : columns) {
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.line() == column.line()) {
                last.columns().add(column);
            } else {
                runs.add(new Run(column.line(), new ArrayList<>(List.of(column))));
            }
        }
        return runs;
    }

    private void periods(Axis periods, List<Run> runs) {
        plan.widen(0, NAME_WIDTH);
        plan.widen(1, UNIT_WIDTH);
        head(0, "Entry", false);
        head(1, "Unit", false);
        for (int i = 0; i < periods.size(); i++) {
            plan.widen(2 + i, PERIOD_WIDTH);
            plan.add(PageCell.of(row, 2 + i, new PageCell.Named(periods, i), Look.Role.HEAD_NUMBER));
        }
        plan.headRow(row);
        row++;
        for (Run run : runs) {
            boolean several = run.columns().size() > 1;
            if (several) {
                plan.add(PageCell.of(row++, 0, new PageCell.Plain(run.line().label()), Look.Role.SECTION));
            }
            plan.home(run.line(), tablePlace(run.line(), periods, row, 2, false));
            for (Column column : run.columns()) {
                plan.add(PageCell.of(
                        row,
                        0,
                        several ? named(column, periods) : new PageCell.Plain(column.heading()),
                        Look.Role.LABEL));
                plan.add(PageCell.of(row, 1, new PageCell.Plain(plan.beside().unit(run.line())), Look.Role.UNIT));
                for (int i = 0; i < periods.size(); i++) {
                    entry(row, 2 + i, 2 + i, column.cell(periods, i));
                }
                row++;
            }
        }
    }

    /** The name of the row of its other axis. */
    private static PageCell.Content named(Column column, Axis periods) {
        Axis other = column.line().axes().stream()
                .filter(axis -> axis != periods)
                .findFirst()
                .orElseThrow();
        return new PageCell.Named(other, column.fixed().on(other));
    }

    private TablePlace tablePlace(Line line, Axis axis, int top, int column, boolean down) {
        Axis other =
                line.axes().stream().filter(each -> each != axis).findFirst().orElse(null);
        return new TablePlace(plan.name(), top, column, down ? axis : other, down ? other : axis);
    }

    private void bands(Axis axis, List<Run> given) {
        List<Run> runs = namesFirst(axis, given);
        boolean inOne = axis.size() >= LONG;
        List<Run> band = new ArrayList<>();
        boolean first = true;
        for (Run run : runs) {
            if (!inOne && !band.isEmpty() && span(band) + span(run) > MOST_COLUMNS) {
                band(axis, band, first, false);
                first = false;
                band.clear();
            }
            band.add(run);
        }
        band(axis, band, first, inOne);
        if (inOne) {
            plan.fill(0, WIDE_NAME);
            plan.fill(plan.lastColumn(), WIDE_SOURCE);
        }
    }

    /** The names of the rows lead, their keys follow. */
    private List<Run> namesFirst(Axis axis, List<Run> runs) {
        List<Run> sorted = new ArrayList<>(runs);
        sorted.sort(Comparator.comparing(run -> !plan.namesRows(axis, run.line())));
        return sorted;
    }

    private static int span(List<Run> runs) {
        return runs.stream().mapToInt(EntryTablePlanner::span).sum();
    }

    private static int span(Run run) {
        return ColumnWidths.isSource(run.line()) ? SOURCE_SPAN : run.columns().size();
    }

    private void band(Axis axis, List<Run> runs, boolean first, boolean inOne) {
        int top = row + 1;
        int column = 0;
        plan.widen(0, NAME_WIDTH);
        if (!first) {
            head(0, axis.title(), false);
            for (int i = 0; i < axis.size(); i++) {
                plan.add(PageCell.of(top + i, 0, new PageCell.Named(axis, i), Look.Role.LABEL));
            }
            column++;
        }
        for (Run run : runs) {
            plan.home(run.line(), tablePlace(run.line(), axis, top, column, true));
            int span = inOne || !ColumnWidths.isSource(run.line()) ? 1 : SOURCE_SPAN;
            for (Column each : run.columns()) {
                String heading = plan.headed(each.heading(), run.line());
                int banded =
                        Math.max(BAND_WIDTH, span > 1 ? 0 : plan.entryWidths().ofWords(run.line(), heading));
                if (inOne && plan.entryWidths().isEmpty(run.line())) {
                    plan.foldColumn(column);
                }
                for (int i = column; column > 0 && i < column + span; i++) {
                    plan.widen(i, inOne ? plan.entryWidths().ofLongest(run.line(), heading) : banded);
                }
                head(column, heading, run.line().kind() != Kind.TEXT);
                for (int i = 0; i < axis.size(); i++) {
                    entry(top + i, column, column + span - 1, each.cell(axis, i));
                }
                column += span;
            }
        }
        plan.headRow(row);
        row = top + axis.size() + 1;
    }

    private void head(int column, String text, boolean number) {
        plan.add(PageCell.of(row, column, new PageCell.Plain(text), number ? Look.Role.HEAD_NUMBER : Look.Role.HEAD));
    }

    private void entry(int at, int column, int last, CellRef ref) {
        plan.add(PageCell.of(at, column, new PageCell.Typed(ref), Look.Role.ENTRY)
                .until(last));
    }
}
