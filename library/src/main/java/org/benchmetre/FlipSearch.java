package org.benchmetre;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.decision.Answer;
import org.benchmetre.decision.BreakEven;
import org.benchmetre.decision.Crossing;
import org.benchmetre.decision.Difference;
import org.benchmetre.scenario.Address;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;

/**
 * Searches the value of a doubtful entry at which the way recommended costs as much a year as another one. Where ways reach the
 * target uniformity, only those count: cheaper ones that do not reach it would not be recommended.
 */
final class FlipSearch {

    /** How far from the entry, as a factor, a value is still looked for. */
    private static final double FAR = 100;

    private static final String NO_WAY = "-";

    private final Budget budget;
    private final Figures figures;
    private final Line cost;
    private final int first;
    private final List<Integer> others;

    /**
     * What is found for one entry.
     *
     * @param value the value nearest to the entry, or why there is none
     * @param to the way that then costs as much
     */
    record Flip(Solved value, String to) {}

    private record Candidate(double value, int way) {}

    FlipSearch(Figures figures) {
        this.budget = figures.budget();
        this.figures = figures;
        this.cost = budget.line("way_yearly_cost_per_metre");
        first = IntStream.range(0, cost.size())
                .filter(way -> key(way).equals(figures.text("recommended_way")))
                .findFirst()
                .orElseThrow();
        others = IntStream.range(0, cost.size())
                .filter(way -> way != first && isRanked(way))
                .boxed()
                .toList();
    }

    Flip row(int row) {
        CellRef entry = entry(row);
        Given given = budget.given(entry.line()).get(entry.cell());
        double high = figures.number(budget.line("flip_high"), row);
        double low = figures.number(budget.line("flip_low"), row);
        double most = FAR * Math.max(given.number(), high);
        double least = Math.min(given.number() > 0 ? given.number() : most, low > 0 ? low : most) / FAR;
        if (others.isEmpty() || !(most > least)) {
            return new Flip(Solved.none(others.isEmpty() ? onlyOne() : "no entry"), NO_WAY);
        }
        BreakEven search = BreakEven.of(budget, entry, against(others.get(0)));
        List<Candidate> found = new ArrayList<>();
        for (int way : others) {
            crossings(search.with(against(way)).between(least, most).answer())
                    .forEach(crossing -> found.add(new Candidate(crossing.first(), way)));
        }
        return found.stream()
                .min(Comparator.comparingDouble(candidate -> Math.abs(candidate.value() - given.number())))
                .map(nearest -> new Flip(Solved.number(nearest.value()), label(nearest.way())))
                .orElse(new Flip(Solved.none("no value flips it"), NO_WAY));
    }

    private String onlyOne() {
        long ways = IntStream.range(0, cost.size())
                .filter(way -> !key(way).isEmpty())
                .count();
        return ways > 1 ? "no other way reaches the target" : "only one way";
    }

    private Difference against(int way) {
        return Difference.between(new CellRef(cost, first), new CellRef(cost, way));
    }

    private static List<Crossing> crossings(Answer answer) {
        if (answer instanceof Answer.Several several) {
            return several.crossings();
        }
        return answer instanceof Crossing crossing ? List.of(crossing) : List.of();
    }

    private boolean isRanked(int way) {
        boolean anyReaches = figures.number("ways_reaching_target") > 0;
        boolean reaches = figures.number(budget.line("way_reaches_target"), way) > 0;
        return anyReaches ? reaches : !key(way).isEmpty();
    }

    /** Its key as entered; a spare row that is filled has another name on its axis. */
    private String key(int way) {
        return figures.text(budget.line("way_key"), way);
    }

    private String label(int way) {
        return figures.text(budget.line("way_label"), way);
    }

    private CellRef entry(int row) {
        String address = figures.text(budget.line("flip_address"), row);
        Faults none = new Faults();
        return Address.parse(address)
                .in(budget, Place.wholeFile(address), none)
                .orElseThrow(() -> new IllegalStateException(none.faults().toString()));
    }
}
