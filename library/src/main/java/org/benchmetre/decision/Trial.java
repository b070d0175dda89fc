package org.benchmetre.decision;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.run.Cases;

/** Computes both sides of a difference at many values of one entry cell at once. For one thread. */
final class Trial {

    private final Cases.Run run;
    private final List<CellRef> cells;

    Trial(Cases cases, Difference difference) {
        this.run = cases.start();
        this.cells = difference.cells();
    }

    List<Point> at(double[] values) {
        double[][] sides = run.blocks(new double[][] {values}, cells);
        return IntStream.range(0, values.length)
                .mapToObj(i -> new Point(values[i], sides[0][i], sides.length == 1 ? 0 : sides[1][i]))
                .toList();
    }
}
