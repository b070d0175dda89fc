package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.previous;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.Fact;

/**
 * Fruit held against the warmth of the house. Fruit is said to be out of reach in months before plants can have it and in months that are
 * too cold for fruit to set; fruit after a month too warm for flowering at any length of day, and nights that hurt open blossom, are
 * named. Limits and their sources are those of the profile. A month without a climate is not judged.
 */
public final class FruitWarmth {

    private static final Unit DEGREE = FirstFruit.DEGREE;
    private static final Unit KELVIN = Unit.parse("K");
    private static final Unit DAY = Unit.parse("d");
    private static final Unit PERCENT = Unit.parse("%");

    private final BudgetBuilder b;
    private final CropProfile profile;
    private final FirstFruit first;
    private final Indoors indoors;
    private final MonthPattern pattern;
    private final CropYear year;
    private final MonthList turned;
    private final MonthList calendar;
    private final ScheduleBuilder months;
    private final ScheduleBuilder single;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values; has that of heating by now
     * @param first first month with ripe fruit
     * @param pattern shares of fruit by month
     */
    public FruitWarmth(BudgetBuilder b, FarmEntries entries, FirstFruit first, MonthPattern pattern) {
        this.b = b;
        this.first = first;
        this.pattern = pattern;
        profile = entries.profile();
        indoors = first.indoors;
        year = first.grown.year();
        turned = new MonthList(b, year.name);
        calendar = new MonthList(b, year.monthName);
        single = b.schedule(Sheets.CROP, "Fruit and warmth");
        months = b.schedule(Sheets.CROP, "Fruit and warmth by month");
        Line cold = cold(entries.line("heating_use"));
        Line early = early();
        ripening();
        warm();
        frost();
        Formula tooEarly = sum(early, first.grown.crops().axis).isPositive();
        Formula space = when(and(cold.isFilled(), tooEarly), text(" "), text(""));
        single.textLine(
                "answer_warmth",
                "Fruit that is out of reach",
                joined(
                        cold,
                        space,
                        when(
                                tooEarly,
                                text("Some fruit is entered before plants can have it: see Calendar."),
                                text(""))));
    }

    /** Fruit in months that are too cold for it; answers a sentence without source or advice, a text; empty where there is none. */
    private Line cold(Line heated) {
        Formula isCold = and(
                indoors.mean().hasNumber(), first.least.exceeds(indoors.mean().numberOr(none(DEGREE))));
        Line share = months.line(
                "cold_fruit", "Fruit in a month that is too cold, share", ONE, when(isCold, pattern.chosen, none(ONE)));
        Line weighed = months.line(
                "cold_fruit_warmth",
                "That share times the mean inside",
                DEGREE,
                share.times(indoors.mean().numberOr(none(DEGREE))));
        Line names = single.textLine(
                "cold_fruit_names",
                "Months with fruit that are too cold",
                turned.of(
                        b.schedule(Sheets.CROP, "Fruit and warmth from planting on"),
                        "cold_fruit_months",
                        "Months with fruit that are too cold",
                        year.turned(share).isPositive()));
        Line all =
                single.line("cold_fruit_share", "Fruit in months that are too cold", ONE, sum(share, pattern.months));
        Line mean = single.line(
                "cold_fruit_mean",
                "Mean inside in those months, by their fruit",
                DEGREE,
                when(all.isPositive(), sum(weighed, pattern.months).over(all), none(DEGREE)));
        Line whose = single.textLine(
                "cold_fruit_whose",
                "Whose fruit that is",
                joined(
                        when(
                                heated.is("no"),
                                text("The house is not heated and cannot have its fruit of "),
                                text("The house is too cold for its fruit of ")),
                        names,
                        text(" ("),
                        shown(all.in(PERCENT), 0),
                        text(" % of the year's)")));
        Formula sentence = joined(
                whose,
                text(": it is at "),
                shown(mean, 1),
                text(" °C then, and below "),
                shown(first.least, 0),
                text(" °C less fruit sets."));
        Line brief = single.textLine(
                "answer_cold_fruit", "Fruit that is too cold, in short", when(all.isPositive(), sentence, text("")));
        single.warning(
                "cold_fruit_warning",
                "Fruit and warmth",
                all.isPositive(),
                joined(
                        brief,
                        text(" Source: " + profile.fact("fruit_set_least").source()
                                + ". Heat more, as a house_regime does, or leave those months without fruit.")));
        return brief;
    }

    /** Fruit before plants can have it; answers its share of the fruit of each crop. */
    private Line early() {
        Crops crops = first.grown.crops();
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        ScheduleBuilder blocks = b.schedule(Sheets.CROP, "Crops by month: fruit before plants can have it");
        Line share = blocks.line(
                "crop_early_fruit",
                "Fruit before plants can have it, share",
                ONE,
                when(first.isMissing(), pattern.byCrop, none(ONE)));
        Formula names = turned.of(
                b.schedule(Sheets.CROP, "Crops from planting on: fruit before plants can have it"),
                "crop_early_months",
                "Months with fruit before plants can have it",
                year.turned(share).isPositive());
        Line all = s.line("crop_early_share", "Fruit before plants can have it", ONE, sum(share, pattern.months));
        Line degreeDays = s.textLine(
                "crop_degree_days_told",
                "Degree-days to first fruit, and what to do",
                when(
                        crops.key.isFilled(),
                        joined(
                                shown(first.need, 0),
                                text(" degree-days above "),
                                shown(first.base, 1),
                                text(" °C ("),
                                first.source,
                                text("). Plant earlier, heat more,")),
                        text("")));
        Line heat = s.textLine(
                "crop_heat_told",
                "What first fruit takes, and what to do",
                when(
                        first.byWeeks.isPositive(),
                        joined(shown(first.byWeeks, 0), text(" weeks, as entered. Plant earlier,")),
                        degreeDays));
        Formula since = when(first.isNever(), text(" within a year"), joined(text(" before "), first.month));
        s.warning(
                "crop_early_warning",
                "Fruit before plants can have it",
                all.isPositive(),
                joined(
                        text("Fruit is entered for "),
                        names,
                        text(", but plants set in "),
                        crops.planting,
                        text(" have none"),
                        since,
                        text(": they take "),
                        heat,
                        text(" or leave those months without fruit.")));
        return all;
    }

    /** How long a flower takes to ripe fruit at the mean of each month. */
    private void ripening() {
        Fact flower = profile.fact("flower_to_ripe");
        Formula mean = indoors.mean().numberOr(none(DEGREE));
        months.line(
                "flower_to_ripe_days",
                "From flower to ripe fruit",
                DAY,
                onlyWhen(
                        mean.isPositive(),
                        number(flower.in(FirstFruit.DEGREE_DAYS), FirstFruit.DEGREE_DAYS)
                                .over(mean.counting(KELVIN)),
                        "too cold"),
                flower.source());
    }

    /** Fruit after a month in which flowering hangs on the length of the day; how long before fruit that counts, our choice, no source. */
    private void warm() {
        Crops crops = first.grown.crops();
        Line flowering = months.line(
                "flower_warmth",
                "Mean of the month before",
                DEGREE,
                previous(indoors.mean(), new Element(indoors.mean(), pattern.months, pattern.months.size() - 1)));
        ScheduleBuilder s = b.shared(Sheets.CROP, Tables.CROPS);
        PlantTypes types = first.grown.types();
        Line limit = s.line(
                "crop_flower_limit",
                "Flowers at any length of day up to",
                DEGREE,
                crops.rows.whereFilled(lookup(types.flowerLimit, types.key, crops.plantType)));
        Formula isWarm = and(
                pattern.byCrop.isPositive(), flowering.numberOr(none(DEGREE)).exceeds(limit), limit.isPositive());
        Line names = s.textLine(
                "crop_warm_names",
                "Months with fruit after a month that is too warm",
                calendar.of(
                        b.schedule(Sheets.CROP, "Crops by month: fruit after warmth"),
                        "crop_warm_months",
                        "Months with fruit after a month that is too warm",
                        isWarm));
        s.warning(
                "crop_warm_warning",
                "Flowering and warmth",
                names.isFilled(),
                joined(
                        text("Fruit of "),
                        names,
                        text(" follows a month that is warmer than "),
                        shown(limit, 0),
                        text(" °C on the mean: above that these plants flower by the length of the day ("),
                        lookup(types.limitSource, types.key, crops.plantType),
                        text("). Cool or shade, or count on less fruit.")));
    }

    /** Nights in months of fruit that hurt open blossom. */
    private void frost() {
        Fact some = profile.fact("blossom_frost");
        Line hurt = single.line(
                "blossom_frost", "Open blossom is hurt below", DEGREE, number(some.in(DEGREE), DEGREE), some.source());
        Fact much = profile.fact("blossom_frost_considerable");
        Line lost = single.line(
                "blossom_frost_considerable",
                "Open blossom is hurt considerably below",
                DEGREE,
                number(much.in(DEGREE), DEGREE),
                much.source());
        Formula isFrost = and(
                pattern.chosen.isPositive(),
                indoors.night().hasNumber(),
                hurt.exceeds(indoors.night().numberOr(none(DEGREE))));
        Line names = single.textLine(
                "frost_fruit_names",
                "Months with fruit and frost",
                calendar.of(months, "frost_fruit_months", "Months with fruit and frost", isFrost));
        Line told = single.textLine(
                "blossom_frost_told",
                "What frost does to open blossom",
                joined(
                        text(": open blossom is hurt, and considerably below "),
                        shown(lost, 1),
                        text(" °C (" + some.source() + "). ")));
        single.warning(
                "frost_fruit_warning",
                "Blossom and frost",
                names.isFilled(),
                joined(
                        text("Nights of "),
                        names,
                        text(" are below "),
                        shown(hurt, 1),
                        text(" °C inside on the mean"),
                        told,
                        text("Keep the house free of frost, or leave those months without fruit.")));
    }
}
