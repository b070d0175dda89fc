package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a table of many rows is cut between two sheets of paper. */
class PrintPlanTest {

    private static final double LINE = 12;
    private static final int LAST_TOGETHER = 6;

    @ParameterizedTest
    @ValueSource(ints = {20, 40, 45, 50, 52, 54, 56, 58, 60, 64, 70, 90, 100, 101, 102, 103, 104, 105, 106, 110})
    void the_last_rows_of_a_table_stay_together(int rows) {
        double[] points = new double[rows];
        Arrays.fill(points, LINE);
        PrintPlan.Extent table =
                new PrintPlan.Extent(List.of(60, 60, 30), points, -1, List.of(new PrintPlan.Span(0, rows, false)));
        for (Paper paper : Paper.values()) {
            PrintPlan plan = PrintPlan.of(table, paper);
            int first = 0;
            for (int last : plan.rowBreaks()) {
                assertThat(rows - (last + 1)).as("rows left on %s", paper).isGreaterThanOrEqualTo(LAST_TOGETHER);
                assertThat((last + 1 - first) * LINE * plan.scale())
                        .isPositive()
                        .isLessThan(paper.printedHeight() * 100);
                first = last + 1;
            }
            assertThat((rows - first) * LINE * plan.scale()).isPositive().isLessThan(paper.printedHeight() * 100);
        }
    }
}
