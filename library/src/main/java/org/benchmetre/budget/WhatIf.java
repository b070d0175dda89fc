package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;

/**
 * A live table of one figure over steps of two entries. The lines between the entries and the figure are repeated, whole and with the
 * same formulas, for each case; what moves with one entry only is repeated once for each step of that entry and shared. The steps are
 * shares of the entry, and a reader may change them.
 */
public final class WhatIf {

    private static final Unit ONE = Unit.ONE;

    /**
     * One entry and its steps.
     *
     * @param entry a single entry
     * @param name a lower-case word for identifiers, such as {@code price}
     * @param title what one step is called
     * @param shares shares of the entry, such as 0.8 to 1.2
     */
    public record Steps(Line entry, String name, String title, double... shares) {}

    private final BudgetBuilder b;
    private final String sheet;
    private final String name;
    private final Line target;
    private final Steps down;
    private final Steps across;
    private final Cone moreDown;
    private final Cone moreAcross;
    private Line[] valuesDown;
    private Line[] valuesAcross;

    private WhatIf(BudgetBuilder b, String sheet, String name, Line target, Steps down, Steps across) {
        this.b = b;
        this.sheet = sheet;
        this.name = name;
        this.target = target;
        this.down = down;
        this.across = across;
        this.moreDown = Cone.between(down.entry(), target, b.formulas);
        this.moreAcross = Cone.between(across.entry(), target, b.formulas);
    }

    /**
     * Adds the table and the repeated lines, on one sheet.
     *
     * @param b where they are added; the figure and all it is made of are defined already
     * @param sheet a sheet of its own
     * @param title heading of the table
     * @param target a single figure that both entries move
     * @param down the entry whose steps run down
     * @param across the entry whose steps run across
     * @return the line of results, along both axes of steps
     * @throws FormulaException when an entry does not move the figure
     */
    public static Line table(BudgetBuilder b, String sheet, String title, Line target, Steps down, Steps across) {
        WhatIf table = new WhatIf(b, sheet, "whatif_" + target.id(), target, down, across);
        for (Steps steps : List.of(down, across)) {
            Cone cone = steps == down ? table.moreDown : table.moreAcross;
            if (!cone.has(target)) {
                throw new FormulaException("Entry " + steps.entry() + " does not move " + target + ".");
            }
        }
        return table.build(title);
    }

    private Line build(String title) {
        ScheduleBuilder result = b.schedule(sheet, title);
        Axis rows = axis(down);
        Axis columns = axis(across);
        Line atRow = shares(down, rows);
        Line atColumn = shares(across, columns);
        valuesDown = steps(down, rows, atRow);
        valuesAcross = steps(across, columns, atColumn);
        List<Map<Line, Line>> byRow = new ArrayList<>();
        List<Map<Line, Line>> byColumn = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            byRow.add(repeat(
                    Map.of(down.entry(), valuesDown[i]),
                    Only.DOWN,
                    down.title() + ", step " + (i + 1),
                    "_r" + (i + 1)));
        }
        for (int j = 0; j < columns.size(); j++) {
            byColumn.add(repeat(
                    Map.of(across.entry(), valuesAcross[j]),
                    Only.ACROSS,
                    across.title() + ", step " + (j + 1),
                    "_c" + (j + 1)));
        }
        List<Formula> table = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<Formula> row = new ArrayList<>();
            for (int j = 0; j < columns.size(); j++) {
                Map<Line, Line> known = new HashMap<>(byRow.get(i));
                known.putAll(byColumn.get(j));
                String words = down.title() + ", step " + (i + 1) + "; " + across.title() + ", step " + (j + 1);
                row.add(repeat(known, Only.BOTH, words, "_r" + (i + 1) + "c" + (j + 1))
                        .get(target));
            }
            table.add(new Rows(columns, row));
        }
        return result.line(name, target.label(), target.unit(), new Rows(rows, table));
    }

    private Axis axis(Steps steps) {
        List<String> keys = IntStream.rangeClosed(1, steps.shares().length)
                .mapToObj(i -> "step_" + i)
                .toList();
        return Axis.rows(name + "_" + steps.name(), steps.title(), keys, 0);
    }

    /** The shares as entries along the steps, and what the entry is at each of them. */
    private Line shares(Steps steps, Axis axis) {
        List<Given> shares = new ArrayList<>();
        for (double share : steps.shares()) {
            shares.add(Given.number(share, ONE).from("a step of the table; change it as you like"));
        }
        String id = name + "_" + steps.name();
        ScheduleBuilder s = b.schedule(sheet, "Steps of " + steps.title().toLowerCase(Locale.ROOT));
        List<Formula> names = IntStream.rangeClosed(1, axis.size())
                .<Formula>mapToObj(i -> Formulas.text("step " + i))
                .toList();
        b.nameRows(axis, s.textLine(id + "_step", "Step", new Rows(axis, names)));
        Line share = s.entry(id + "_share", "Share of the entry", ONE, axis)
                .from(0, 100)
                .given(shares);
        return s.line(id + "_value", steps.title(), steps.entry().unit(), share.times(steps.entry()));
    }

    /** The entry at each step as a single figure, which stands in for it. */
    private Line[] steps(Steps steps, Axis axis, Line value) {
        ScheduleBuilder values = b.schedule(sheet, steps.title() + " at each step");
        Line[] lines = new Line[axis.size()];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = values.line(
                    name + "_" + steps.name() + "_" + (i + 1),
                    steps.title() + ", step " + (i + 1),
                    steps.entry().unit(),
                    new Element(value, axis, i));
            b.repeated.add(lines[i]);
        }
        return lines;
    }

    /** Which lines are repeated: those that move with one entry alone, or with both. */
    private enum Only {
        DOWN,
        ACROSS,
        BOTH
    }

    private boolean belongs(Line line, Only only) {
        boolean byRow = moreDown.has(line);
        boolean byColumn = moreAcross.has(line);
        return switch (only) {
            case DOWN -> byRow && !byColumn;
            case ACROSS -> byColumn && !byRow;
            case BOTH -> byRow && byColumn;
        };
    }

    /** Repeats lines over stand-ins. Answers all stand-ins, those given included. */
    private Map<Line, Line> repeat(Map<Line, Line> known, Only only, String words, String suffix) {
        Map<Line, Line> standIns = new LinkedHashMap<>(known);
        Map<List<Axis>, ScheduleBuilder> schedules = new LinkedHashMap<>();
        List<Line> repeated = List.copyOf(b.formulas.keySet()).stream()
                .filter(line -> belongs(line, only))
                .toList();
        for (Line line : repeated) {
            ScheduleBuilder s = schedules.computeIfAbsent(line.axes(), axes -> b.schedule(sheet, words));
            Line copy = s.declare(
                    name + suffix + "_" + line.id(), line.label(), line.unit(), line.kind(), line.axes(), line.note());
            b.repeated.add(copy);
            standIns.put(line, copy);
        }
        Substitution over = new Substitution(standIns);
        for (Line line : repeated) {
            b.define(standIns.get(line), b.formulas.get(line).walk(over));
        }
        return standIns;
    }
}
