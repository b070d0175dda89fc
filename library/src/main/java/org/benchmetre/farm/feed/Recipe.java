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

/**
 * What the feed shall carry when it reaches the plant, raw water included. The default is a strawberry feed: N 11.4, P 1.8, K 6.8,
 * Ca 3.5, Mg 1.5 mmol/L after Lee et al., Acta Horticulturae 1156.43, 2017 (recipe); S 1.8 is what balances its ions when all
 * nitrogen is nitrate. Ranges are common practice, no source.
 */
final class Recipe {

    private static final String SOURCE = "Lee et al., Acta Horticulturae 1156.43, 2017 (recipe); range " + COMMON;

    /** What is asked for, in mmol/L, of each ion that salts bring. */
    final Map<Ion, Line> target = new EnumMap<>(Ion.class);

    private final ScheduleBuilder s;
    private final FarmEntries entries;

    Recipe(BudgetBuilder b, FarmEntries entries) {
        this.entries = entries;
        s = b.schedule(Sheets.OPERATIONS, "Feed recipe");
        s.note(
                "What the feed carries when it reaches the plant; what the raw water and the acid bring counts towards it.");
        Line nitrogen =
                ion("recipe_nitrogen", "Nitrogen asked for, nitrate and ammonium together", 5, 11.4, 16, SOURCE);
        Line share = entries.add(s.entry("recipe_ammonium_share", "Share of the nitrogen as ammonium", ONE)
                .from(0, 1)
                .typical(0, 0, 0.1, COMMON));
        target.put(Ion.PHOSPHORUS, ion("recipe_phosphorus", "Phosphorus asked for", 0.8, 1.8, 2.5, SOURCE));
        target.put(Ion.POTASSIUM, ion("recipe_potassium", "Potassium asked for", 3, 6.8, 9, SOURCE));
        target.put(Ion.CALCIUM, ion("recipe_calcium", "Calcium asked for", 2, 3.5, 5, SOURCE));
        target.put(Ion.MAGNESIUM, ion("recipe_magnesium", "Magnesium asked for", 0.8, 1.5, 2.5, SOURCE));
        target.put(
                Ion.SULPHUR,
                ion(
                        "recipe_sulphur",
                        "Sulphur asked for",
                        0.8,
                        1.8,
                        4,
                        "by ion balance of that recipe; range " + COMMON));
        target.put(
                Ion.AMMONIUM, s.line("recipe_ammonium", "Ammonium asked for", MMOL_PER_LITRE, nitrogen.times(share)));
        target.put(
                Ion.NITRATE,
                s.line("recipe_nitrate", "Nitrate asked for", MMOL_PER_LITRE, nitrogen.times(one().minus(share))));
    }

    private Line ion(String id, String label, double low, double usual, double high, String source) {
        return entries.add(s.entry(id, label, MMOL_PER_LITRE).from(0, 100).typical(low, usual, high, source));
    }
}
