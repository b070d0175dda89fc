package org.benchmetre.budget;

import java.util.List;

/**
 * A search of the tests that looks at some lines and answers what it was told.
 *
 * @param reads what it is said to look at
 * @param answers one for each cell
 */
public record KnownAnswers(List<Line> reads, List<Solved> answers) implements Search {

    /** A search that looks at nothing. */
    public static KnownAnswers of(Solved... answers) {
        return new KnownAnswers(List.of(), List.of(answers));
    }

    @Override
    public List<Solved> find(Budget budget) {
        return answers;
    }
}
