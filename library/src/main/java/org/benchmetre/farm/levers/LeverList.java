package org.benchmetre.farm.levers;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmEntries.Range;
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

    private static final double LESS = 0.7;
    private static final double MORE = 1.5;

    /** The entry that runs down where no other is named. */
    static final String USUAL_DOWN = "picking_rate";
    /** The entry that runs across where no other is named. */
    static final String USUAL_ACROSS = "wage_level";

    private static final Map<String, String> LABELS = labels();

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
     */
    public LeverList(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.WHAT_IF, "Usual ranges");
        all = LABELS.entrySet().stream()
                .map(each -> lever(each.getValue(), entries.line(each.getKey()), entries, b, s))
                .toList();
    }

    /**
     * The names of all of them.
     *
     * @return names of entries
     */
    public static List<String> names() {
        return List.copyOf(LABELS.keySet());
    }

    /** The one of a name. */
    Lever named(String name) {
        return all.stream()
                .filter(lever -> lever.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "No lever is called '" + name + "'; there are " + String.join(", ", names()) + "."));
    }

    private static Lever lever(String label, Line entry, FarmEntries entries, BudgetBuilder b, ScheduleBuilder s) {
        boolean openUnit = entry.id().equals(FUEL);
        Range range = openUnit ? entries.ownRange(b, s, entry) : entries.range(b, s, entry);
        if (!entry.unit().hasMoney()) {
            return new Lever(label, entry, range.low(), range.high());
        }
        return new Lever(
                label,
                entry,
                when(range.low().isPositive(), range.low(), entry.times(number(LESS, ONE))),
                when(range.high().isPositive(), range.high(), entry.times(number(MORE, ONE))));
    }

    /** What a reader calls each, by its name. */
    static Map<String, String> labels() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put("price_level", "Price of fruit");
        labels.put("yield_per_plant", "Fruit per plant");
        labels.put("marketable_share", "Marketable share");
        labels.put("picking_rate", "Picking rate");
        labels.put("wage_level", "Wages");
        labels.put("plant_price_level", "Price of plants");
        labels.put("parts_price_level", "Price of parts");
        labels.put("set_point_shift", "Heating set points");
        labels.put(FUEL, "Price of fuel");
        labels.put("electricity_price", "Price of electricity");
        labels.put("recovery_rate", "Real rate of interest");
        return labels;
    }
}
