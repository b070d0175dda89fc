package org.benchmetre;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.decision.Answer;
import org.benchmetre.decision.BreakEven;
import org.benchmetre.decision.Crossing;
import org.benchmetre.decision.Difference;
import org.benchmetre.decision.Lesser;

/** Searches the longest line of a way that still meets the uniformity asked for. */
final class LongestRunSearch {

    private static final double SHORTEST = 1;
    private static final double LONGEST = 1000;

    private final Budget budget;
    private final Figures figures;

    LongestRunSearch(Figures figures) {
        this.budget = figures.budget();
        this.figures = figures;
    }

    /** The last length before the uniformity first falls below the target, in metres. */
    Solved of(int way) {
        if (figures.text(budget.line("way_key"), way).isEmpty()) {
            return Solved.none("");
        }
        Line run = budget.line("way_run_length");
        Line uniformity = budget.line("way_uniformity_in_range");
        Difference difference =
                Difference.between(new CellRef(budget.line("target_uniformity"), 0), new CellRef(uniformity, way));
        Answer answer = BreakEven.of(budget, new CellRef(run, way), difference)
                .between(SHORTEST, LONGEST)
                .answer();
        if (answer instanceof Answer.None none) {
            return none.lesser() == Lesser.LEFT
                    ? Solved.none("over " + Numbers.plain(LONGEST) + " m")
                    : Solved.none("none meets it");
        }
        Crossing first =
                answer instanceof Answer.Several several ? several.crossings().get(0) : (Crossing) answer;
        if (first.lesserBelow() != Lesser.LEFT) {
            return Solved.none("none meets it");
        }
        return Solved.number(first instanceof Crossing.Jump jump ? jump.below() : first.first());
    }
}
