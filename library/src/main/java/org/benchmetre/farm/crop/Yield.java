package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.Documented;

/**
 * Yield of each kind of plant stock.
 *
 * <pre>
 * g = g0 f (D / D0)^-e     G = g P n     Y = G (1 - x) (1 - h) m
 * g0, g  fruit per plant and crop, of the plan and of the kind, g/(plant crop)     f  factor of the kind
 * D, D0  plants on a square metre of floor, of the plan and the reference, plant/m2     e  response to density, 0 to 1
 * P  plants     n  crops in a year, crop/a     G  fruit grown, kg/a     x  share lost before it is ripe
 * h  share missed at harvest     m  marketable share     Y  marketable fruit, kg/a
 * </pre>
 *
 * With a response between 0 and 1 grams per plant fall and kilograms per square metre rise as plants stand closer. The profile of the
 * crop says where direction and size come from.
 */
public final class Yield {

    private static final Unit GRAMS = Unit.parse("g/(plant crop)");
    private static final Unit KG = Unit.parse("kg/a");

    /** Fruit of a plant and crop, as entered, g/(plant crop). */
    public final Line perPlant;
    /** Marketable fruit of each kind, before fruit lost to dry plants, kg/a. */
    public final Line byStock;
    /** Marketable fruit of the chosen kind, before fruit lost to dry plants, kg/a. */
    public final Line marketable;
    /** Marketable fruit for each gram of the plan's yield per plant, before fruit lost to dry plants, chosen kind. */
    public final Line share;
    /** Fruit picked for each marketable kilogram, graded-out fruit with it; none where nothing is marketable. */
    public final Line pickedPerKg;
    /** Yield of the first year against a full one. */
    public final Line firstYear;
    /** Yield of the second year against a full one. */
    public final Line secondYear;

    private final Line marketableShare;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param planting plants
     * @param stock the kinds
     * @param growth how each kind grows
     * @param choice key of the chosen kind
     */
    public Yield(
            BudgetBuilder b,
            FarmEntries entries,
            Planting planting,
            PlantStock stock,
            StockGrowth growth,
            Line choice) {
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Yield");
        perPlant = entries.add(
                s.entry("yield_per_plant", "Fruit per plant and crop", GRAMS).from(0, 10_000));
        Line missed = entries.add(s.entry("harvest_losses", "Ripe fruit missed or dropped, share", ONE)
                .from(0, 1));
        Line lost = entries.add(s.entry("expected_loss", "Fruit lost to frost, pests and disease, share", ONE)
                .from(0, 1));
        marketableShare =
                entries.add(s.entry("marketable_share", "Marketable share", ONE).from(0, 1));
        firstYear = yearShare(s, entries, "year_1_share", "Yield of the first year, share of a full one");
        secondYear = yearShare(s, entries, "year_2_share", "Yield of the second year, share of a full one");
        Line density = densityFactor(s, entries, planting.plantsPerArea);

        ScheduleBuilder table = b.shared(Sheets.CROP, Tables.STOCK_GROWTH);
        Line against = table.line(
                "stock_yield_share",
                "Marketable share of the plan's yield per plant",
                ONE,
                stock.whereFilled(growth.yieldFactor
                        .times(density)
                        .times(one().minus(lost))
                        .times(one().minus(missed))
                        .times(marketableShare)));
        Formula ofPlan = perPlant.times(planting.plantCount).times(growth.cropsPerYear);
        byStock = table.line(
                "stock_fruit_marketable",
                "Marketable",
                KG,
                ofPlan.times(against).in(KG));

        ScheduleBuilder one = b.shared(Sheets.CROP, Tables.FRUIT_OF_A_YEAR);
        share = one.line(
                "yield_share", "Marketable share of the plan's yield per plant", ONE, chosen(against, stock, choice));
        Formula used = chosen(growth.yieldFactor, stock, choice).times(density);
        Line gramsChosen = one.line("grams_per_plant", "Fruit per plant and crop", GRAMS, used.times(perPlant));
        warn(one, gramsChosen, entries.profile());
        Line all = one.line(
                "fruit_grown",
                "Fruit grown",
                KG,
                gramsChosen
                        .times(planting.plantCount)
                        .times(growth.cropsPerYear)
                        .in(KG));
        Line gone = one.line("fruit_expected_lost", "Lost to frost, pests and disease", KG, all.times(lost));
        Line left = one.line(
                "fruit_missed", "Missed at harvest", KG, all.minus(gone).times(missed));
        marketable = one.line(
                "fruit_marketable",
                "Marketable, before dry plants",
                KG,
                ofPlan.times(share).in(KG));
        one.line(
                "fruit_graded_out",
                "Graded out",
                KG,
                all.minus(gone).minus(left).times(one().minus(marketableShare)));
        pickedPerKg = one.line(
                "fruit_picked_per_kg",
                "Fruit picked for each marketable kg, graded-out fruit with it",
                ONE,
                when(marketableShare.isPositive(), one().over(marketableShare), none(ONE)));
        one.line(
                "fruit_grown_per_area",
                "Fruit grown per plant, times plants per m² of floor",
                Unit.parse("kg/(m2 a)"),
                gramsChosen
                        .times(planting.plantsPerArea)
                        .times(growth.cropsPerYear)
                        .in(Unit.parse("kg/(m2 a)")));
    }

    /** Outside what is published. The entry itself is watched over by its own range. */
    private void warn(ScheduleBuilder s, Line grams, CropProfile profile) {
        Documented known = profile.needed("yield_per_plant");
        String published = profile.fact("yield_published").source();
        Plausible range = known.in(GRAMS);
        Line least = s.line(
                "grams_per_plant_least",
                "Fruit per plant and crop, least",
                GRAMS,
                number(range.low(), GRAMS),
                known.source());
        Line most = s.line(
                "grams_per_plant_most",
                "Fruit per plant and crop, most published",
                GRAMS,
                number(range.high(), GRAMS),
                known.source());
        Line outside = s.line(
                "grams_per_plant_outside", "Fruit per plant outside that by", GRAMS, outside(grams, least, most));
        Line planned = s.line(
                "yield_per_plant_outside", "The plan's own outside that by", GRAMS, outside(perPlant, least, most));
        s.warning(
                "grams_per_plant_warning",
                "Fruit per plant against what is published",
                and(outside.exceeds(none(GRAMS)), not(planned.exceeds(none(GRAMS)))),
                "Fruit per plant and crop lies outside " + Numbers.shown(range.low()) + " to "
                        + Numbers.shown(range.high()) + " g (" + published
                        + "): check yield_factor, reference_density and density_response.");
    }

    private static Formula outside(Line grams, Line least, Line most) {
        return greater(none(GRAMS), greater(grams.minus(most), least.minus(grams)));
    }

    private static Line yearShare(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, ONE).from(0, 2).note("Moves yearly cash alone."));
    }

    private static Line densityFactor(ScheduleBuilder s, FarmEntries entries, Line density) {
        Unit perArea = Unit.parse("plant/m2");
        Line reference = entries.add(s.entry("reference_density", "Plants per m² of floor the yield holds for", perArea)
                .from(0, 200));
        Line response =
                entries.add(s.entry("density_response", "Response to density: 0 none, 1 the same kg per m²", ONE)
                        .from(0, 1));
        Formula ratio = density.over(reference);
        return s.line(
                "density_factor",
                "Fruit per plant at the plan's density against the reference",
                ONE,
                when(
                        and(reference.isPositive(), density.isPositive()),
                        ratio.power(none(ONE).minus(response)),
                        one()),
                "(density / reference)^-response; "
                        + entries.profile().needed("density_response").source());
    }

    private static Formula chosen(Line line, PlantStock stock, Line choice) {
        return lookup(line, stock.key, choice);
    }
}
