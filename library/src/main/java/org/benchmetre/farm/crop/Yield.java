package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.Optional;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.Planting;

/**
 * Fruit of a year: of the crops as they are grown, and of each kind of plant stock as if all crops were of it.
 *
 * <pre>
 * W = sum n g f a w     Y = P v d (1 - x) (1 - h) m W     d = (D / D0)^-e
 * a = (1 + b min(L - 1, 1) + c max(L - 2, 0)) / L where L is over 1, else 1
 * n  crops in a year, on all benches     g  fruit per plant and crop, as told, g     f  factor of the kind of stock
 * w  factor of warmth, 1 where months of fruit are entered
 * a  average over the crops that the same plants bear, L of them; b, c  the second and later ones against the first
 * W  fruit of a plant and year, g     P  plants     v  all fruit against that told     h  share missed at harvest
 * x  share lost before it is ripe     m  marketable share     Y  marketable fruit, kg/a     d  factor of density
 * D, D0  plants on a square metre of floor, of the plan and the reference, plant/m2     e  response to density, 0 to 1
 * </pre>
 *
 * With a response between 0 and 1 grams per plant fall and kilograms per square metre rise as plants stand closer. The profile of the
 * crop says where direction and size come from.
 */
public final class Yield {

    private static final Unit GRAMS = Unit.parse("g/(plant crop)");
    private static final Unit GRAMS_A_YEAR = Unit.parse("g/(plant a)");
    private static final Unit KG = Unit.parse("kg/a");
    private static final String KEPT =
            "(1 + second min(turns - 1, 1) + later max(turns - 2, 0)) / turns: plain average over the crops of the same plants";

    /** Fruit of a plant and crop, as entered for the plan, g/(plant crop). */
    public final Line perPlant;
    /** All fruit against that told, an entry. */
    public final Line level;
    /** Fruit of a plant and crop as told, average over the crops, g/(plant crop). */
    public final Line planned;
    /** Marketable fruit of each kind as if all crops were of it, before fruit lost to dry plants, kg/a. */
    public final Line byStock;
    /** Marketable fruit, before fruit lost to dry plants, kg/a. */
    public final Line marketable;
    /** Fruit of all crops for a plant of the house and year, before what they have in common, g/(plant a). */
    final Line ofPlant;
    /** Fruit of each crop for a plant of the house and year, before what all crops have in common, g/(plant a). */
    final Line weight;
    /** Fruit picked for each marketable kilogram, graded-out fruit with it; none where nothing is marketable. */
    public final Line pickedPerKg;
    /** Yield of the first year against a full one. */
    public final Line firstYear;
    /** Yield of the second year against a full one. */
    public final Line secondYear;

    private final Line density;
    private final Line share;
    private final Crops crops;
    private final Planting planting;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param planting plants
     * @param chosen crops, kinds of plant stock and how each grows
     * @param heat fruit per plant by warmth, where that is chosen
     */
    public Yield(
            BudgetBuilder b, FarmEntries entries, Planting planting, CropPlants chosen, Optional<RipeByHeat> heat) {
        this.planting = planting;
        PlantStock stock = chosen.stock();
        crops = chosen.crops();
        ScheduleBuilder s = b.schedule(Sheets.CROP, "Yield");
        perPlant = entries.add(
                s.entry("yield_per_plant", "Fruit per plant and crop", GRAMS).from(0, 10_000));
        level = entries.add(
                s.entry("yield_level", "All fruit against that entered", ONE).from(0, 10));
        Line missed = entries.add(s.entry("harvest_losses", "Ripe fruit missed or dropped, share", ONE)
                .from(0, 1));
        Line lost = entries.add(s.entry("expected_loss", "Fruit lost to frost, pests and disease, share", ONE)
                .from(0, 1));
        Line marketableShare =
                entries.add(s.entry("marketable_share", "Marketable share", ONE).from(0, 1));
        firstYear = yearShare(s, entries, "year_1_share", "Yield of the first year, share of a full one");
        secondYear = yearShare(s, entries, "year_2_share", "Yield of the second year, share of a full one");
        density = densityFactor(s, entries, planting.plantsPerArea);
        share = s.line(
                "yield_share",
                "Marketable share of fruit as told, density counted",
                ONE,
                density.times(one().minus(lost)).times(one().minus(missed)).times(marketableShare));

        ScheduleBuilder kinds = b.shared(Sheets.CROP, Tables.STOCK_GROWTH);
        Line kept = kinds.line(
                "stock_yield_kept",
                "Yield counted, average over the crops of its plants",
                ONE,
                chosen.growth().yieldFactor.times(average(chosen.growth(), crops.turns)),
                KEPT);
        ScheduleBuilder rows = b.shared(Sheets.CROP, Tables.CROPS);
        Line grams = rows.line("crop_grams", "Fruit a plant and crop, as told", GRAMS, crops.rows.gramsOr(perPlant));
        Line told = rows.line(
                "crop_grams_a_year",
                "Fruit for a plant of the house and year, as told",
                GRAMS_A_YEAR,
                grams.times(crops.perYear));
        weight = rows.line(
                "crop_grams_kept",
                "The same by its plant stock and age",
                GRAMS_A_YEAR,
                heat.map(ripe -> told.times(ripe.factor)).orElse(told).times(crops.ofKind(kept)));
        ScheduleBuilder one = b.shared(Sheets.CROP, Tables.FRUIT_OF_A_YEAR);
        Line toldAYear = one.line(
                "grams_told_a_year", "Fruit of a plant and year, as told", GRAMS_A_YEAR, sum(told, crops.axis));
        ofPlant = one.line(
                "grams_a_year", "Fruit of a plant and year, by stock and age", GRAMS_A_YEAR, sum(weight, crops.axis));
        planned = one.line(
                "grams_planned",
                "Fruit per plant and crop",
                GRAMS,
                toldAYear.times(level).over(crops.total));
        Line warmed = heat.map(ripe -> one.line(
                        "grams_by_warmth",
                        "Fruit of a plant and year, by warmth",
                        GRAMS_A_YEAR,
                        sumProduct(told, ripe.factor, crops.axis)))
                .orElse(toldAYear);
        byStock = kinds.line(
                "stock_fruit_marketable",
                "Marketable",
                KG,
                stock.whereFilled(kilograms(warmed.times(share)).times(kept)));
        Line all = one.line("fruit_grown", "Fruit grown", KG, kilograms(ofPlant.times(density)));
        Line gone = one.line("fruit_expected_lost", "Lost to frost, pests and disease", KG, all.times(lost));
        Line left = one.line(
                "fruit_missed", "Missed at harvest", KG, all.minus(gone).times(missed));
        marketable = one.line("fruit_marketable", "Marketable, before dry plants", KG, kilograms(ofPlant.times(share)));
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
                "grams_per_plant",
                "Fruit per plant and crop",
                GRAMS,
                ofPlant.times(level).times(density).over(crops.total));
        one.line(
                "fruit_grown_per_area",
                "Fruit grown per plant, times plants per m² of floor",
                Unit.parse("kg/(m2 a)"),
                ofPlant.times(level)
                        .times(density)
                        .times(planting.plantsPerArea)
                        .in(Unit.parse("kg/(m2 a)")));
        watch(rows, grams, kept, chosen.types());
    }

    /** Fruit of all plants at the level of the plan, from that of one. */
    private Formula kilograms(Formula ofPlant) {
        return ofPlant.times(level).times(planting.plantCount).in(KG);
    }

    private static Formula average(StockGrowth growth, Line turns) {
        Formula second = growth.secondCrop.times(lesser(turns.minus(one()), one()));
        Formula later = growth.laterCrops.times(greater(turns.minus(number(2, ONE)), none(ONE)));
        return when(turns.exceeds(one()), one().plus(second).plus(later).over(turns), one());
    }

    /** Fruit of a crop outside what is usual for its type of plant. */
    private void watch(ScheduleBuilder s, Line grams, Line kept, PlantTypes types) {
        Line counted = s.line(
                "crop_grams_counted",
                "Fruit a plant and crop, counted",
                GRAMS,
                grams.times(crops.ofKind(kept)).times(level).times(density));
        Line least = s.line("crop_grams_least", "Usual for its type, least", GRAMS, ofType(types.least, types));
        Line most = s.line("crop_grams_most", "Usual for its type, most", GRAMS, ofType(types.most, types));
        Formula isOutside = or(counted.exceeds(most), least.exceeds(counted));
        Formula isToldOutside = or(grams.exceeds(most), least.exceeds(grams));
        Line words = s.textLine(
                "crop_grams_words",
                "Fruit per plant, what is usual",
                when(
                        crops.key.isFilled(),
                        joined(
                                text("Fruit per plant and crop lies outside "),
                                shown(least, 0),
                                text(" to "),
                                shown(most, 0),
                                text(" g ("),
                                lookup(types.source, types.key, crops.plantType),
                                text("): check yield_factor, reference_density and density_response.")),
                        text("")));
        s.warning(
                "crop_grams_warning",
                "Fruit per plant against what is usual",
                crops.rows.grams.isPresent() ? isOutside : and(isOutside, not(isToldOutside)),
                words);
    }

    private Formula ofType(Line byType, PlantTypes types) {
        return when(crops.key.isFilled(), lookup(byType, types.key, crops.plantType), none(byType.unit()));
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
}
