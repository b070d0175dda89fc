package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.Locale;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;

/**
 * Sentences for each scenario but the first: how much more or less it returns, which costs differ most, and what the difference in
 * receipts comes from. Live like every text of a budget.
 */
final class Answers {

    private final ScenarioColumns scenarios;
    private final WhatIsLeft left;
    private final Measure per;
    private final String unit;

    Answers(ScenarioColumns scenarios, WhatIsLeft left, Measure per, String currency) {
        this.scenarios = scenarios;
        this.left = left;
        this.per = per;
        this.unit = per.money().display(currency);
    }

    void declare(BudgetBuilder b, ComparisonTables tables, MarginRows rows, ReceiptsByFactor factors) {
        LargestCosts largest = new LargestCosts(b, scenarios, rows);
        for (int i = 1; i < scenarios.axis.size(); i++) {
            String suffix = "_" + (i + 1);
            String called = scenarios.called(i);
            Line costs = largest.named(tables.largest().get(i - 1), left, i);
            Line receipts = receipts(b, factors, i);
            tables.answer().textLine("answer" + suffix, called, sentence(i));
            tables.answer()
                    .textLine("answer_costs" + suffix, called, causes(i, "Largest differences in cost: ", costs));
            tables.answer()
                    .textLine(
                            "answer_receipts" + suffix,
                            called,
                            causes(i, "Causes of the difference in receipts: ", receipts));
        }
    }

    private Line receipts(BudgetBuilder b, ReceiptsByFactor factors, int scenario) {
        String suffix = "_" + (scenario + 1);
        Line own = b.schedule(ComparisonSheets.WORKINGS, "Causes by factor: " + scenarios.called(scenario))
                .line(
                        "receipts_by_factor" + suffix,
                        "More receipts",
                        per.money(),
                        new Element(factors.effect, scenarios.axis, scenario));
        String title = "Causes of the difference in receipts: " + scenarios.called(scenario);
        return new SignedList(b, left).of("factors" + suffix, title, factors.label, own);
    }

    private Formula sentence(int scenario) {
        String label = left.value.label();
        String returns = label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
        Formula apart = new Element(left.apart, scenarios.axis, scenario);
        Formula amount = joined(shown(apart, left.decimals), text(" " + unit + " "));
        return joined(
                text("In "),
                new Element(scenarios.name, scenarios.axis, scenario),
                text(", " + returns + " are "),
                when(left.counts(apart), amount, text("")),
                new Element(left.words, scenarios.axis, scenario),
                text(" in "),
                scenarios.ofFirst(scenarios.name),
                text(", " + per.words() + "."));
    }

    /** What makes a difference, where there is one. */
    private Formula causes(int scenario, String words, Line list) {
        Formula differs = left.counts(new Element(left.apart, scenarios.axis, scenario));
        Formula named = when(list.isFilled(), joined(text(words), list, text(".")), text(""));
        return when(differs, named, text(""));
    }
}
