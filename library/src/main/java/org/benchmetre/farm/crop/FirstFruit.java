package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.countPositive;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.profile.Fact;

/**
 * The first month in which each crop can have ripe fruit: that in which degree-days since planting reach the heat sum of its plant stock,
 * or else of its type of plant. Plants that stay from another crop wait for none. Where a month has no climate nothing is known.
 *
 * <pre>
 * D = max(T - T0, 0) d s     left = S - sum of D since planting
 * T  mean inside, degC     T0  heat counts above, degC     d  days, d/mo     s  share of the month in crop     S  heat sum, K d
 * </pre>
 *
 * Le Miere, Hadley, Darby, Battey, Journal of Horticultural Science and Biotechnology 73(6):786-795, 1998.
 */
public final class FirstFruit {

    static final Unit DEGREE_DAYS = Unit.parse("K d");
    static final Unit DEGREE = Unit.parse("degC");
    private static final Unit WEEK = Unit.parse("wk");
    private static final Unit MONTH = Unit.parse("mo");

    /** Heat sum from planting to first ripe fruit, K d, by crop; that of flower to ripe fruit where plants stay from another crop. */
    final Line need;
    /** Where that sum comes from, a text, by crop. */
    final Line source;
    /** Weeks from planting to first ripe fruit as entered, wk, by crop; 0 where heat decides. */
    final Line byWeeks;
    /** Heat counts above, degC, by crop. */
    final Line base;
    /** Degree-days of each month, K d, by crop and month. */
    final Line degreeDays;
    /** Degree-days still missing at the end of each month, K d, by crop and month; below zero after first fruit. */
    final Line left;
    /** Fruit per plant lost for each kelvin warmer, 1/K, an entry that counts where months of fruit follow from warmth. */
    final Line smaller;
    /** First month with ripe fruit by name, a text, by crop. */
    public final Line month;
    /** Mean of a month below which fruit hardly sets, degC, an entry. */
    final Line least;

    private final Line never;
    /** The plants of the crops. */
    final CropPlants grown;
    /** Months in which each crop stands. */
    final CropStands stands;
    /** How warm it is. */
    final Indoors indoors;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months the months
     * @param grown the plants of the crops
     * @param stands months in which each crop stands
     * @param indoors how warm it is
     */
    public FirstFruit(
            BudgetBuilder b, FarmEntries entries, Months months, CropPlants grown, CropStands stands, Indoors indoors) {
        this.stands = stands;
        this.grown = grown;
        this.indoors = indoors;
        ScheduleBuilder limits = b.schedule(Sheets.CROP, "Fruit and warmth: limits");
        least = entries.add(limits.entry("fruit_mean_least", "Mean of a month below which less fruit sets", DEGREE)
                .from(-20, 40));
        smaller = entries.add(limits.entry(
                        "warmth_fruit_lost",
                        "Fruit per plant lost for each kelvin warmer, where months of fruit follow from warmth",
                        Unit.parse("1/K"))
                .from(0, 0.5));
        Fact flower = entries.profile().fact("flower_to_ripe");
        Crops crops = grown.crops();
        CropRows rows = crops.rows;
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        Line own = s.line(
                "crop_own_heat_sum",
                "Heat to first fruit of its plant stock",
                DEGREE_DAYS,
                crops.ofKind(grown.growth().heatSum));
        source = s.textLine(
                "crop_heat_source",
                "Source of that heat",
                when(
                        crops.newShare.isPositive(),
                        when(
                                own.isPositive(),
                                text("heat_sum of its plant stock"),
                                lookup(grown.types().heatSource, grown.types().key, crops.plantType)),
                        when(crops.key.isFilled(), text("from open flower to ripe fruit"), text(""))));
        need = s.line(
                "crop_heat_sum",
                "Heat from planting to first fruit",
                DEGREE_DAYS,
                rows.whereFilled(when(
                        crops.newShare.isPositive(),
                        when(own.isPositive(), own, ofType(grown.types().heatSum)),
                        number(flower.in(DEGREE_DAYS), DEGREE_DAYS))),
                "plants that stay take as long as a flower to ripe fruit: " + flower.source());
        base = s.line(
                "crop_heat_base",
                "Heat counts above",
                DEGREE,
                rows.whereFilled(when(
                        crops.newShare.isPositive(),
                        when(own.isPositive(), crops.ofKind(grown.growth().heatBase), ofType(grown.types().heatBase)),
                        none(DEGREE))));
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Crops by month: heat from planting to first fruit");
        Formula above = greater(indoors.mean().numberOr(none(DEGREE)).minus(base), none(DEGREE));
        degreeDays = blocks.line(
                "crop_degree_days",
                "Degree-days in crop",
                DEGREE_DAYS,
                rows.whereFilled(above.times(months.days).times(stands.standing).counting(DEGREE_DAYS)));
        Line soFar = blocks.declare(
                "crop_degree_days_so_far",
                "Since January",
                DEGREE_DAYS,
                Kind.NUMBER,
                List.of(crops.axis, months.axis),
                "");
        b.define(soFar, previous(soFar, none(DEGREE_DAYS)).plus(degreeDays));
        Line all = s.line("crop_degree_days_all", "Degree-days of a year", DEGREE_DAYS, sum(degreeDays, months.axis));
        Line before = s.line(
                "crop_degree_days_before",
                "Those from January to planting",
                DEGREE_DAYS,
                when(crops.key.isFilled(), atPlanting(soFar).minus(atPlanting(degreeDays)), none(DEGREE_DAYS)));
        Formula turn = when(crops.plantingNumber.exceeds(grown.year().monthNumber), all, none(DEGREE_DAYS));
        byWeeks = s.line(
                "crop_weeks_to_fruit",
                "To first fruit, as entered",
                WEEK,
                rows.whereFilled(
                        when(crops.newShare.isPositive(), crops.ofKind(grown.growth().weeksEntered), none(WEEK))));
        left = blocks.line(
                "crop_heat_left",
                "Still missing to first fruit, at the end of the month",
                DEGREE_DAYS,
                rows.whereFilled(when(
                        byWeeks.isPositive(),
                        ofWeeks(byWeeks),
                        need.minus(soFar).plus(before).minus(turn))),
                "where weeks to first fruit are entered, months still to wait times the degree-days of the month");
        Line wait = s.line(
                "crop_months_to_fruit",
                "Months after planting to first fruit; 12 for none",
                ONE,
                countPositive(left, months.axis));
        never = s.line(
                "crop_fruit_never",
                "No ripe fruit within a year, 1 or 0",
                ONE,
                when(wait.exceeds(number(Months.IN_A_YEAR - 1, ONE)), one(), none(ONE)),
                Months.COUNTING);
        Formula counted = crops.plantingNumber.plus(wait);
        Line first = s.line(
                "crop_first_fruit_number",
                "First fruit in, its number",
                ONE,
                counted.minus(
                        when(counted.exceeds(number(Months.IN_A_YEAR, ONE)), number(Months.IN_A_YEAR, ONE), none(ONE))),
                Months.COUNTING);
        month = s.textLine("crop_first_fruit", "First fruit can be ripe in", named(first));
    }

    private Formula named(Line first) {
        Formula some = when(isNever(), text("never"), grown.year().named(first));
        Formula known = when(indoors.unknown().isPositive(), text("no climate"), some);
        return when(grown.crops().key.isFilled(), known, text(""));
    }

    /** Whether a crop has no ripe fruit within a year. */
    Formula isNever() {
        return never.isPositive();
    }

    /** Whether climates of all months are known and degree-days are missing, by crop and month. */
    Formula isMissing() {
        return when(indoors.unknown().isPositive(), none(DEGREE_DAYS), left).exceeds(none(DEGREE_DAYS));
    }

    private Formula atPlanting(Line byMonth) {
        return lookup(byMonth, grown.year().monthName, grown.crops().planting);
    }

    /** A figure of the type of each crop; guard spare rows. */
    private Formula ofType(Line byType) {
        return lookup(byType, grown.types().key, grown.crops().plantType);
    }

    /** Below zero from the month in which the weeks are over, planted in the middle of a month. */
    private Formula ofWeeks(Line weeks) {
        Formula months = weeks.in(MONTH).counting(ONE).minus(stands.after).minus(number(CropStands.HALF, ONE));
        return months.times(greater(degreeDays, number(1, DEGREE_DAYS)));
    }
}
