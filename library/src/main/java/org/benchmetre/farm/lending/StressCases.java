package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.WhatIf;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.finance.Shocks;
import org.benchmetre.farm.input.Sheets;

/**
 * Coverage and cash under each change of the plan alone and under all of them at once, live. A case adds its size to the change that is
 * entered; the year of a lost crop takes its place. Changes of prices and costs leave the months of fruit as they are, so that they are
 * repeated apart from those of the crop.
 */
final class StressCases {

    private static final Formula MOST_LATE = number(11, Unit.parse("mo"));

    /** The cases, that of the plan as it is entered first. */
    final Axis axis = Axis.rows(
            "stress_case",
            "Case",
            List.of("plan", "price", "yield", "wage", "energy", "interest", "late", "lost", "together"),
            0);

    private final BudgetBuilder b;
    private final List<Line> targets;
    private final List<Element[]> found = new ArrayList<>();

    /**
     * Repeats lines.
     *
     * @param b where they are added; all targets are defined
     * @param shocks the changes that are entered
     * @param sizes what each case adds
     * @param targets single figures
     */
    StressCases(BudgetBuilder b, Shocks shocks, StressSizes sizes, List<Line> targets) {
        this.b = b;
        this.targets = targets;
        Map<Line, Formula> more = new LinkedHashMap<>();
        more.put(shocks.price, least(shocks.price.plus(sizes.price)));
        more.put(shocks.yield, least(shocks.yield.plus(sizes.yield)));
        more.put(shocks.wage, shocks.wage.plus(sizes.wage));
        more.put(shocks.energy, shocks.energy.plus(sizes.energy));
        more.put(shocks.interest, shocks.interest.plus(sizes.interest));
        List<Line> money = List.copyOf(more.keySet());
        more.put(shocks.late, lesser(MOST_LATE, shocks.late.plus(sizes.late)));
        more.put(shocks.lost, when(sizes.lost.isPositive(), sizes.lost, shocks.lost));
        List<Line> crop = List.of(shocks.late, shocks.lost);
        repeat("money", "Prices and costs", more, money.stream().map(List::of).toList());
        repeat(
                "crop",
                "Crop, and all together",
                more,
                Stream.concat(crop.stream().map(List::of), Stream.of(List.copyOf(more.keySet())))
                        .toList());
    }

    /** Fruit and prices cannot fall below nothing. */
    private static Formula least(Formula change) {
        return greater(number(-1, change.unit()), change);
    }

    /** Cases, each of which moves some of the changes. */
    private void repeat(String name, String title, Map<Line, Formula> more, List<List<Line>> moved) {
        Axis cases = Axis.rows(
                "stress_" + name,
                title,
                moved.stream()
                        .map(lines ->
                                lines.size() > 1 ? "together" : lines.get(0).id())
                        .toList(),
                0);
        ScheduleBuilder s = b.schedule(Sheets.CASES, title + ": changes in each case");
        List<WhatIf.Steps> steps = moved.stream()
                .flatMap(List::stream)
                .distinct()
                .map(shock -> WhatIf.cases(
                        s,
                        name,
                        shock,
                        cases,
                        moved.stream()
                                .map(lines -> lines.contains(shock) ? more.get(shock) : shock)
                                .toArray(Formula[]::new)))
                .toList();
        Map<Line, Line> along = WhatIf.along(b, Sheets.CASES, name, steps, targets);
        for (int i = 0; i < cases.size(); i++) {
            int row = i;
            found.add(targets.stream()
                    .map(target -> new Element(along.get(target), cases, row))
                    .toArray(Element[]::new));
        }
    }

    /** A target in each case. */
    Formula of(Line target) {
        int which = targets.indexOf(target);
        return new Rows(
                axis,
                Stream.concat(Stream.<Formula>of(target), found.stream().map(each -> each[which]))
                        .toList());
    }
}
