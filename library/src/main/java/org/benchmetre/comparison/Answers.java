package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/** A sentence for each scenario but the first: whether it returns more or less, and which costs differ most. Live like every text of a budget. */
final class Answers {

    private final ScenarioColumns scenarios;
    private final WhatIsLeft left;
    private final Measure per;

    Answers(ScenarioColumns scenarios, WhatIsLeft left, Measure per) {
        this.scenarios = scenarios;
        this.left = left;
        this.per = per;
    }

    void declare(BudgetBuilder b, ComparisonPages pages, MarginRows rows) {
        LargestCosts largest = new LargestCosts(b, scenarios, rows);
        for (int i = 1; i < scenarios.axis.size(); i++) {
            Line costs = largest.named(pages.largest().get(i - 1), left, i);
            pages.answer().textLine("answer_" + (i + 1), scenarios.called(i), sentence(i, costs));
        }
    }

    private Formula sentence(int scenario, Line costs) {
        Formula named = joined(text(" Largest differences in cost: "), costs, text("."));
        Formula differs = left.counts(new Element(left.apart, scenarios.axis, scenario));
        return joined(
                new Element(scenarios.name, scenarios.axis, scenario),
                text(" returns "),
                new Element(left.words, scenarios.axis, scenario),
                text(" "),
                scenarios.ofFirst(scenarios.name),
                text(", " + per.words() + " and year."),
                when(differs, when(costs.isFilled(), named, text("")), text("")));
    }
}
