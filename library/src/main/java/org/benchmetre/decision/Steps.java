package org.benchmetre.decision;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.run.Cases;
import org.benchmetre.budget.run.Figures;

/** Looks at one entry after the other at many values, all in one run, and halves the steps in which something is crossed. For one thread. */
final class Steps {

    private static final int HALVINGS = 60;

    /** Ratios this near to the lowest are as low; the first of them counts. */
    private static final double NEAR = 1e-9;

    private final HowFar of;
    private final Cases.Run run;
    private final double[] starts;
    private final double limit;
    private final double lowest;
    private final double amount;

    Steps(HowFar of, Figures now) {
        this.of = of;
        List<CellRef> cut =
                of.moves().stream().map(move -> new CellRef(move.entry(), 0)).toList();
        run = Cases.of(now.budget(), cut, List.of(of.lowest(), of.amount(), of.ratios()))
                .start();
        starts = cut.stream().mapToDouble(cell -> now.number(cell.line(), 0)).toArray();
        limit = now.number(of.limit(), 0);
        lowest = now.number(of.lowest(), 0);
        amount = now.number(of.amount(), 0);
    }

    /** How far the ratio is above its limit, or the amount above zero, as entries stand. */
    double start(boolean ofRatio) {
        return ofRatio ? lowest - limit : amount;
    }

    /** For each sought the first value at which it is crossed; a NaN where it is not. */
    double[] narrowed(List<HowFar.Crossed> sought) {
        int[] first = new int[sought.size() + 1];
        for (int i = 0; i < sought.size(); i++) {
            first[i + 1] = first[i] + sought.get(i).values().length;
        }
        int[] whose = IntStream.range(0, sought.size())
                .flatMap(i -> IntStream.range(first[i], first[i + 1]).map(lane -> i))
                .toArray();
        double[] values = sought.stream()
                .flatMapToDouble(each -> Arrays.stream(each.values()))
                .toArray();
        double[] above = above(sought, whose, values);
        double[] low = new double[sought.size()];
        double[] high = new double[sought.size()];
        for (int i = 0; i < sought.size(); i++) {
            HowFar.Crossed each = sought.get(i);
            int crossed = IntStream.range(first[i], first[i + 1])
                    .filter(lane -> each.rising() ? above[lane] >= 0 : above[lane] < 0)
                    .findFirst()
                    .orElse(-1);
            high[i] = crossed < 0 ? Double.NaN : values[crossed];
            low[i] = crossed <= first[i] ? starts[each.move()] : values[crossed - 1];
        }
        int[] open = IntStream.range(0, sought.size())
                .filter(i -> !Double.isNaN(high[i])
                        && !of.moves().get(sought.get(i).move()).whole())
                .toArray();
        halve(sought, open, low, high);
        return high;
    }

    private void halve(List<HowFar.Crossed> sought, int[] open, double[] low, double[] high) {
        for (int round = 0; round < HALVINGS && open.length > 0; round++) {
            double[] middles =
                    Arrays.stream(open).mapToDouble(i -> (low[i] + high[i]) / 2).toArray();
            double[] above = above(sought, open, middles);
            for (int k = 0; k < open.length; k++) {
                int i = open[k];
                boolean isCrossed = sought.get(i).rising() ? above[k] >= 0 : above[k] < 0;
                double[] end = isCrossed ? high : low;
                end[i] = middles[k];
            }
        }
    }

    /** How far what is sought is above its limit where its entry alone has a value. */
    private double[] above(List<HowFar.Crossed> sought, int[] whose, double[] values) {
        double[][] figures = run.blocks(
                inputs(sought, whose, values), List.of(new CellRef(of.lowest(), 0), new CellRef(of.amount(), 0)));
        return IntStream.range(0, values.length)
                .mapToDouble(lane -> sought.get(whose[lane]).ofRatio() ? figures[0][lane] - limit : figures[1][lane])
                .toArray();
    }

    private double[][] inputs(List<HowFar.Crossed> sought, int[] whose, double[] values) {
        double[][] inputs = new double[starts.length][values.length];
        for (int move = 0; move < starts.length; move++) {
            Arrays.fill(inputs[move], starts[move]);
        }
        for (int lane = 0; lane < values.length; lane++) {
            inputs[sought.get(whose[lane]).move()][lane] = values[lane];
        }
        return inputs;
    }

    /** The place of the lowest ratio at each value that was found; a NaN where there is none. */
    double[] places(List<HowFar.Crossed> sought, double[] found) {
        int[] whose = IntStream.range(0, found.length)
                .filter(i -> !Double.isNaN(found[i]))
                .toArray();
        double[] values = Arrays.stream(whose).mapToDouble(i -> found[i]).toArray();
        double[] places = new double[found.length];
        Arrays.fill(places, Double.NaN);
        if (values.length > 0) {
            double[][] ratios = run.blocks(inputs(sought, whose, values), of.ratioCells());
            for (int k = 0; k < whose.length; k++) {
                int lane = k;
                double least = Arrays.stream(ratios)
                        .mapToDouble(place -> place[lane])
                        .min()
                        .orElseThrow();
                places[whose[k]] = IntStream.range(0, ratios.length)
                        .filter(place -> ratios[place][lane] < least + NEAR)
                        .findFirst()
                        .orElseThrow();
            }
        }
        return places;
    }
}
