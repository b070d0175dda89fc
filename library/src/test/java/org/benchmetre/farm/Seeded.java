package org.benchmetre.farm;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/** Seeded random scenarios around a sample. */
public final class Seeded {

    private Seeded() {}

    /** The sample with every bounded single entry and every price moved at random inside its plausible range. */
    public static Figures figures(Budget sample, long seed) {
        return Figures.of(budget(sample, seed));
    }

    /** The budget of {@link #figures}, before it is worked out. */
    public static Budget budget(Budget sample, long seed) {
        return sample.with(changes(sample, seed));
    }

    /** What {@link #budget} changes: the same cells for each seed. */
    static Map<Line, Map<Integer, Given>> changes(Budget sample, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        for (Line line : sample.lines()) {
            sample.entry(line).ifPresent(entry -> {
                double low = entry.plausible().low();
                double high = entry.plausible().high();
                if (line.axes().isEmpty() && high > low && !entry.bounds().whole()) {
                    double value = low + random.nextDouble() * (high - low);
                    changes.put(line, Map.of(0, Given.number(value, line.unit())));
                }
            });
        }
        Line count = sample.line("bench_count");
        changes.put(count, Map.of(0, Given.number(1 + random.nextInt(80), count.unit())));
        int ways = keys(sample, "way_key").size();
        Line choice = sample.line("irrigation_choice");
        changes.put(choice, Map.of(0, Given.text(keys(sample, "way_key").get(random.nextInt(ways)))));
        Line price = sample.line("material_price");
        Map<Integer, Given> prices = new HashMap<>();
        List<Given> salvages = sample.given(sample.line("material_salvage"));
        IntStream.range(0, price.axes().get(0).filled()).forEach(i -> {
            double least = Math.max(0, salvages.get(i).number());
            prices.put(i, Given.number(least + random.nextDouble() * 400, price.unit()));
        });
        changes.put(price, prices);
        return changes;
    }

    /** The keys of the filled rows of a table. */
    static List<String> keys(Budget sample, String id) {
        Axis axis = sample.line(id).axes().get(0);
        return axis.keys().subList(0, axis.filled());
    }
}
