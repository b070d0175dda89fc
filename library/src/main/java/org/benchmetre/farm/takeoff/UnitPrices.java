package org.benchmetre.farm.takeoff;

import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.UsualRange;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.UnitWord;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * The usual price of a pack, from what a metre, a litre, a piece of anything usually costs: {@code unit_prices.csv} of the crop's
 * profile. The unit of a part is a word; one that is a unit of length, area, volume or mass is converted, any other must stand in the
 * table as it is. A blank pack is one unit.
 *
 * @param packs what is in a pack
 * @param known usual prices of a unit, money per unit, by the unit's word
 */
record UnitPrices(Packs packs, Map<String, Usual> known) implements UsualRange {

    /**
     * What is in a pack of each part.
     *
     * @param unit unit of the item, a word
     * @param pack units in a pack
     * @param driver what it is counted by
     * @param usual the unit of a part that names none, by its driver
     */
    record Packs(Line unit, Line pack, Line driver, Map<String, String> usual) implements Serializable {

        /** Keeps its own copy. */
        Packs {
            usual = new LinkedHashMap<>(usual);
        }

        private String word(int cell, Function<Line, List<Given>> values) {
            String said = values.apply(unit).get(cell).text();
            String counted = values.apply(driver).get(cell).text();
            return said.isEmpty() ? usual.getOrDefault(counted, "") : said;
        }
    }

    /** Keeps its own copy. */
    UnitPrices {
        known = new LinkedHashMap<>(known);
    }

    /** The table of a profile; empty where its money does not hold. */
    static Map<String, Usual> of(CropProfile profile) {
        Map<String, Usual> known = new LinkedHashMap<>();
        for (ProfileRow row : profile.moneyHolds() ? profile.rows("unit_prices") : List.<ProfileRow>of()) {
            Plausible range = new Plausible(row.number("low"), Double.NaN, row.number("high"));
            known.put(row.text("unit"), new Usual(range, "", row.text("source")));
        }
        return known;
    }

    @Override
    public Usual of(int cell, Function<Line, List<Given>> values) {
        String word = packs.word(cell, values);
        Given packed = values.apply(packs.pack()).get(cell);
        double units = packed.filled() ? packed.number() : 1;
        for (Map.Entry<String, Usual> each : known.entrySet()) {
            double factor = factor(word, each.getKey());
            if (factor > 0) {
                return times(each.getValue(), units * factor, each.getKey());
            }
        }
        return Usual.UNKNOWN;
    }

    private static Usual times(Usual usual, double units, String word) {
        Plausible range = usual.range();
        return new Usual(
                new Plausible(range.low() * units, Double.NaN, range.high() * units),
                "",
                "by the " + word + ": " + usual.source());
    }

    /** How many of the known unit one of the other is; 0 where one does not convert to the other. */
    private static double factor(String from, String to) {
        if (UnitWord.isSame(from, to)) {
            return 1;
        }
        return UnitWord.converted(1, from, to).orElse(0.0);
    }
}
