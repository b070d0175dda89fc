package org.benchmetre.farm.feed;

import static org.benchmetre.farm.feed.FeedUnits.GRAMS_PER_VOLUME;
import static org.benchmetre.farm.feed.FeedUnits.MONEY_PER_KG;
import static org.benchmetre.farm.feed.FeedUnits.MONEY_PER_VOLUME;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** What a cubic metre of feed costs: salts, micronutrients as one mix, and acid. The water itself is not in it. Plain arithmetic. */
final class FeedCost {

    /** The year of the prices of salts and acids. */
    static final String YEAR = "feed_price_year";

    private static final Unit KILOGRAM = Unit.parse("kg");

    /** Cost of everything added to the water, money/m3 of feed. */
    final Line perVolume;

    FeedCost(BudgetBuilder b, FarmEntries entries, SaltAmounts amounts, Acid acid, StockTanks tanks) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Prices of salts");
        s.note("Invented prices; replace them by a quotation, delivered. The acids stand with the acid.");
        entries.add(s.entry(YEAR, "Year of the prices of salts and acids", ONE)
                .from(1990, 2100)
                .whole());
        Line mixPrice = entries.add(s.entry("micronutrient_price", "Price: Micronutrient mix", MONEY_PER_KG)
                .from(0, 1_000_000)
                .meaning(Meaning.priceOf("micronutrient", YEAR)));
        SaltTable salts = new SaltTable(b, entries, s, amounts, tanks);
        new Dissolving(b, salts, tanks.dilution);

        ScheduleBuilder t = b.schedule(Sheets.OPERATIONS, "Cost of the nutrient solution");
        t.note("For a cubic metre of nutrient solution as it reaches the plant; the water itself is not in it.");
        Line mixRate = entries.add(
                t.entry("micronutrient_rate", "Micronutrient mix in a volume of nutrient solution", GRAMS_PER_VOLUME)
                        .from(0, 10_000));
        salts.inTank(t, "A");
        salts.inTank(t, "B");
        t.line(
                "stock_tank_micronutrients",
                "Micronutrient mix in tank B",
                KILOGRAM,
                mixRate.times(tanks.feed).in(KILOGRAM));
        Line saltCost = t.line("feed_salts_cost_per_volume", "Cost of salts", MONEY_PER_VOLUME, salts.cost());
        Line mixCost = t.line(
                "feed_micronutrients_cost_per_volume",
                "Cost of micronutrients",
                MONEY_PER_VOLUME,
                mixRate.times(mixPrice).in(MONEY_PER_VOLUME));
        perVolume = t.line(
                "feed_cost_per_volume",
                "Cost of the nutrient solution: salts, micronutrients and acid",
                MONEY_PER_VOLUME,
                saltCost.plus(mixCost).plus(acid.cost));
    }
}
