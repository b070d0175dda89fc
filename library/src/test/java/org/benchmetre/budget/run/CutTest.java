package org.benchmetre.budget.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A budget cut anywhere: what is given at the cut counts, what stands behind it does not. */
class CutTest {

    /** Sums of some tens of thousands of money, in doubles. */
    private static final double EXACT = 1e-8;

    private static final Budget SAMPLE = Sample.troughHouse();
    private static final Figures WHOLE = Figures.of(SAMPLE);

    private static List<CellRef> cells(Line line) {
        List<CellRef> cells = new ArrayList<>();
        for (int cell = 0; cell < line.size(); cell++) {
            cells.add(new CellRef(line, cell));
        }
        return cells;
    }

    private static double whole(CellRef cell, Cases.Run run) {
        return cell.line().kind() == Kind.TEXT
                ? run.code(WHOLE.text(cell.line(), cell.cell()))
                : WHOLE.number(cell.line(), cell.cell());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void fed_with_the_values_of_the_whole_a_cut_gives_the_outputs_of_the_whole(long seed) {
        Random random = new Random(seed);
        List<Line> lines = SAMPLE.lines().stream()
                .filter(line -> line.kind() != Kind.OPTIONAL && !SAMPLE.isRepeated(line))
                .toList();
        List<CellRef> cut = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            cut.addAll(cells(lines.get(random.nextInt(lines.size()))));
        }
        List<Line> outputs =
                lines.stream().filter(line -> random.nextInt(9) == 0).toList();
        Cases.Run run = Cases.of(SAMPLE, cut, outputs).start();
        double[] inputs = cut.stream().mapToDouble(cell -> whole(cell, run)).toArray();
        List<CellRef> wanted =
                outputs.stream().flatMap(line -> cells(line).stream()).toList();

        double[] found = run.one(inputs, wanted);

        assertThat(wanted).hasSizeGreaterThan(100);
        for (int i = 0; i < found.length; i++) {
            assertThat(Double.doubleToLongBits(found[i] + 0.0))
                    .as("%s", wanted.get(i))
                    .isEqualTo(Double.doubleToLongBits(whole(wanted.get(i), run)));
        }
    }

    @Test
    void receipts_drawn_year_by_year_go_into_the_cash_flow_without_the_rest_of_the_farm() {
        Line receipts = SAMPLE.line("cash_receipts");
        Line net = SAMPLE.line("cash_net");
        List<CellRef> cut = cells(receipts);
        Cases drawn = Cases.of(SAMPLE, cut, List.of(net));
        double[] inputs = cut.stream()
                .mapToDouble(cell -> WHOLE.number(receipts, cell.cell()))
                .toArray();
        inputs[2] += 1000;

        double[] flows = drawn.start().one(inputs, cells(net));

        for (int year = 0; year < flows.length; year++) {
            double more = year == 2 ? 1000 : 0;
            assertThat(flows[year]).isCloseTo(WHOLE.number(net, year) + more, within(EXACT));
        }
        Cases fromEntries = Cases.of(SAMPLE, cells(SAMPLE.line("plant_spacing")), List.of(net));
        assertThat(drawn.instructions()).isLessThan(fromEntries.instructions() / 2);
    }

    @Test
    void a_figure_given_at_the_cut_leaves_alone_what_only_looks_like_it() {
        BudgetBuilder b = new BudgetBuilder("Alike", "EUR");
        ScheduleBuilder s = b.schedule("Sheet", "Table");
        Unit metre = Unit.METRE;
        Line length = s.entry("bench_length", "Length", metre).given(Given.number(3, metre));
        Line one = s.line("length_once", "Once", metre, length.plus(length));
        Line same = s.line("length_again", "Again", metre, length.plus(length));
        Line both = s.line("length_both", "Both", metre, one.plus(same));
        Line entered = s.line("length_entered", "As entered", metre, length.times(Formulas.one()));
        Cases cases = Cases.of(b.build(), List.of(new CellRef(one, 0), new CellRef(entered, 0)), List.of(both, length));
        List<CellRef> wanted = List.of(new CellRef(both, 0), new CellRef(length, 0));
        assertThat(cases.start().one(new double[] {100, 7}, wanted)).containsExactly(106, 3);
    }

    @Test
    void what_is_needed_beside_the_cut_keeps_its_value() {
        Line total = SAMPLE.line("first_cost_total");
        Line plants = SAMPLE.line("plants_first_cost");
        Cases cases = Cases.of(SAMPLE, cells(plants), List.of(total));
        double before = WHOLE.number("plants_first_cost");
        double[] found = cases.start().one(new double[] {before + 50}, cells(total));
        assertThat(found[0]).isCloseTo(WHOLE.number("first_cost_total") + 50, within(EXACT));
    }
}
