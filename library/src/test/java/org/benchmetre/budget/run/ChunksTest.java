package org.benchmetre.budget.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases come in chunks, are looked at in bulk before they are run, and say why they have no finite value. */
class ChunksTest {

    private static final int CASES = 1000;

    private final Budget sample = Sample.troughHouse();
    private final Line total = sample.line("first_cost_total");
    private final List<CellRef> cut =
            List.of(new CellRef(sample.line("bench_length"), 0), new CellRef(sample.line("plant_spacing"), 0));
    private final List<CellRef> wanted = List.of(new CellRef(total, 0));
    private final Cases.Run run = Cases.of(sample, cut, List.of(total)).start();
    private final AtomicInteger taken = new AtomicInteger();

    private Iterator<double[]> cases() {
        return IntStream.range(0, CASES)
                .mapToObj(i -> {
                    taken.incrementAndGet();
                    return new double[] {10 + i % 17, 0.1 + i % 5 / 20.0};
                })
                .iterator();
    }

    private static Map<Integer, String> tooShort(double[] lengths) {
        Map<Integer, String> refused = new HashMap<>();
        for (int at = 0; at < lengths.length; at++) {
            if (!(lengths[at] >= 12)) {
                refused.put(at, "A bench of " + lengths[at] + " m is too short.");
            }
        }
        return refused;
    }

    @Test
    void chunks_together_are_all_cases_in_order_and_only_one_chunk_is_taken_at_a_time() {
        List<Double> found = new ArrayList<>();
        Iterator<Chunk> chunks = run.chunks(cases(), wanted, CaseCheck.ANY);
        while (chunks.hasNext()) {
            Chunk chunk = chunks.next();
            assertThat(chunk.first()).isEqualTo(found.size());
            assertThat(taken.get()).isLessThanOrEqualTo(found.size() + chunk.size() + 1);
            assertThat(chunk.size()).isBetween(1, 512);
            for (int at = 0; at < chunk.size(); at++) {
                found.add(chunk.value(0, at));
                assertThat(chunk.isRefused(at)).isFalse();
            }
        }
        double[][] columns = new double[2][CASES];
        Iterator<double[]> again = cases();
        for (int i = 0; i < CASES; i++) {
            double[] row = again.next();
            columns[0][i] = row[0];
            columns[1][i] = row[1];
        }
        assertThat(found).hasSize(CASES);
        double[] together = run.blocks(columns, total, 0);
        for (int i = 0; i < CASES; i++) {
            assertThat(found.get(i)).isEqualTo(together[i]);
        }
        assertThatThrownBy(chunks::next).isInstanceOf(NoSuchElementException.class);
    }

    @Test
    void a_case_that_is_refused_is_not_run_and_says_why() {
        CaseCheck check = (cell, values, texts) -> cell.equals(cut.get(0)) ? tooShort(values) : Map.of();
        Chunk chunk = run.chunks(cases(), wanted, check).next();
        for (int at = 0; at < chunk.size(); at++) {
            boolean isShort = chunk.inputs(at)[0] < 12;
            assertThat(chunk.isRefused(at)).isEqualTo(isShort);
            assertThat(Double.isNaN(chunk.value(0, at))).isEqualTo(isShort);
        }
        assertThat(chunk.troubles(1)).containsExactly("A bench of 11.0 m is too short.");
        assertThat(chunk.troubles(2)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"contingency_share=0 1, NaN", "contingency_share=0.1 1, Infinity"})
    void a_case_without_a_finite_value_says_where_the_trouble_begins(String share, Double endlessTotal) {
        Budget plan = Sample.with(sample, share);
        Line rate = plan.line("material_rate");
        CellRef pump = new CellRef(rate, rate.axes().get(0).indexOf("pump"));
        Cases.Run dear = Cases.of(plan, List.of(pump), List.of(total)).start();
        double[] endless = {1e308};
        assertThat(dear.one(endless, wanted)[0]).isEqualTo(endlessTotal);
        assertThat(dear.troubles(endless, wanted))
                .isNotEmpty()
                .allSatisfy(sentence -> assertThat(sentence).contains("has no finite value", "pump"));
        assertThat(dear.troubles(new double[] {1}, wanted)).isEmpty();
    }

    @Test
    void a_figure_given_without_a_value_is_named_itself() {
        Line plants = sample.line("plants_first_cost");
        Cases.Run given = Cases.of(sample, List.of(new CellRef(plants, 0)), List.of(total))
                .start();
        assertThat(given.troubles(new double[] {Double.POSITIVE_INFINITY}, wanted))
                .containsExactly("First plants (plants_first_cost) is given as Infinity.");
    }

    @Test
    void a_case_with_too_few_values_is_named() {
        Iterator<Chunk> chunks =
                run.chunks(List.of(new double[] {1, 2}, new double[1]).iterator(), wanted, CaseCheck.ANY);
        assertThatThrownBy(chunks::next)
                .isInstanceOf(FormulaException.class)
                .hasMessage("Case 1 has 1 values, but the cut has 2 cells.");
    }
}
