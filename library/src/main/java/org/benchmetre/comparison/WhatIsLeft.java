package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;

/** What every scenario leaves, as its own budget says and as the rows add up, and whether that is more or less than the first leaves. */
final class WhatIsLeft {

    /** As the budget says, by the measure. */
    final Line value;
    /** What a scenario leaves more than the first. */
    final Line difference;
    /** That difference without its sign. */
    final Line apart;
    /** All rows added up. */
    final Line sum;
    /** The words {@code more than}, {@code less than} or {@code as much as}. */
    final Line words;

    /** Decimals of money in sentences, those of the currency. */
    final int decimals;

    private final Line smallest;

    WhatIsLeft(
            BudgetBuilder b,
            ScheduleBuilder page,
            ScenarioColumns scenarios,
            MarginRows rows,
            TakenFigures taken,
            Measure per) {
        decimals = MinorUnit.decimals(taken.scenarios().get(0).currency());
        smallest = b.schedule(ComparisonSheets.WORKINGS, "Which differences are told")
                .line(
                        "smallest_told",
                        "Smallest difference that is told",
                        per.money(),
                        number(Math.pow(10, -decimals) / 2, per.money()),
                        "Half of the last decimal of the currency: what is less prints as nothing. Our own rule.");
        String label = PageRow.leftLabel(taken.scenarios().get(0).figures());
        Line total = b.schedule(ComparisonSheets.SCENARIOS, "What their budgets return in a year")
                .entry("left_amount", label, MarginRows.YEARLY, scenarios.axis)
                .given(taken.left());
        value = page.line("left_value", label, per.money(), total.over(scenarios.size));
        difference = page.line(
                "left_difference", "Returns above those of the first", per.money(), scenarios.difference(value));
        apart = page.line("left_apart", "How far apart", per.money(), ScenarioColumns.withoutSign(difference));
        Formula moreOrLess = when(difference.isPositive(), text("more than"), text("less than"));
        words = page.textLine("left_words", "In words", when(counts(apart), moreOrLess, text("as much as")));
        sum = page.line("cause_sum", "Sum of all rows", per.money(), sum(rows.value, rows.axis));
        page.line("cause_sum_difference", "Sum, more than in the first", per.money(), scenarios.difference(sum));
    }

    /** Whether a size is told as a difference. */
    Formula counts(Formula withoutSign) {
        return withoutSign.exceeds(smallest);
    }
}
