package org.benchmetre.farm;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.profile.CropProfile;

/** The sections of energy on their own, and a short way to change climate, set points and hours of a sample, month by month. */
final class Energy {

    /** Months of a year. */
    static final int MONTHS = 12;

    private static final List<String> OUTSIDE = List.of("day_temperature", "night_temperature");
    private static final List<String> HOURS =
            List.of("day_hours", "fan_hours", "cooler_hours", "circulation_hours", "light_hours");

    private Energy() {}

    /** House, heat and electricity of the trough house without the rest of the farm, so that hundreds of houses take no time. */
    static Budget alone() {
        BudgetBuilder b = new BudgetBuilder("Energy", "USD");
        FarmEntries entries = new FarmEntries(CropProfile.of("strawberry"));
        Months months = new Months(b, entries.profile());
        House house = new House(b, entries);
        Line price =
                entries.add(b.schedule("Price", "Price").entry("electricity_price", "Price", Unit.parse("money/kWh")));
        EnergyOfHouse.of(b, entries, months, house, price);
        return Sample.filled(b.build(), Sample.troughHouse());
    }

    /**
     * The same with 500 m2 of cover at 4 W/(m2 K) and no leaks, which is 2 kW for each kelvin; twelve hours of light, no sun and no spread
     * of days, 15 degC set by day and 10 by night.
     */
    static Budget twoKilowattsAKelvin(Budget alone, String... entries) {
        Budget house = Sample.with(
                alone,
                "envelope_areas=measured",
                "roof_area=500 m2",
                "roof_glazing=single",
                "u_value_single=4 W/(m2 K)",
                "air_changes=0 1/h",
                "night_screen=no",
                "temperature_spread=0 K");
        house = with(house, "day_hours", month -> 12);
        house = with(house, "solar_radiation", month -> 0);
        house = with(house, "day_set", month -> 15);
        house = with(house, "night_set", month -> 10);
        return Sample.with(house, entries);
    }

    /** A seeded scenario with every month of its own, from frost to heat, heated or not, screened or not. */
    static Budget seeded(Budget sample, long seed) {
        return sample.with(changes(sample, seed));
    }

    /** The changes that make {@link #seeded}. */
    static Map<Line, Map<Integer, Given>> changes(Budget sample, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        OUTSIDE.forEach(id -> put(changes, sample, id, month -> -30 + 65 * random.nextDouble()));
        put(changes, sample, "day_set", month -> 5 + 20 * random.nextDouble());
        put(changes, sample, "night_set", month -> 20 * random.nextDouble());
        put(changes, sample, "solar_radiation", month -> 8 * random.nextDouble());
        put(changes, sample, "heated_share", month -> random.nextInt(3) / 2.0);
        HOURS.forEach(id -> put(changes, sample, id, month -> 24 * random.nextDouble()));
        changes.put(sample.line("night_screen"), Map.of(0, Given.text(random.nextBoolean() ? "yes" : "no")));
        for (String id : List.of("roof_glazing", "side_glazing", "end_glazing")) {
            String cover = List.of("single", "double", "insulated").get(random.nextInt(3));
            changes.put(sample.line(id), Map.of(0, Given.text(cover)));
        }
        for (Line line : sample.lines()) {
            sample.entry(line)
                    .filter(entry -> !entry.bounds().whole())
                    .map(Entry::plausible)
                    .ifPresent(range -> {
                        if (line.axes().isEmpty() && range.high() > range.low()) {
                            double value = range.low() + random.nextDouble() * (range.high() - range.low());
                            changes.put(line, Map.of(0, Given.number(value, line.unit())));
                        }
                    });
        }
        return changes;
    }

    /** The budget with a line of months replaced. */
    static Budget with(Budget budget, String id, IntToDoubleFunction byMonth) {
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        put(changes, budget, id, byMonth);
        return budget.with(changes);
    }

    /** The figures of a line, January first. */
    static double[] months(Figures figures, String id) {
        Line line = figures.budget().line(id);
        double[] values = new double[MONTHS];
        Arrays.setAll(values, month -> figures.number(line, month));
        return values;
    }

    /** The warnings that are not empty, by line. */
    static List<String> warnings(Figures figures) {
        return figures.budget().warnings().stream()
                .filter(line -> IntStream.range(0, line.size())
                        .anyMatch(cell -> !figures.text(line, cell).isEmpty()))
                .map(Line::id)
                .toList();
    }

    private static void put(
            Map<Line, Map<Integer, Given>> changes, Budget budget, String id, IntToDoubleFunction byMonth) {
        Line line = budget.line(id);
        Map<Integer, Given> values = new HashMap<>();
        for (int month = 0; month < MONTHS; month++) {
            values.put(month, Given.number(byMonth.applyAsDouble(month), line.unit()));
        }
        changes.put(line, values);
    }
}
