package org.benchmetre.farm.feed;

import static org.benchmetre.farm.input.TradeUnits.LITRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Two stock tanks of the same volume, drawn at the same rate: one litre of each makes so many litres of feed. Tank A holds calcium,
 * tank B sulphate and phosphate. Plain arithmetic.
 */
final class StockTanks {

    private static final Unit VOLUME = Unit.parse("m3");

    /** Litres of feed from a litre of each stock solution. */
    final Line dilution;
    /** Feed that one filling of both tanks makes, m3. */
    final Line feed;

    StockTanks(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Stock solutions");
        s.note("Calcium never meets sulphate or phosphate in a stock tank. Acid has a tank of its own.");
        dilution = entries.add(s.entry("stock_dilution", "Litres of solution from a litre of each stock", ONE)
                .above(1, 1000));
        Line volume = entries.add(
                s.entry("stock_tank_volume", "Volume of each stock tank", LITRE).above(0, 100_000));
        feed = s.line(
                "stock_tank_feed",
                "Nutrient solution from one filling of both tanks",
                VOLUME,
                volume.times(dilution).in(VOLUME));
    }
}
