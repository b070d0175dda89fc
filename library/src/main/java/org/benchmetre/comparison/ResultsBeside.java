package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.onlyWhen;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;

/**
 * The results of the scenarios side by side: what it takes to build and to own, fruit, receipts, what is left, break-evens. What a
 * scenario has worked out itself is taken over from there; where it has a reason in place of a number, so has the comparison.
 */
final class ResultsBeside {

    private static final Unit FRUIT = Unit.parse("kg/(m2 a)");

    /** In the order a reader wants them. */
    final List<Beside> all;

    private final List<Beside> found = new ArrayList<>();
    private final ScenarioColumns scenarios;
    private final TakenFigures taken;
    private final ScheduleBuilder values;
    private final ScheduleBuilder differences;
    private final ScheduleBuilder entries;

    ResultsBeside(BudgetBuilder b, ScenarioColumns scenarios, TakenFigures taken, ReceiptsFactors receipts) {
        this.scenarios = scenarios;
        this.taken = taken;
        this.values = b.schedule(ComparisonSheets.RESULTS, "Results side by side");
        this.differences = b.schedule(ComparisonSheets.RESULTS, "More than in the first");
        this.entries = b.schedule(ComparisonSheets.SCENARIOS, "Results that may have a reason in place of a number");
        entries.note("Where a reason stands, the number beside it does not count.");
        family("first_cost", "First cost", Measure.METRE, Measure.PLANT, Measure.AREA);
        family("yearly_cost", "Yearly cost", Measure.values());
        Beside fruit = receipts.fruitPerPlant;
        found.add(new Beside("yield_total", Measure.PLANT.toString(), fruit.value(), fruit.difference()));
        perArea("yield_total", "fruit_per_area", "Marketable fruit", FRUIT, scenarios.fruit);
        perArea("receipts_total", "receipts_per_area", "Receipts", Measure.AREA.money(), receipts.receipts);
        family("returns_above_total", "Returns above total cost", Measure.values());
        taken("break_even_price", "", "break_even_price", "Break-even price");
        taken("break_even_yield", "", "break_even_yield", "Break-even yield, fruit per plant and crop");
        all = List.copyOf(found);
    }

    private void family(String family, String label, Measure... measures) {
        for (Measure per : measures) {
            taken(family, per.toString(), family + "_per_" + per, label + " " + per.words());
        }
    }

    private void perArea(String key, String id, String label, Unit unit, Line total) {
        String words = label + " " + Measure.AREA.words();
        Line value = values.line(id, words, unit, total.over(scenarios.area));
        add(key, Measure.AREA.toString(), value, scenarios.difference(value));
    }

    /** A result that the scenarios have worked out themselves. */
    private void taken(String key, String measure, String id, String label) {
        if (taken.like(id).kind() == Kind.OPTIONAL) {
            optional(key, measure, id, label);
        } else {
            Line value = scenarios.entry(values, id, label, Bounds.ANY);
            add(key, measure, value, scenarios.difference(value));
        }
    }

    private void optional(String key, String measure, String id, String label) {
        Line like = taken.like(id);
        Line number = entries.entry(id + "_number", label, like.unit(), scenarios.axis)
                .given(taken.figures(id));
        Line reason = entries.textEntry(id + "_reason", label + ", reason for none", scenarios.axis)
                .given(taken.reasons(id));
        Formula here = not(reason.isFilled());
        Formula first = not(scenarios.ofFirst(reason).isFilled());
        Line value = values.line(id, label, like.unit(), onlyWhen(here, number, reason));
        add(key, measure, value, onlyWhen(and(here, first), scenarios.difference(number), "none"));
    }

    private void add(String key, String measure, Line value, Formula difference) {
        Line more = differences.line(value.id() + "_difference", value.label(), value.unit(), difference);
        found.add(new Beside(key, measure, value, more));
    }
}
