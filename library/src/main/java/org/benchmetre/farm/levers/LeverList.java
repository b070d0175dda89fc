package org.benchmetre.farm.levers;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmEntries.Range;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.scenario.WordChoice;

/**
 * The entries whose doubt is worth knowing, with the ends of their usual ranges. Where no range is known, as for prices in other money
 * than that of the documented ones, it is seven tenths to one and a half times the entry: a choice of this project, no source.
 */
public final class LeverList {

    /** The row of single values that names the entry whose steps run down the second table. */
    public static final String DOWN = "second_table_down";
    /** The row of single values that names the entry whose steps run across it. */
    public static final String ACROSS = "second_table_across";

    /** Sold by the litre, the gallon, the kilogram or the kWh, so that its documented range is wide enough for all of them. */
    private static final String FUEL = "fuel_price";

    /** Fruit of a plant, where a plan has one crop. */
    static final String FRUIT_OF_ONE = "yield_per_plant";
    /** Fruit of all crops against that entered, where it lists several. */
    static final String FRUIT_OF_ALL = "yield_level";

    /** Where the ends come from, as a note of a line. */
    static final String SOURCE =
            "the usual range of the entry; 0.7 to 1.5 times the entry where none is known, our choice, no source";

    private static final double LESS = 0.7;
    private static final double MORE = 1.5;

    /** The entry that runs down where no other is named. */
    public static final String USUAL_DOWN = "picking_rate";
    /** The entry that runs across where no other is named. */
    public static final String USUAL_ACROSS = "wage_level";

    private static final String TIMES = "times as entered";
    private static final Map<String, Named> NAMED = named();

    /** The rows of single values that choose the entries of the second table. */
    public static final List<WordChoice> CHOICES =
            List.of(new WordChoice(DOWN, names(), USUAL_DOWN, ""), new WordChoice(ACROSS, names(), USUAL_ACROSS, DOWN));

    /** All of them. */
    final List<Lever> all;

    /**
     * Declares the ends of their ranges.
     *
     * @param b where the schedule is added
     * @param entries has all of them by now
     * @param isWanted whether one of a name is wanted
     */
    public LeverList(BudgetBuilder b, FarmEntries entries, Predicate<String> isWanted) {
        ScheduleBuilder s = b.schedule(Sheets.WHAT_IF, "Usual ranges");
        String unused = FarmTable.CROPS.hasRows(b.structure()) ? FRUIT_OF_ONE : FRUIT_OF_ALL;
        all = NAMED.entrySet().stream()
                .filter(each -> isWanted.test(each.getKey()))
                .filter(each -> !each.getKey().equals(unused))
                .map(each -> lever(each.getValue(), entries.line(each.getKey()), entries, b, s))
                .toList();
    }

    /**
     * The names of all of them.
     *
     * @return names of entries
     */
    public static List<String> names() {
        return List.copyOf(NAMED.keySet());
    }

    /** The one of a name; by either name of its fruit the one that the plan has. */
    Lever named(String name) {
        boolean isFruit = name.equals(FRUIT_OF_ONE) || name.equals(FRUIT_OF_ALL);
        return all.stream()
                .filter(lever -> lever.name().equals(name) || isFruit && lever.isFruit())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "No lever is called '" + name + "'; there are " + String.join(", ", names()) + "."));
    }

    private static Lever lever(Named named, Line entry, FarmEntries entries, BudgetBuilder b, ScheduleBuilder s) {
        boolean openUnit = entry.id().equals(FUEL);
        Range range = openUnit ? entries.ownRange(b, s, entry) : entries.range(b, s, entry);
        if (!entry.unit().hasMoney()) {
            return new Lever(named, entry, range.low(), range.high());
        }
        return new Lever(
                named,
                entry,
                when(range.low().isPositive(), range.low(), entry.times(number(LESS, ONE))),
                when(range.high().isPositive(), range.high(), entry.times(number(MORE, ONE))));
    }

    /**
     * What a reader sees of a lever.
     *
     * @param label what it is called
     * @param decimals of its range
     * @param unit its unit in words; empty for that of the entry
     */
    record Named(String label, int decimals, String unit) {

        /** Whether it is told in hundredths, as its unit says. */
        boolean isPercent() {
            return unit.startsWith("%");
        }
    }

    /** What a reader sees of each, by its name. */
    static Map<String, Named> named() {
        Map<String, Named> all = new LinkedHashMap<>();
        all.put("price_level", new Named("Price of fruit", 2, TIMES));
        all.put(FRUIT_OF_ONE, new Named("Fruit per plant", 0, ""));
        all.put(FRUIT_OF_ALL, new Named("Fruit of all crops", 2, TIMES));
        all.put("marketable_share", new Named("Marketable share", 0, "%"));
        all.put("expected_loss", new Named("Fruit lost to frost, pests", 0, "%"));
        all.put("picking_rate", new Named("Picking rate", 1, ""));
        all.put("wage_level", new Named("Wages", 2, TIMES));
        all.put("plant_price_level", new Named("Price of plants", 2, TIMES));
        all.put("parts_price_level", new Named("Price of parts", 2, TIMES));
        all.put("set_point_shift", new Named("Heating set points", 1, "K warmer"));
        all.put(FUEL, new Named("Price of fuel", 2, ""));
        all.put("electricity_price", new Named("Price of electricity", 2, ""));
        all.put("recovery_rate", new Named("Real rate of interest", 1, "% a year"));
        return all;
    }
}
