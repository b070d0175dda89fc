package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;

/**
 * Splits a difference in receipts into its causes. From the first scenario to another the factors are changed one after the other, and
 * each is charged with what its change adds (sequential substitution, plain arithmetic); so the parts add up to the whole, and the
 * order decides who gets what two changes bring together.
 */
final class ReceiptsByFactor {

    private static final String NOTE =
            "Factors are changed one after the other, each charged with what its change adds; the order"
                    + " decides who gets what two changes bring together.";

    /** What the factors bring together in each scenario, more than in the first. */
    final Line sum;
    /** What a factor is called. */
    final Line label;
    /** What each factor brings, by factor and scenario. */
    final Line effect;

    private final ScenarioColumns scenarios;
    private final List<Beside> factors;

    ReceiptsByFactor(
            BudgetBuilder b, ScheduleBuilder page, ScenarioColumns scenarios, List<Beside> factors, Measure per) {
        this.scenarios = scenarios;
        this.factors = factors;
        ScheduleBuilder names = b.schedule(ComparisonSheets.SCENARIOS, "Factors of receipts");
        ScheduleBuilder steps =
                b.schedule(ComparisonSheets.COMPARISON, "Receipts as factors are changed, " + per.words());
        page.note(NOTE);
        Axis axis = Axis.rows(
                "factor",
                "Changed in this order",
                factors.stream().map(Beside::key).toList(),
                0);
        label = names.textLine("factor_label", "Factor", new Rows(axis, each(i -> text(label(i)))));
        b.nameRows(axis, label);
        List<Line> after = new ArrayList<>();
        Line before = steps.declare(
                "receipts_of_first", "As in the first", per.money(), Kind.NUMBER, List.of(scenarios.axis), "");
        b.define(before, changedUpTo(-1));
        after.add(before);
        for (int i = 0; i < factors.size(); i++) {
            String id = "receipts_with_" + factors.get(i).key();
            after.add(steps.line(id, "With own " + lower(label(i)), per.money(), changedUpTo(i)));
        }
        effect = page.line(
                "receipts_step",
                "More receipts than in the first",
                per.money(),
                new Rows(axis, each(i -> after.get(i + 1).minus(after.get(i)))),
                NOTE);
        sum = steps.line("receipts_step_sum", "More receipts than in the first", per.money(), sum(effect, axis));
    }

    private List<Formula> each(IntFunction<Formula> formula) {
        return IntStream.range(0, factors.size()).mapToObj(formula).toList();
    }

    private String label(int factor) {
        return factors.get(factor).value().label();
    }

    private static String lower(String label) {
        return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    /** The product of all factors, those up to the given one as the scenario has them, the others as the first has. */
    private Formula changedUpTo(int last) {
        return each(i -> i <= last
                        ? factors.get(i).value()
                        : scenarios.ofFirst(factors.get(i).value()))
                .stream()
                .reduce(Formula::times)
                .orElseThrow();
    }
}
