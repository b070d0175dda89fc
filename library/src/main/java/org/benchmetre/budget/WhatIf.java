package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What a figure would be in cases of one entry, of two, or of several at once. The cases of an entry are an axis. Each line between the entry and the figure
 * is repeated along it, with the same formula over the lines that stand in for others, so that nothing is defined twice: a single line
 * becomes a line of cases, a line along an axis a block. What moves with one entry only is repeated for that entry and shared.
 */
public final class WhatIf {

    /**
     * Cases of one entry.
     *
     * @param entry a single entry
     * @param name a lower-case word for identifiers, such as {@code price}
     * @param axis one row for each case
     * @param value the entry in each case, along the axis
     */
    public record Steps(Line entry, String name, Axis axis, Line value) {}

    private final BudgetBuilder b;
    private final String sheet;
    private final String name;
    private final Map<Line, Line> standIns = new HashMap<>();

    private WhatIf(BudgetBuilder b, String sheet, String name) {
        this.b = b;
        this.sheet = sheet;
        this.name = name;
    }

    /**
     * Cases of an entry whose values stand with the repeated lines.
     *
     * @param b where the line of values is added
     * @param sheet where the repeated lines stand
     * @param entry a single entry
     * @param axis one row for each case
     * @param values the entry in each case
     * @return the cases, under the name of the entry
     */
    public static Steps cases(BudgetBuilder b, String sheet, Line entry, Axis axis, Formula... values) {
        return cases(
                b.schedule(sheet, entry.label() + ": " + axis.title().toLowerCase(Locale.ROOT)),
                "",
                entry,
                axis,
                values);
    }

    /**
     * Cases of one of several entries that move at once, whose values stand in one table.
     *
     * @param s where the line of values is added
     * @param name a lower-case word that tells these cases from others of the same entry; may be empty
     * @param entry a single entry
     * @param axis one row for each case
     * @param values the entry in each case
     * @return the cases, under the name of the entry
     */
    public static Steps cases(ScheduleBuilder s, String name, Line entry, Axis axis, Formula... values) {
        String id = "case_" + (name.isEmpty() ? "" : name + "_") + entry.id();
        Line value = s.line(id, entry.label(), entry.unit(), new Rows(axis, List.of(values)));
        s.budget().repeated.add(value);
        return new Steps(entry, entry.id(), axis, value);
    }

    /**
     * A figure in each case of one entry.
     *
     * @param b where lines are added; the figure and all it is made of are defined already
     * @param sheet where the repeated lines stand
     * @param target a single figure that the entry moves
     * @param steps cases of the entry
     * @return the figure along the cases, a repeated line
     * @throws FormulaException when the entry does not move the figure, or a line between them has more axes than one
     */
    public static Line along(BudgetBuilder b, String sheet, Line target, Steps steps) {
        WhatIf cases = new WhatIf(b, sheet, "case_" + steps.name());
        Cone cone = cone(b, steps, target);
        cases.standIns.put(steps.entry(), steps.value());
        cases.repeat(
                cone::has,
                List.of(steps.axis()),
                steps.entry().label() + ": " + steps.axis().title().toLowerCase(Locale.ROOT));
        return cases.standIns.get(target);
    }

    /**
     * Figures in cases of several entries at once: each case gives every one of them a value. Each line between any of the entries and any
     * of the figures is repeated once. Figures that a search fills stay as they are.
     *
     * @param b where lines are added; the figures and all they are made of are defined already
     * @param sheet where the repeated lines stand
     * @param name a lower-case word; repeated lines are called {@code case_}, this word and the line
     * @param steps cases of different entries, all along the same axis; at least one
     * @param targets figures, single or along one axis of their own
     * @return each figure along the cases; the figure itself where no entry moves it
     * @throws FormulaException when the cases are none or run along different axes, two are of one entry, or a line on the way has more
     *     axes than one
     */
    public static Map<Line, Line> along(
            BudgetBuilder b, String sheet, String name, List<Steps> steps, List<Line> targets) {
        Axis axis = sharedAxis(steps);
        WhatIf cases = new WhatIf(b, sheet, "case_" + name);
        for (Steps each : steps) {
            if (cases.standIns.put(each.entry(), each.value()) != null) {
                throw new FormulaException("Cases of " + each.entry() + " are given twice.");
            }
        }
        Cone cone = Cone.between(steps.stream().map(Steps::entry).toList(), targets, b.formulas);
        cases.repeat(cone::has, List.of(axis), axis.title());
        Map<Line, Line> found = new LinkedHashMap<>();
        targets.forEach(target -> found.put(target, cases.standIns.getOrDefault(target, target)));
        return found;
    }

    private static Axis sharedAxis(List<Steps> steps) {
        List<Axis> axes = steps.stream().map(Steps::axis).distinct().toList();
        if (axes.size() != 1) {
            throw new FormulaException("Cases of several entries run along one axis, but found " + axes + ".");
        }
        return axes.get(0);
    }

    /**
     * A figure in each case of two entries.
     *
     * @param b where lines are added; the figure and all it is made of are defined already
     * @param sheet where the repeated lines stand
     * @param target a single figure that both entries move
     * @param down cases of one entry
     * @param across cases of another entry
     * @return the figure along both
     * @throws FormulaException when an entry does not move the figure, or a line on the way has more axes than one
     */
    public static Formula table(BudgetBuilder b, String sheet, Line target, Steps down, Steps across) {
        Cone moreDown = cone(b, down, target);
        Cone moreAcross = cone(b, across, target);
        Predicate<Line> both = line -> moreDown.has(line) && moreAcross.has(line);
        Predicate<Line> downOnly = line -> moreDown.has(line) && !moreAcross.has(line);
        Predicate<Line> acrossOnly = line -> moreAcross.has(line) && !moreDown.has(line);
        WhatIf cases = new WhatIf(b, sheet, "table_" + down.name() + "_" + across.name());
        cases.standIns.put(across.entry(), across.value());
        cases.repeat(acrossOnly, List.of(across.axis()), across.axis().title());
        boolean hasRoom = b.formulas.keySet().stream()
                .filter(both)
                .allMatch(line -> line.axes().isEmpty());
        if (hasRoom) {
            cases.standIns.put(down.entry(), down.value());
            cases.repeat(downOnly, List.of(down.axis()), down.axis().title());
            cases.repeat(
                    both,
                    List.of(down.axis(), across.axis()),
                    down.axis().title() + " and " + across.axis().title());
            return cases.standIns.get(target);
        }
        List<Formula> rows = new ArrayList<>();
        for (int i = 0; i < down.axis().size(); i++) {
            rows.add(cases.row(i, down, across, downOnly, both).get(target));
        }
        return new Rows(down.axis(), rows);
    }

    /** One case of the first entry, where a line that both move has an axis of its own and no room for two more. */
    private Map<Line, Line> row(int i, Steps down, Steps across, Predicate<Line> downOnly, Predicate<Line> both) {
        WhatIf row = new WhatIf(b, sheet, name + "_" + (i + 1));
        row.standIns.putAll(standIns);
        Line value = b.schedule(sheet, words(List.of(), i))
                .line(
                        row.name + "_" + down.entry().id(),
                        down.entry().label(),
                        down.entry().unit(),
                        new Element(down.value(), down.axis(), i));
        b.repeated.add(value);
        row.standIns.put(down.entry(), value);
        row.repeat(downOnly, List.of(), words(List.of(), i));
        row.repeat(both, List.of(across.axis()), words(List.of(across.axis()), i));
        return row.standIns;
    }

    private static Cone cone(BudgetBuilder b, Steps steps, Line target) {
        Cone cone = Cone.between(steps.entry(), target, b.formulas);
        if (!cone.has(target)) {
            throw new FormulaException("Entry " + steps.entry() + " does not move " + target + ".");
        }
        return cone;
    }

    private static String words(List<Axis> axes, int step) {
        return "Step " + (step + 1)
                + axes.stream().map(axis -> "; " + axis.title()).findFirst().orElse("");
    }

    /** Repeats lines over stand-ins, along more axes. */
    private void repeat(Predicate<Line> wanted, List<Axis> more, String words) {
        Map<List<Axis>, ScheduleBuilder> schedules = new LinkedHashMap<>();
        List<Line> repeated =
                List.copyOf(b.formulas.keySet()).stream().filter(wanted).toList();
        for (Line line : repeated) {
            List<Axis> axes = new ArrayList<>(line.axes());
            axes.addAll(more);
            if (axes.size() > 2) {
                throw new FormulaException("Line " + line + " runs along " + line.axes()
                        + ", so that there is no room for " + more + " beside it.");
            }
            ScheduleBuilder s = schedules.computeIfAbsent(axes, any -> b.schedule(sheet, words));
            Line copy = s.declare(name + "_" + line.id(), line.label(), line.unit(), line.kind(), axes, line.note());
            b.repeated.add(copy);
            standIns.put(line, copy);
        }
        Substitution over = new Substitution(standIns);
        for (Line line : repeated) {
            b.define(standIns.get(line), b.formulas.get(line).walk(over));
        }
    }
}
