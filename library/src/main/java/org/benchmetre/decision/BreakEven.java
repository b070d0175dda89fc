package org.benchmetre.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.run.Cases;

/**
 * At which value of an entry two figures meet. The range is looked at on a grid, within the hard bounds of the entry, and every
 * change of sign between neighbours of the grid is halved until no number lies between. Where the figures are the same to a part in
 * ten thousand millions there, it is a root, else a jump.
 *
 * <p>Where the difference comes nearer to zero at one point than at both its neighbours, without a change of sign, the stretch between
 * them is looked at on a grid of its own, so that two crossings between neighbours are found as well. Two crossings nearer to each
 * other than one in some hundred thousand of the range, and a touch between points, may still be missed. Solved lines keep the value
 * they have on the budget as it stands. Prepared once, then searched as often as wanted; immutable.
 */
public final class BreakEven {

    /** Points of the grid unless told otherwise: two blocks of cases. */
    public static final int POINTS = 512;

    private static final int DIP_POINTS = 256;

    private final Cases cases;
    private final Difference difference;
    private final Bounds bounds;

    private BreakEven(Cases cases, Difference difference, Bounds bounds) {
        this.cases = cases;
        this.difference = difference;
        this.bounds = bounds;
    }

    /**
     * Prepares a search.
     *
     * @param budget the budget; all other entries keep its values
     * @param entry the cell whose value is sought, a number
     * @param difference what is to be zero
     * @return the search
     * @throws FormulaException when the cell is not an entry of a number
     */
    public static BreakEven of(Budget budget, CellRef entry, Difference difference) {
        Entry rules = budget.entry(entry.line()).orElseThrow(() -> notNumber(entry));
        if (entry.line().kind() != Kind.NUMBER) {
            throw notNumber(entry);
        }
        Cases cases = Cases.of(budget, List.of(entry), difference.lines());
        return new BreakEven(cases, difference, rules.bounds());
    }

    /**
     * The same search for another difference of the same lines, at no cost.
     *
     * @param other what is to be zero instead
     * @return the search
     * @throws FormulaException when the other difference is of a line that this one is not of
     */
    public BreakEven with(Difference other) {
        if (!cases.outputs().containsAll(other.lines())) {
            throw new FormulaException("A search prepared for " + cases.outputs() + " knows no other lines, but found "
                    + other.lines() + ".");
        }
        return new BreakEven(cases, other, bounds);
    }

    private static FormulaException notNumber(CellRef cell) {
        return new FormulaException("A search varies an entry that is a number, but " + cell + " is not one.");
    }

    /**
     * Searches a range on a grid of {@link #POINTS} points.
     *
     * @param low least value of the entry, in its line's unit
     * @param high greatest value
     * @return what was found
     * @throws FormulaException when no value between them is allowed, or the range is not finite within the bounds
     */
    public Found between(double low, double high) {
        return between(low, high, POINTS);
    }

    /**
     * Searches a range: in equal ratios where it begins above zero and ends at ten times that or more, else in equal steps.
     *
     * @param low least value of the entry, in its line's unit
     * @param high greatest value
     * @param points of the grid, at least 2
     * @return what was found
     * @throws FormulaException when no value between them is allowed, the range is not finite within the bounds, or there are too
     *     few points
     */
    public Found between(double low, double high, int points) {
        if (points < 2) {
            throw new FormulaException("A search looks at 2 points or more, but found " + points + ".");
        }
        Range range = Range.within(bounds, low, high);
        Trial trial = new Trial(cases, difference);
        List<Point> all = trial.at(range.grid(points));
        List<Point> finite = all.stream().filter(Point::isFinite).toList();
        List<Point> closer = withDips(finite, range, trial);
        Answer answer = answer(closer, crossings(closer, range, trial));
        return new Found(answer, range.low(), range.high(), all.size(), all.size() - finite.size());
    }

    /** The same points, and between the neighbours of each point where the difference turns back before zero a grid of its own. */
    private static List<Point> withDips(List<Point> points, Range range, Trial trial) {
        SortedMap<Double, Point> closer = new TreeMap<>();
        points.forEach(point -> closer.put(point.value(), point));
        for (int i = 1; i + 1 < points.size(); i++) {
            if (points.get(i).turnsBack(points.get(i - 1), points.get(i + 1))) {
                double[] between = range.between(
                        points.get(i - 1).value(), points.get(i + 1).value(), DIP_POINTS);
                trial.at(between).stream()
                        .filter(Point::isFinite)
                        .forEach(point -> closer.putIfAbsent(point.value(), point));
            }
        }
        return List.copyOf(closer.values());
    }

    private static Answer answer(List<Point> finite, List<Crossing> crossings) {
        return switch (crossings.size()) {
            case 0 ->
                new Answer.None(
                        finite.isEmpty() ? Lesser.UNKNOWN : finite.get(0).lesser());
            case 1 -> crossings.get(0);
            default -> new Answer.Several(crossings);
        };
    }

    private static List<Crossing> crossings(List<Point> finite, Range range, Trial trial) {
        Scan scan = new Scan(finite);
        List<Crossing> crossings = new ArrayList<>(scan.settled());
        List<Bracket> narrow = narrowed(scan.brackets(), range, trial);
        for (int i = 0; i < narrow.size(); i++) {
            Bracket wide = scan.brackets().get(i);
            crossings.add(
                    narrow.get(i).crossing(wide.low().lesser(), wide.high().lesser()));
        }
        crossings.sort(Comparator.comparingDouble(Crossing::first));
        return crossings;
    }

    /** Halves all brackets side by side until each is closed; halving the doubles between two doubles takes 64 rounds at most. */
    private static List<Bracket> narrowed(List<Bracket> wide, Range range, Trial trial) {
        List<Bracket> brackets = wide;
        while (brackets.stream().anyMatch(bracket -> !bracket.closed())) {
            double[] middles = brackets.stream()
                    .mapToDouble(b -> range.middle(b.low().value(), b.high().value()))
                    .toArray();
            List<Point> points = trial.at(middles);
            List<Bracket> now = brackets;
            brackets = IntStream.range(0, now.size())
                    .mapToObj(i -> now.get(i).closed() ? now.get(i) : now.get(i).narrowed(points.get(i)))
                    .toList();
        }
        return brackets;
    }
}
