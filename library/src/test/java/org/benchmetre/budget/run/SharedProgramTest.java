package org.benchmetre.budget.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellOrder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/** Budgets that differ only in what is entered share one program, and it gives each of them its own figures. */
class SharedProgramTest {

    private final Budget sample = Sample.troughHouse();

    private static Budget readBack(Budget budget) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(budget);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (Budget) in.readObject();
        }
    }

    @Test
    void aChangedBudgetHasTheFiguresOfOneWhoseProgramIsMadeAnew() throws IOException, ClassNotFoundException {
        Figures before = Figures.of(sample);
        double cost = before.number("first_cost_total");
        Line run = sample.line("way_longest_run");
        Budget changed = Sample.with(
                sample,
                "bench_count=37 bench",
                "irrigation_choice=tape",
                "way_lines[tape]=1 1",
                "target_uniformity=94 %");
        Budget copy = readBack(changed);

        Figures shared = Figures.of(changed);
        Figures anew = Figures.of(copy);

        assertThat(Unroller.program(changed)).isSameAs(Unroller.program(sample));
        assertThat(Unroller.program(copy)).isNotSameAs(Unroller.program(sample));
        for (Line line : changed.lines()) {
            for (int cell = 0; cell < line.size(); cell++) {
                assertThat(shared.text(line, cell))
                        .as(line.address(cell))
                        .isEqualTo(anew.text(copy.line(line.id()), cell));
            }
        }
        assertThat(shared.text(run, 0)).isEqualTo("none meets it");
        assertThat(shared.number("first_cost_total")).isNotEqualTo(cost);
        assertThat(before.number("first_cost_total")).isEqualTo(cost);
    }

    @Test
    void cellsThatNothingMovesAreNoInstructions() {
        Line total = sample.line("first_cost_total");
        Cases none = Cases.of(sample, List.of(), List.of(total));
        assertThat(none.instructions()).isZero();
        assertThat(none.start().one(new double[0], List.of(new CellRef(total, 0))))
                .containsExactly(Figures.of(sample).number("first_cost_total"));
    }

    @Test
    void theOrderOfCellsIsKept() {
        assertThat(CellOrder.of(Sample.with(sample, "bench_count=37 bench"))).isSameAs(CellOrder.of(sample));
    }
}
