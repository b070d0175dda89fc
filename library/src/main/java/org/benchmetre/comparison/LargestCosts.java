package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;

/**
 * The costs by which one scenario differs most from the first, largest difference first; among equals the one that stands first. Found
 * one after the other, each left out when the next is sought. The rule is ours.
 */
final class LargestCosts {

    private static final List<String> PLACES = List.of("First", "Second", "Third", "Fourth");
    private static final String MARK = "largest";
    private static final String RULE =
            "The largest in size is marked and left out when the next is sought; our own rule.";

    private final BudgetBuilder b;
    private final Axis places;
    private final ScenarioColumns scenarios;
    private final MarginRows rows;
    private final Unit money;

    LargestCosts(BudgetBuilder b, ScenarioColumns scenarios, MarginRows rows) {
        this.b = b;
        this.scenarios = scenarios;
        this.rows = rows;
        this.money = rows.value.unit();
        List<String> keys = IntStream.rangeClosed(1, PLACES.size())
                .mapToObj(i -> "place_" + i)
                .toList();
        this.places = Axis.rows("place", "Place", keys, 0);
        ScheduleBuilder names = b.schedule(ComparisonSheets.WORKINGS, "Places");
        b.nameRows(places, names.textLine("place_name", "Place", each(place -> text(PLACES.get(place)))));
    }

    /**
     * Declares the lines of one scenario.
     *
     * @param page where the costs found stand
     * @param left tells which sizes count as a difference
     * @param scenario its number, from 0
     * @return the costs found as one text, empty when none differs
     */
    Line named(ScheduleBuilder page, WhatIsLeft left, int scenario) {
        String suffix = "_" + (scenario + 1);
        String of = ": " + scenarios.called(scenario);
        ScheduleBuilder table = b.schedule(ComparisonSheets.WORKINGS, "How the costs that differ most are found" + of);
        table.note(RULE + " Receipts are no cost and count 0.");
        Line key = page.declare("largest_key" + suffix, "Key", Unit.ONE, Kind.TEXT, List.of(places), RULE);
        Line label = page.textLine("largest_label" + suffix, "Cost", ofFound(key, rows.label, text("")));
        Line difference = table.line(
                "cost_difference" + suffix,
                "Returns above total cost rise",
                money,
                new Element(rows.difference, scenarios.axis, scenario));
        Line found = page.line(
                "largest_difference" + suffix,
                "Returns above total cost rise",
                money,
                ofFound(key, difference, none(money)));
        Line size = page.declare("largest_size" + suffix, "In size", money, Kind.NUMBER, List.of(places), RULE);
        List<Line> sizes = new ArrayList<>();
        List<Line> marks = new ArrayList<>();
        for (int place = 0; place < places.size(); place++) {
            String number = "_" + (place + 1);
            Formula remaining = place == 0 ? costs(difference) : without(at(key, place - 1), sizes.get(place - 1));
            sizes.add(table.line("cost_size" + suffix + number, "Size", money, remaining));
            Formula isLess = at(size, place).exceeds(sizes.get(place));
            marks.add(table.textLine("cost_mark" + suffix + number, "Mark", when(isLess, text(""), text(MARK))));
        }
        b.define(size, each(place -> greatest(sizes.get(place), rows.axis)));
        b.define(
                key,
                each(place ->
                        when(left.counts(at(size, place)), lookup(rows.key, marks.get(place), text(MARK)), text(""))));
        return new SignedList(b, left).of("largest" + suffix, "Costs that differ most" + of, label, found);
    }

    private Formula ofFound(Line key, Line byRow, Formula otherwise) {
        return when(key.isFilled(), lookup(byRow, rows.key, key), otherwise);
    }

    /** Sizes of the differences in cost. */
    private Formula costs(Line difference) {
        return when(
                rows.section.is(BudgetSection.RECEIPTS.key()), none(money), ScenarioColumns.withoutSign(difference));
    }

    private Formula without(Formula key, Line size) {
        return when(rows.key.is(key), none(money), size);
    }

    private Formula each(IntFunction<Formula> formula) {
        return new Rows(
                places, IntStream.range(0, places.size()).mapToObj(formula).toList());
    }

    private Formula at(Line byPlace, int place) {
        return new Element(byPlace, places, place);
    }
}
