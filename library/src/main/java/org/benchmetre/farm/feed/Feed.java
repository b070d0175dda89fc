package org.benchmetre.farm.feed;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FarmEntries;

/**
 * The feed from recipe to cost: the recipe, less what raw water and acid bring, is made from salts in a stated order; the ions are
 * checked, the bands are held against it, and a cubic metre is priced.
 */
public final class Feed {

    /** Cost of salts, micronutrients and acid, money/m3 of feed; the water itself is not in it. */
    public final Line costPerVolume;
    /** Hardness of the raw water as CaCO3, mg/L. */
    public final Line hardness;
    /** Dissolved solids of the raw water, mg/L. */
    public final Line dissolved;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     */
    public Feed(BudgetBuilder b, FarmEntries entries) {
        FeedTables tables = FeedTables.of(entries.profile());
        Recipe recipe = new Recipe(b, entries);
        RawWater water = new RawWater(b, entries, tables);
        Acid acid = new Acid(b, entries, tables, water.alkalinity);
        SaltAmounts amounts = new SaltAmounts(b, entries, tables, recipe, water, acid);
        StockTanks tanks = new StockTanks(b, entries);
        costPerVolume = new FeedCost(b, entries, amounts, acid, tanks).perVolume;
        IonTable ions = new IonTable(b, tables, recipe, water, acid, amounts);
        IonBalance balance = new IonBalance(b, entries, ions);
        new Unmet(b, entries, tables, ions);
        Line ec = new Conductivity(b, tables, ions).ec;
        new FeedBands(b, entries, tables, new FeedBands.Conducting(balance.cations, ec), ions);
        hardness = water.hardness;
        dissolved = water.dissolved;
        cautions(b);
    }

    private static void cautions(BudgetBuilder b) {
        b.caution(
                "Acid dosing",
                "Strong acids burn and fume. Pour acid into water, never water into acid; work in moving air with goggles, face "
                        + "shield, gloves and apron, and water to rinse with at hand; never mix acids with each other or with "
                        + "chlorine. The safety data sheet and local rules on storage and transport go before anything said here.");
        b.caution(
                "Stock solutions",
                "Keep calcium apart from sulphate and phosphate, and acid in a tank of its own. Nitrates feed a fire: keep them "
                        + "dry and away from fuel and heat. Buying and keeping ammonium nitrate is restricted in many places.");
    }
}
