package org.benchmetre.decision;

import java.util.List;
import org.benchmetre.budget.Solved;

/**
 * What a search found, and over what it searched.
 *
 * @param answer where the difference crosses zero
 * @param low least value of the entry that was looked at, in its line's unit, within its hard bounds
 * @param high greatest value that was looked at
 * @param points how many points of the range were looked at to begin with
 * @param leftOut how many of them were left out because a side is not a finite number there
 */
public record Found(Answer answer, double low, double high, int points, int leftOut) {

    /**
     * All crossings.
     *
     * @return from the least value of the entry to the greatest; empty when there is none
     */
    public List<Crossing> crossings() {
        if (answer instanceof Answer.Several several) {
            return several.crossings();
        }
        return answer instanceof Crossing crossing ? List.of(crossing) : List.of();
    }

    /**
     * What a solved line shows of it: the value of a root; of a jump the first value after it; words for all else.
     *
     * @return the content of one cell
     */
    public Solved solved() {
        if (answer instanceof Answer.Several several) {
            return Solved.none(several.crossings().size() + " values in range");
        }
        if (answer instanceof Crossing.Tie) {
            return Solved.none("the same over a stretch");
        }
        if (answer instanceof Crossing crossing) {
            return Solved.number(crossing.first());
        }
        return switch (((Answer.None) answer).lesser()) {
            case NEITHER -> Solved.none("the same all over");
            case UNKNOWN -> Solved.none("no finite figure");
            default -> Solved.none("none in range");
        };
    }
}
