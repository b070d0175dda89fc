package org.benchmetre.checks;

import static org.benchmetre.budget.Formulas.number;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.comparison.PartialBudget;

/** A published partial budget as a little budget of its own, through the boxes in which irrigation systems are compared. */
final class FourBoxes {

    private FourBoxes() {}

    static Figures figures(String inputs, Unit unit) {
        Map<String, Double> by = new HashMap<>();
        for (String input : inputs.split("; ")) {
            String[] sides = input.split("=");
            by.put(sides[0], Double.valueOf(sides[1]));
        }
        BudgetBuilder b = new BudgetBuilder("Check", "USD");
        new PartialBudget(
                b.schedule("Sheet", "Boxes"),
                "partial",
                "Gain of the change",
                new PartialBudget.Boxes(
                        number(by.get("added_returns"), unit),
                        number(by.get("reduced_costs"), unit),
                        number(by.get("reduced_returns"), unit),
                        number(by.get("added_costs"), unit)));
        return Figures.of(b.build());
    }
}
