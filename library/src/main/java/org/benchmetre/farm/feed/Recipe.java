package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.EnumMap;
import java.util.Map;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** What the feed shall carry when it reaches the plant, raw water included. */
final class Recipe {

    private static final String SOURCE = "Lee et al., Acta Horticulturae 1156.43, 2017 (recipe); range " + COMMON;

    /** What is asked for, in mmol/L, of each ion that salts bring. */
    final Map<Ion, Line> target = new EnumMap<>(Ion.class);

    private final ScheduleBuilder s;
    private final FarmEntries entries;

    Recipe(BudgetBuilder b, FarmEntries entries) {
        this.entries = entries;
        s = b.schedule(Sheets.OPERATIONS, "Recipe of the nutrient solution");
        s.note(
                "What the nutrient solution carries when it reaches the plant; what the raw water and the acid bring counts towards it.");
        Line nitrogen = ion("recipe_nitrogen", "Nitrogen asked for, nitrate and ammonium together");
        Line share = entries.add(s.entry("recipe_ammonium_share", "Share of the nitrogen as ammonium", ONE)
                .from(0, 1));
        target.put(Ion.PHOSPHORUS, ion("recipe_phosphorus", "Phosphorus asked for"));
        target.put(Ion.POTASSIUM, ion("recipe_potassium", "Potassium asked for"));
        target.put(Ion.CALCIUM, ion("recipe_calcium", "Calcium asked for"));
        target.put(Ion.MAGNESIUM, ion("recipe_magnesium", "Magnesium asked for"));
        target.put(Ion.SULPHUR, ion("recipe_sulphur", "Sulphur asked for"));
        target.put(
                Ion.AMMONIUM, s.line("recipe_ammonium", "Ammonium asked for", MMOL_PER_LITRE, nitrogen.times(share)));
        target.put(
                Ion.NITRATE,
                s.line("recipe_nitrate", "Nitrate asked for", MMOL_PER_LITRE, nitrogen.times(one().minus(share))));
    }

    private Line ion(String id, String label) {
        return entries.add(s.entry(id, label, MMOL_PER_LITRE).from(0, 100));
    }
}
