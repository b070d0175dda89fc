package org.benchmetre.bench;

import java.util.List;
import java.util.Random;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;

/** Cases around a budget, the same every time: each number between half and one and a half times what the budget has. */
final class SeededCases {

    private static final long SEED = 20_260_101;

    private SeededCases() {}

    /** One array a case, with the value of each cell. */
    static double[][] rows(Budget budget, List<CellRef> cells, int cases) {
        Random random = new Random(SEED);
        double[][] rows = new double[cases][cells.size()];
        for (double[] row : rows) {
            for (int k = 0; k < row.length; k++) {
                CellRef cell = cells.get(k);
                double base = budget.given(cell.line()).get(cell.cell()).number();
                row[k] = base * (0.5 + random.nextDouble());
            }
        }
        return rows;
    }

    /** The same cases, one array a cell. */
    static double[][] columns(Budget budget, List<CellRef> cells, int cases) {
        double[][] rows = rows(budget, cells, cases);
        double[][] columns = new double[cells.size()][cases];
        for (int i = 0; i < cases; i++) {
            for (int k = 0; k < columns.length; k++) {
                columns[k][i] = rows[i][k];
            }
        }
        return columns;
    }
}
