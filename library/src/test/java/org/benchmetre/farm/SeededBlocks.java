package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Cases;

/**
 * Seeded random scenarios of a sample, computed in blocks: prepared once, then run for all seeds. Each is {@link Seeded#budget} with a
 * kind of plant stock, a rule of ownership, a way to charge the house, one to handle drain and the price level drawn as well. Case 0 is the sample as it
 * stands; case n is seed n.
 */
public final class SeededBlocks {

    private static final List<String> OWNERSHIP = List.of("capital_recovery", "straight_line");
    private static final List<String> HOUSE = List.of("parts", "bench_week");
    private static final List<String> DRAIN = List.of("dispose", "treat", "reuse");

    private final Budget sample;
    private final List<CellRef> varying;
    private final List<CellRef> wanted = new ArrayList<>();
    private final Cases.Run run;
    private final double[][] inputs;
    private Map<CellRef, double[]> results = new HashMap<>();

    /** Computes the lines for the sample and for seeds from 1 on. */
    public SeededBlocks(Budget sample, int seeds, List<String> ids) {
        this.sample = sample;
        List<Line> lines = ids.stream().map(sample::line).toList();
        varying = cells(changes(sample, 1));
        lines.forEach(line -> IntStream.range(0, line.size()).forEach(cell -> wanted.add(new CellRef(line, cell))));
        run = Cases.of(sample, varying, lines).start();
        inputs = new double[varying.size()][seeds + 1];
        IntStream.rangeClosed(0, seeds).forEach(this::fill);
        compute(inputs);
    }

    private void fill(int seed) {
        Map<Line, Map<Integer, Given>> changes = seed == 0 ? Map.of() : changes(sample, seed);
        assertThat(seed == 0 ? varying : cells(changes)).hasSameElementsAs(varying);
        for (int i = 0; i < inputs.length; i++) {
            CellRef ref = varying.get(i);
            Given given = seed == 0
                    ? sample.given(ref.line()).get(ref.cell())
                    : changes.get(ref.line()).get(ref.cell());
            inputs[i][seed] = ref.line().kind() == Kind.TEXT ? run.code(given.text()) : given.number();
        }
    }

    private static Map<Line, Map<Integer, Given>> changes(Budget sample, long seed) {
        Random random = new Random(~seed);
        Map<Line, Map<Integer, Given>> changes = Seeded.changes(sample, seed);
        Map.of(
                        "stock_choice", any(random, Seeded.keys(sample, "stock_key")),
                        "recovery_method", any(random, OWNERSHIP),
                        "house_charge_by", any(random, HOUSE),
                        "drain_handling", any(random, DRAIN))
                .forEach((id, text) -> changes.put(sample.line(id), Map.of(0, Given.text(text))));
        Line level = sample.line("price_level");
        changes.put(level, Map.of(0, Given.number(0.7 + 0.6 * random.nextDouble(), level.unit())));
        return changes;
    }

    private static String any(Random random, List<String> words) {
        return words.get(random.nextInt(words.size()));
    }

    private static List<CellRef> cells(Map<Line, Map<Integer, Given>> changes) {
        List<CellRef> cells = new ArrayList<>();
        changes.forEach((line, values) ->
                values.keySet().stream().sorted().forEach(cell -> cells.add(new CellRef(line, cell))));
        return cells;
    }

    private void compute(double[][] from) {
        double[][] found = run.blocks(from, wanted);
        results = new HashMap<>();
        IntStream.range(0, found.length).forEach(i -> results.put(wanted.get(i), found[i]));
    }

    /** The same seeds with an entry replaced, one value a seed. */
    public void replace(String id, double[] values) {
        double[][] changed = inputs.clone();
        changed[varying.indexOf(new CellRef(sample.line(id), 0))] = values;
        compute(changed);
    }

    /** What a seed gives an entry. */
    public double input(String id, int seed) {
        return inputs[varying.indexOf(new CellRef(sample.line(id), 0))][seed];
    }

    /** How many cases: the sample and its seeds. */
    public int cases() {
        return inputs[0].length;
    }

    /** The sample that is moved. */
    public Budget sample() {
        return sample;
    }

    /** The figure of a seed; 0 for the sample. */
    public double of(String id, int seed) {
        return results.get(new CellRef(sample.line(id), 0))[seed];
    }

    /** The figure of a seed in a cell. */
    public double of(Line line, int cell, int seed) {
        return results.get(new CellRef(line, cell))[seed];
    }

    /** The figure of a seed in the row with a key. */
    public double of(String id, String key, int seed) {
        Line line = sample.line(id);
        return of(line, line.axes().get(0).indexOf(key), seed);
    }

    /** All cells of a line of a seed. */
    public double[] along(String id, int seed) {
        Line line = sample.line(id);
        return IntStream.range(0, line.size())
                .mapToDouble(cell -> of(line, cell, seed))
                .toArray();
    }

    /** The sum of a line of a seed. */
    public double sum(String id, int seed) {
        return DoubleStream.of(along(id, seed)).sum();
    }

    /** Whether a figure has a reason in place of a number. */
    public boolean hasReason(String id, int seed) {
        return Texts.isNoNumber(of(id, seed));
    }
}
