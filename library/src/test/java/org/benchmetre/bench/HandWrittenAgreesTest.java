package org.benchmetre.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.run.Cases;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the benchmarks compare computes the same figures. Terms are summed in another order by hand, hence a tolerance. */
class HandWrittenAgreesTest {

    private static final int CASES = 200;
    private static final double RELATIVE = 1e-12;

    @ParameterizedTest
    @CsvSource({"emitter,staggered,tray_plant", "tape,two_row,plug", "dripline,staggered,bare_root"})
    void twoHundredSeededCasesAgree(String way, String pattern, String stock) {
        Budget budget = Sample.with(
                Sample.troughHouse(),
                "irrigation_choice=" + way,
                "planting_pattern=" + pattern,
                "stock_choice=" + stock);
        List<CellRef> cells = Varying.EVERY_NUMBER.cells(budget);
        double[][] expected = Cases.of(budget, cells, HandWritten.outputs(budget))
                .start()
                .blocks(SeededCases.columns(budget, cells, CASES), HandWritten.outputCells(budget));
        double[][] cases = SeededCases.rows(budget, cells, CASES);
        HandWritten byHand = new HandWritten(budget, cells);
        double[] chosen = new double[HandWritten.OUTPUTS.size()];
        double[] every = new double[HandWritten.OUTPUTS.size()];
        for (int i = 0; i < CASES; i++) {
            byHand.chosen(cases[i], chosen);
            byHand.every(cases[i], every);
            assertThat(every).as("case %d", i).isEqualTo(chosen);
            for (int k = 0; k < chosen.length; k++) {
                assertThat(chosen[k])
                        .as("%s, case %d", HandWritten.OUTPUTS.get(k), i)
                        .isCloseTo(expected[k][i], within(RELATIVE * Math.abs(expected[k][i])));
            }
        }
    }

    @Test
    void theSampleItselfAgrees() {
        Budget budget = Sample.troughHouse();
        Figures figures = Figures.of(budget);
        List<CellRef> cells = Varying.EVERY_NUMBER_READ.cells(budget);
        double[] entered = cells.stream()
                .mapToDouble(cell -> budget.given(cell.line()).get(cell.cell()).number())
                .toArray();
        double[] out = new double[HandWritten.OUTPUTS.size()];
        new HandWritten(budget, cells).chosen(entered, out);
        for (int k = 0; k < out.length; k++) {
            double expected = figures.number(HandWritten.OUTPUTS.get(k));
            assertThat(out[k])
                    .as(HandWritten.OUTPUTS.get(k))
                    .isCloseTo(expected, within(RELATIVE * Math.abs(expected)));
        }
    }

    @ParameterizedTest
    @EnumSource(Varying.class)
    void eachSelectionHasAsManyCellsAsItSays(Varying varying) {
        List<CellRef> cells = varying.cells(Sample.troughHouse());
        assertThat(cells).doesNotHaveDuplicates();
        switch (varying) {
            case TWO -> assertThat(cells).hasSize(2);
            case TWENTY_TWO -> assertThat(cells).hasSize(22);
            default -> assertThat(cells).hasSizeGreaterThan(200);
        }
    }
}
