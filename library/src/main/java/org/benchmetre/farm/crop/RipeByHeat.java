package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.profile.Fact;
import org.benchmetre.scenario.WordChoice;

/**
 * Fruit by month made from warmth, where {@code fruit_months} is {@code by_heat}: in proportion to how far fruit ripens in each month
 * from first fruit to clearing out that is warm enough for fruit to set. Warmth makes fruit smaller.
 *
 * <pre>
 * R = f T d s / 600     share = R / sum R     factor = 1 - c max(Tf - Tc, 0), nothing where no fruit ripens
 * R  flushes that ripen in a month     f  share of the month after first fruit     T  mean inside, degC     d  days, d/mo
 * s  share of the month in crop        600  degree-days above 0 degC from flower to ripe fruit
 * Tf  mean inside by share of fruit, degC     Tc  warmth that fruit per plant holds for, degC     c  lost for each kelvin, 1/K
 * </pre>
 *
 * The profile of the crop says where the numbers come from; fruit in proportion to ripening: a choice of this project, no source.
 */
public final class RipeByHeat {

    /** The row of single values that says where months of fruit come from. */
    public static final String CHOICE = "fruit_months";

    private static final String ENTERED = "entered";
    private static final String BY_HEAT = "by_heat";
    private static final Unit DEGREE = FirstFruit.DEGREE;
    private static final Unit DEGREE_DAYS = FirstFruit.DEGREE_DAYS;
    private static final String PROPORTION = "in proportion to ripening: a choice of this project, no source; ";

    /** Months of fruit as entered, or made from warmth. */
    public static final WordChoice WORDS = new WordChoice(CHOICE, List.of(ENTERED, BY_HEAT), ENTERED, "");

    /** The lever that moves months of fruit as well, and so more than a table of steps has room for. */
    public static final WordChoice.Barred MOVED = new WordChoice.Barred("set_point_shift", CHOICE, BY_HEAT);

    /** Share of a crop's fruit, by crop and month. */
    final Formula share;
    /** Fruit per plant against that told, by crop. */
    final Line factor;

    private RipeByHeat(BudgetBuilder b, FarmEntries entries, Months months, FirstFruit first) {
        Fact flower = entries.profile().fact("flower_to_ripe");
        Fact holds = entries.profile().fact("fruit_weight_mean");
        ScheduleBuilder single = b.schedule(Sheets.CROP, "Fruit by warmth");
        Line ripe = single.line(
                "flower_to_ripe",
                "Degree-days from flower to ripe fruit",
                DEGREE_DAYS,
                number(flower.in(DEGREE_DAYS), DEGREE_DAYS),
                flower.source());
        Line cool = single.line(
                "fruit_weight_mean",
                "Warmth that fruit per plant holds for",
                DEGREE,
                number(holds.in(DEGREE), DEGREE),
                holds.source());
        Formula mean = first.indoors.mean().numberOr(none(DEGREE));
        Line counted = b.schedule(Sheets.CROP, "Fruit by warmth by month")
                .line("ripening_mean", "Mean inside that fruit ripens in", DEGREE, greater(mean, none(DEGREE)));
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Crops by month: fruit that ripens");
        Formula after = when(
                first.degreeDays.isPositive(),
                lesser(greater(none(DEGREE_DAYS).minus(first.left).over(first.degreeDays), none(ONE)), one()),
                none(ONE));
        Formula inCrop = when(first.stands.inCrop.isPositive(), first.stands.standing, none(ONE));
        Formula days = counted.times(months.days).times(inCrop).counting(DEGREE_DAYS);
        Line flushes = blocks.line(
                "crop_flushes",
                "Flushes that ripen",
                ONE,
                when(first.least.exceeds(mean), none(ONE), after.times(days).over(ripe)),
                PROPORTION + flower.source());
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        Line all = s.line("crop_flushes_all", "Flushes of fruit that ripen", ONE, sum(flushes, months.axis));
        share = when(all.isPositive(), flushes.over(all), none(ONE));
        Line warmth = s.line(
                "crop_fruit_mean",
                "Mean inside, by fruit",
                DEGREE,
                when(all.isPositive(), sumProduct(flushes, counted, months.axis).over(all), none(DEGREE)));
        Formula lost = first.smaller.times(greater(warmth.minus(cool), none(DEGREE)));
        factor = s.line(
                "crop_warmth_factor",
                "Fruit per plant by warmth",
                ONE,
                when(all.isPositive(), greater(one().minus(lost), none(ONE)), none(ONE)),
                entries.profile().needed("warmth_fruit_lost").source());
        s.warning(
                "crop_no_warmth_warning",
                "Fruit by warmth",
                and(first.grown.crops().key.isFilled(), not(all.isPositive())),
                "No fruit ripens in this crop: no month after first fruit is warm enough. Heat more, plant earlier, or enter the "
                        + "climate.");
    }

    /**
     * Fruit by warmth, where that is chosen.
     *
     * @param b where schedules are added; knows what is chosen
     * @param entries gives entries their values
     * @param months the months
     * @param first first month with ripe fruit
     * @return nothing where months of fruit are entered
     */
    static Optional<RipeByHeat> of(BudgetBuilder b, FarmEntries entries, Months months, FirstFruit first) {
        return isChosen(b) ? Optional.of(new RipeByHeat(b, entries, months, first)) : Optional.empty();
    }

    /**
     * Whether an entry moves months of fruit of their own accord.
     *
     * @param b knows what is chosen
     * @param entry its name
     * @return false where months of fruit are entered
     */
    public static boolean moves(BudgetBuilder b, String entry) {
        return isChosen(b) && entry.equals(MOVED.word());
    }

    private static boolean isChosen(BudgetBuilder b) {
        return BY_HEAT.equals(b.structure().choices().get(CHOICE));
    }
}
