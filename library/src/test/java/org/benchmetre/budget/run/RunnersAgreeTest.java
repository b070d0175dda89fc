package org.benchmetre.budget.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One case, blocks of cases and the folded whole give the same bits. */
class RunnersAgreeTest {

    private static final int CASES = 1000;

    @Test
    void aThousandSeededCasesInBlocksEqualAThousandSingleRuns() {
        Budget budget = Sample.troughHouse();
        List<CellRef> varying = numbersOf(budget);
        varying.add(new CellRef(budget.line("irrigation_choice"), 0));
        List<Line> outputs = budget.lines().stream()
                .filter(line -> line.kind() == Kind.NUMBER)
                .toList();
        List<CellRef> wanted =
                outputs.stream().map(line -> new CellRef(line, line.size() - 1)).toList();
        Cases.Run run = Cases.of(budget, varying, outputs).start();
        double[][] inputs = seeded(budget, varying, run);

        double[][] blocks = run.blocks(inputs, wanted);
        for (int i = 0; i < CASES; i++) {
            int at = i;
            double[] one = run.one(
                    Arrays.stream(inputs).mapToDouble(values -> values[at]).toArray(), wanted);
            for (int k = 0; k < one.length; k++) {
                assertThat(Double.doubleToRawLongBits(blocks[k][i]))
                        .as("%s, case %d", wanted.get(k), i)
                        .isEqualTo(Double.doubleToRawLongBits(one[k]));
            }
        }
    }

    @Test
    void aCaseEqualsTheBudgetWithThatCaseEntered() {
        Budget budget = Sample.troughHouse();
        List<CellRef> varying = numbersOf(budget);
        Line total = budget.line("first_cost_total");
        Cases.Run run = Cases.of(budget, varying, List.of(total)).start();
        double[][] inputs = seeded(budget, varying, run);
        double[] totals = run.blocks(inputs, total, 0);
        for (int i = 0; i < 20; i++) {
            Map<Line, Map<Integer, Given>> changes = new HashMap<>();
            for (int k = 0; k < varying.size(); k++) {
                CellRef cell = varying.get(k);
                changes.computeIfAbsent(cell.line(), any -> new HashMap<>())
                        .put(cell.cell(), Given.number(inputs[k][i], cell.line().unit()));
            }
            assertThat(Figures.of(Sample.typedOver(budget, changes)).number("first_cost_total"))
                    .isEqualTo(totals[i]);
        }
    }

    private static List<CellRef> numbersOf(Budget budget) {
        List<CellRef> cells = new ArrayList<>();
        for (Line line : budget.lines()) {
            if (budget.entry(line).isPresent() && line.kind() == Kind.NUMBER) {
                int filled = line.axes().isEmpty() ? 1 : line.axes().get(0).filled();
                for (int cell = 0; cell < filled; cell++) {
                    cells.add(new CellRef(line, cell));
                }
            }
        }
        return cells;
    }

    private static double[][] seeded(Budget budget, List<CellRef> varying, Cases.Run run) {
        Random random = new Random(20260101);
        double[][] inputs = new double[varying.size()][CASES];
        for (int k = 0; k < inputs.length; k++) {
            CellRef cell = varying.get(k);
            double base = budget.given(cell.line()).get(cell.cell()).number();
            for (int i = 0; i < CASES; i++) {
                inputs[k][i] = cell.line().kind() == Kind.TEXT
                        ? run.code(List.of("emitter", "tape", "dripline").get(random.nextInt(3)))
                        : base * (0.5 + random.nextDouble());
            }
        }
        return inputs;
    }

    @ParameterizedTest
    @EnumSource(Function.class)
    void everyKernelGivesTheBitsOfItsBody(Function function) {
        Texts texts = new Texts();
        double[] codes = {0, texts.code("tape"), texts.code("Tape"), texts.code("tape dripline"), texts.code("emitter")
        };
        boolean ofTexts = List.of(Function.SAME_TEXT, Function.BEFORE, Function.FILLED, Function.HAS_KEY, Function.JOIN)
                .contains(function);
        double[] numbers = {0, -0.0, 1, -1, 0.5, 2.0000004, 1e-9, 1e12, Double.NaN, Double.POSITIVE_INFINITY, -7.25, 3};
        int arity = switch (function) {
            case SUM, SUM_PRODUCT, SUM_WHERE, RATE_OF_RETURN, AND, OR, JOIN -> 4;
            default -> function.arity();
        };
        double[] decimals = {0, 1, 2, 3, 9};
        Random random = new Random(7);
        double[][] from = new double[arity][BlockRun.LANES];
        for (int k = 0; k < arity; k++) {
            for (int i = 0; i < BlockRun.LANES; i++) {
                boolean reason = function == Function.ONLY_IF && k == 2;
                double[] known = ofTexts || reason ? codes : function == Function.SHOWN && k == 1 ? decimals : numbers;
                from[k][i] = known[random.nextInt(known.length)];
            }
        }
        double[] out = new double[BlockRun.LANES];
        function.kernel().run(out, from, BlockRun.LANES, texts);
        for (int i = 0; i < BlockRun.LANES; i++) {
            int at = i;
            double[] arguments =
                    Arrays.stream(from).mapToDouble(values -> values[at]).toArray();
            double one = function.body().of(arguments, texts);
            boolean carriesReason = function == Function.ONLY_IF || function == Function.IF;
            assertThat(bits(out[i], carriesReason))
                    .as("%s of %s", function, Arrays.toString(arguments))
                    .isEqualTo(bits(one, carriesReason));
        }
    }

    /** Every bit; but the sign of a NaN that is no more than that is the compiler's own choice. */
    private static long bits(double value, boolean carriesReason) {
        return carriesReason ? Double.doubleToRawLongBits(value) : Double.doubleToLongBits(value);
    }

    @Test
    void textsJoinedInARunAreNewTextsOfThatRunAlone() {
        BudgetBuilder b = new BudgetBuilder("Joined", "EUR");
        ScheduleBuilder s = b.schedule("Sheet", "Table");
        Line way = s.textEntry("way_choice", "Way").given(Given.text("tape"));
        Line length = s.entry("bench_length", "Length", Unit.METRE).given(Given.number(3, Unit.METRE));
        Formula size = when(length.exceeds(number(5, Unit.METRE)), text("long"), text("Short"));
        Line sentence = s.textLine("way_sentence", "Sentence", joined(way, text(" on a "), size, text(" bench")));
        Line known = s.line("sentence_known", "Known", Unit.ONE, sentence.is("TAPE on a short bench"));
        List<CellRef> varying = List.of(new CellRef(way, 0), new CellRef(length, 0));
        List<CellRef> wanted = List.of(new CellRef(sentence, 0), new CellRef(known, 0));
        Cases cases = Cases.of(b.build(), varying, List.of(sentence, known));
        Cases.Run first = cases.start();
        Cases.Run second = cases.start();

        double[][] blocks = first.blocks(new double[][] {{first.code("Tape"), first.code("drip")}, {4, 6}}, wanted);
        double[] one = second.one(new double[] {second.code("mist"), 6}, wanted);

        assertThat(first.text(blocks[0][0])).isEqualTo("Tape on a Short bench");
        assertThat(first.text(blocks[0][1])).isEqualTo("drip on a long bench");
        assertThat(blocks[1]).containsExactly(1, 0);
        assertThat(second.text(one[0])).isEqualTo("mist on a long bench");
        assertThat(first.text(first.code("drip on a long bench"))).isEqualTo("drip on a long bench");
    }

    @Test
    void aTextThatIsNotFoundIsNotJoined() {
        Texts texts = new Texts();
        assertThat(texts.joined(texts.code("a"), Double.NaN)).isNaN();
    }

    @Test
    void aTroubleIsNamedWhereItBegins() {
        Figures figures = Figures.of(Sample.with(Sample.troughHouse(), "material_rate[pump]=1e308 item/driver"));
        assertThat(figures.troubles())
                .isNotEmpty()
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("Exact cost (material_exact_cost[pump]) has no finite value")
                        .contains("material_unit_cost[pump] = "));
    }
}
