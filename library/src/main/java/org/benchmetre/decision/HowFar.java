package org.benchmetre.decision;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Search;
import org.benchmetre.budget.Solved;
import org.benchmetre.budget.run.Figures;

/**
 * How far each of several entries may move alone, from where it stands and to its worse side, before the lowest of some ratios falls
 * below a limit, and before an amount falls below zero. Of each entry it tells {@link #ANSWERS} values: the first value at which the
 * ratio is at its limit, the first at which the amount is zero, the place of the lowest ratio at the first, and, where the ratio is
 * below its limit already, the first value on the better side at which it is not. Of whole numbers it is the first at which it is so.
 *
 * <p>Both sides are looked at in {@value #STEPS} equal steps, all of them in one run; two crossings within a step are missed, which
 * figures that rise or fall all along do not have.
 *
 * @param moves the entries
 * @param ratios along periods
 * @param lowest the lowest of them, single
 * @param limit what it should not fall below, single
 * @param amount what should not fall below zero, single
 */
public record HowFar(List<Move> moves, Line ratios, Line lowest, Line limit, Line amount) implements Search {

    /** How many values are told of each entry. */
    public static final int ANSWERS = 4;

    private static final int STEPS = 16;
    private static final Solved NOTHING = Solved.none("");

    /**
     * An entry and how far it is looked at.
     *
     * @param entry a single entry
     * @param worst the last value on its worse side, in its unit
     * @param best the last value on its better side; of no use for whole numbers
     * @param whole whether it takes whole numbers, which are looked at one by one from the next, or from 1 on where they are anew
     * @param anew whether any whole number may take the place of the one that stands
     */
    public record Move(Line entry, double worst, double best, boolean whole, boolean anew) implements Serializable {}

    /** Keeps its own copy of the entries. */
    public HowFar {
        moves = List.copyOf(moves);
    }

    @Override
    public List<Line> reads() {
        List<Line> lines = new ArrayList<>(List.of(ratios, lowest, limit, amount));
        moves.forEach(move -> lines.add(move.entry()));
        return lines;
    }

    @Override
    public List<Solved> find(Budget budget) {
        Figures now = Figures.of(budget);
        Steps steps = new Steps(this, now);
        boolean isBelow = steps.start(true) < 0;
        List<Crossed> sought = new ArrayList<>();
        for (int i = 0; i < moves.size(); i++) {
            double[] worse = worse(moves.get(i), now);
            sought.add(new Crossed(i, true, isBelow ? new double[0] : worse, false));
            sought.add(new Crossed(i, false, steps.start(false) < 0 ? new double[0] : worse, false));
            sought.add(new Crossed(i, true, isBelow ? better(moves.get(i), now) : new double[0], true));
        }
        double[] found = steps.narrowed(sought);
        double[] places = steps.places(sought, found);
        List<Solved> all = new ArrayList<>();
        for (int i = 0; i < moves.size(); i++) {
            all.add(solved(found[3 * i]));
            all.add(solved(found[3 * i + 1]));
            all.add(solved(places[3 * i]));
            all.add(solved(found[3 * i + 2]));
        }
        return Collections.unmodifiableList(all);
    }

    /**
     * What is sought of an entry.
     *
     * @param move which entry
     * @param ofRatio the ratio, else the amount
     * @param values to be looked at, in order from where it stands
     * @param rising whether the figure is below and should rise
     */
    record Crossed(int move, boolean ofRatio, double[] values, boolean rising) {}

    private static Solved solved(double value) {
        return Double.isNaN(value) ? NOTHING : Solved.number(value);
    }

    private static double[] worse(Move move, Figures now) {
        double start = now.number(move.entry(), 0);
        return move.whole()
                ? DoubleStream.iterate(move.anew() ? 1 : start + 1, value -> value <= move.worst(), value -> value + 1)
                        .toArray()
                : steps(start, move.worst());
    }

    private static double[] better(Move move, Figures now) {
        return move.whole() ? new double[0] : steps(now.number(move.entry(), 0), move.best());
    }

    private static double[] steps(double from, double to) {
        return IntStream.rangeClosed(1, STEPS)
                .mapToDouble(step -> step == STEPS ? to : from + (to - from) * step / STEPS)
                .toArray();
    }

    /** The cells of the ratios. */
    List<CellRef> ratioCells() {
        return IntStream.range(0, ratios.size())
                .mapToObj(cell -> new CellRef(ratios, cell))
                .toList();
    }
}
