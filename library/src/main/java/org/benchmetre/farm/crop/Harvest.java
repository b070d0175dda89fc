package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.INVENTED;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.Planting;

/**
 * Plain yield and receipts: fruit per plant and crop, the share that is marketable, one price, and what each kilogram costs on its
 * way out. Kilograms are marketable kilograms a year.
 */
public final class Harvest {

    /** Fruit of a plant and crop. */
    public final Line perCrop;
    /** Crops in a year. */
    public final Line cropsPerYear;
    /** Marketable fruit a year. */
    public final Line yield;
    /** Marketable share. */
    public final Line marketable;
    /** Price. */
    public final Line price;
    /** Picking, packing and packs for each kilogram. */
    public final Line perKg;
    /** Commission, share of price. */
    public final Line commission;
    /** Left of a kilogram after what moves with yield; below zero where it costs more than it brings. */
    public final Line leftPerKg;
    /** Receipts a year. */
    public final Line receipts;
    /** What moves with yield, a year. */
    public final Line yieldCosts;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param planting plants
     */
    public Harvest(BudgetBuilder b, FarmEntries entries, Planting planting) {
        Unit perPlant = Unit.parse("g/(plant crop)");
        Unit kgPerYear = Unit.parse("kg/a");
        Unit moneyPerKg = Unit.parse("money/kg");
        Unit moneyPerYear = Unit.parse("money/a");
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Yield and receipts");
        cropsPerYear = entries.add(s.entry("crops_per_year", "Crops in a year", Unit.parse("crop/a"))
                .above(0, 12)
                .typical(0.5, 1, 2, COMMON));
        perCrop = entries.add(s.entry("yield_per_plant", "Fruit per plant and crop", perPlant)
                .from(0, 10_000)
                .typical(
                        300,
                        500,
                        1350,
                        "Short-day plants in troughs 500 g: Proceedings of the Florida State Horticultural Society, article "
                                + "85841; 1350 g high but reached: Horticulturae 8(3):249, 2022; low end " + COMMON));
        marketable = entries.add(s.entry("marketable_share", "Marketable share", ONE)
                .from(0, 1)
                .typical(
                        0.8,
                        0.9,
                        0.97,
                        "0.9 in troughs: high plant densities in suspended troughs, Florida (abstract)"));
        price = entries.add(s.entry("fruit_price", "Price of marketable fruit", moneyPerKg)
                .from(0, 1_000_000)
                .typical(3, 6, 12, INVENTED));
        perKg = entries.add(s.entry("cost_per_kg", "Picking, packing and packs, per kg", moneyPerKg)
                .from(0, 1_000_000)
                .typical(0.8, 1.5, 3, INVENTED));
        commission = entries.add(s.entry("commission_share", "Commission, share of price", ONE)
                .from(0, 0.95)
                .typical(0, 0.1, 0.2, INVENTED));
        leftPerKg = s.line(
                "left_per_kg",
                "Left of a kg after what moves with yield",
                moneyPerKg,
                price.times(one().minus(commission)).minus(perKg));
        yield = s.line(
                "yield_total",
                "Marketable fruit",
                kgPerYear,
                planting.plantCount
                        .times(perCrop)
                        .times(cropsPerYear)
                        .times(marketable)
                        .in(kgPerYear));
        receipts = s.line("receipts_total", "Receipts", moneyPerYear, yield.times(price));
        yieldCosts = s.line(
                "yield_costs_total",
                "Picking, packing, packs and commission",
                moneyPerYear,
                yield.times(perKg).plus(receipts.times(commission)),
                "what moves with yield");
    }
}
