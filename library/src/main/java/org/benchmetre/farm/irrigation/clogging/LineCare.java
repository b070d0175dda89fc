package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.layout.House;

/**
 * Care that keeps outlets open: checks, flushing, new outlets, acid. Where failed outlets are replaced at the check, every outlet is
 * looked at; where they stay for life, every plant. Outlets found failed at a check are those that failed since the last one: all
 * outlets times their failed share, over the time between checks; where they stay for life one is mended for each plant that falls
 * dry. Lines are flushed one by one at their ends. Common practice, no source.
 */
public final class LineCare {

    private static final Unit HOURS_A_YEAR = Unit.parse("h/a");
    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");
    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Unit OUTLETS_A_YEAR = Unit.parse("outlet/a");
    private static final Unit MONEY_AN_OUTLET = Unit.parse("money/outlet");

    /** Hours of checking in a year, h/a, by way. */
    public final Line checkHours;
    /** Hours of care in a year, h/a, by way. */
    public final Line careHours;
    /** Outlets replaced in a year, outlet/a, by way. */
    public final Line replaced;
    /** Price of a new outlet as entered, 0 where that of the part counts, money/outlet, by way. */
    public final Line givenPrice;
    /** Acid treatment in a year, whatever the way, money/a. */
    public final Line treatment;
    /** Cost of care in a year, money/a, by way. */
    public final Line careCost;

    private final FarmEntries entries;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param ways irrigation systems
     * @param dry plants that fall dry
     * @param wage wage of whoever cares for the lines
     */
    public LineCare(BudgetBuilder b, FarmEntries entries, Ways ways, DryPlants dry, Line wage) {
        this.entries = entries;
        FailedOutlets failed = dry.failed;
        House house = ways.house;
        ScheduleBuilder e = b.schedule(Sheets.IRRIGATION, "Irrigation maintenance");
        e.note(
                "Acid burns, and with chlorine products it gives off poisonous gas: never let the two meet. It goes in only "
                        + "behind the backflow prevention that the local code asks for, by those trained to handle it.");
        Line outletRate = asked(e, "outlet_check_rate", "Outlets looked at in an hour", "outlet/h");
        Line plantRate = asked(e, "plant_check_rate", "Plants walked past in an hour", "plant/h");
        Line flushHours = asked(e, "flush_hours", "Hours to flush one line", "h/line");
        Line flushes = asked(e, "flushes_per_year", "Flushes in a year", "1/a");
        Line newHours = asked(e, "outlet_replace_hours", "Hours to replace an outlet", "h/outlet");
        Line treatmentCost =
                entries.add(e.entry("acid_treatment_cost", "Cost of an acid treatment, product and labour", MONEY)
                        .from(0, 1_000_000));
        Line treatments = asked(e, "treatments_per_year", "Acid treatments in a year", "1/a");
        Line checks = e.line(
                "checks_per_year",
                "Checks in a year",
                PER_YEAR,
                number(1, Unit.ONE).over(failed.checkInterval).in(PER_YEAR));
        treatment = e.line("treatment_cost", "Acid treatment", MONEY_A_YEAR, treatmentCost.times(treatments));

        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Irrigation maintenance, by irrigation system");
        givenPrice = ways.columns
                .in(s)
                .numbers(
                        "outlet_replace_cost",
                        "way_outlet_replace_cost",
                        "Price of a new outlet, if not that of the part",
                        MONEY_AN_OUTLET,
                        Columns.NOT_NEGATIVE,
                        0);
        checkHours = s.line(
                "way_check_hours",
                "Checking",
                HOURS_A_YEAR,
                ways.whereFilled(when(
                        failed.repair.is(FailedOutlets.FOR_LIFE),
                        ways.planting.plantCount.over(plantRate).times(checks).in(HOURS_A_YEAR),
                        ways.outletCount.over(outletRate).times(checks).in(HOURS_A_YEAR))));
        Line flushing = s.line(
                "way_flush_hours",
                "Flushing",
                HOURS_A_YEAR,
                ways.lines
                        .times(house.benchCount)
                        .counting(Unit.parse("line"))
                        .times(flushHours)
                        .times(flushes));
        replaced = s.line(
                "way_outlets_replaced",
                "Outlets replaced",
                OUTLETS_A_YEAR,
                ways.whereFilled(when(
                        failed.repair.is(FailedOutlets.FOR_LIFE),
                        dry.dryPlants.counting(OUTLETS_A_YEAR),
                        ways.outletCount.times(failed.failedAtEnd).over(failed.years))));
        Line replacing = s.line("way_replace_hours", "Replacing outlets", HOURS_A_YEAR, replaced.times(newHours));
        careHours = s.line(
                "way_care_hours",
                "Irrigation maintenance in all",
                HOURS_A_YEAR,
                checkHours.plus(flushing).plus(replacing));
        Line price = s.line(
                "way_new_outlet_price",
                "Price of a new outlet counted",
                MONEY_AN_OUTLET,
                when(givenPrice.isPositive(), givenPrice, ofThePart(failed)),
                "a blank takes the delivered price of one unit of the part, such as an emitter or a metre");
        Line newOutlets = s.line("way_new_outlets_cost", "New outlets", MONEY_A_YEAR, replaced.times(price));
        careCost = s.line(
                "way_care_cost",
                "Irrigation maintenance",
                MONEY_A_YEAR,
                ways.whereFilled(careHours.times(wage).plus(newOutlets).plus(treatment)));
    }

    private Line asked(ScheduleBuilder s, String id, String label, String unit) {
        boolean rate = unit.endsWith("/h");
        Unit of = Unit.parse(unit);
        return entries.add(
                (rate
                        ? s.entry(id, label, of).above(0, 1e6)
                        : s.entry(id, label, of).from(0, 1e6)));
    }

    private static Formula ofThePart(FailedOutlets failed) {
        Formula found = lookup(failed.parts.unitCost(), failed.parts.key(), failed.outletItem)
                .counting(MONEY_AN_OUTLET);
        return when(failed.itemsFound.isPositive(), found, none(MONEY_AN_OUTLET));
    }
}
