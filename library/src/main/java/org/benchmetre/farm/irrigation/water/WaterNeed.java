package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.yearOf;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.Fact;

/**
 * Water the plants keep, by month: taken up and transpired, not what is given to them. Need of a month = plants x need a plant and
 * day x days of the month x share of the month in crop. Plain counting.
 */
public final class WaterNeed {

    /** Water kept, mL/(plant d), by month, on a day in crop. */
    public final Line perPlant;
    /** Share of benches in crop in each month, 0 to 1. */
    final Line cropShare;
    /** Water kept by the house, m3/mo, by month. */
    public final Line byMonth;
    /** Water kept by the house, m3/a. */
    public final Line year;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param profile what is documented of the crop
     * @param months days and the file of months
     * @param planting plants
     * @param inCrop share of benches in crop in each month
     */
    public WaterNeed(BudgetBuilder b, CropProfile profile, Months months, Planting planting, Line inCrop) {
        cropShare = inCrop;
        Fact given = profile.fact("most_water_given");
        Unit perPlantDay = Unit.parse("mL/(plant d)");
        Unit perMonth = Unit.parse("m3/mo");
        Unit perYear = Unit.parse("m3/a");
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.MONTHS);
        s.note("What plants take up, before drain and before any allowance for uneven watering.");
        perPlant = months.numbers(
                s,
                "water_need",
                "month_need_per_plant",
                "Water kept, a plant and day",
                perPlantDay,
                new Bounds(0, true, 5000, false));
        byMonth = s.line(
                "month_water_need",
                "Water kept by the house",
                perMonth,
                perPlant.times(planting.plantCount)
                        .times(months.days)
                        .times(cropShare)
                        .in(perMonth));
        ScheduleBuilder single = b.schedule(Sheets.OPERATIONS, "Water the plants keep in a year");
        Line most = single.line(
                "most_water_published",
                "Most water published as given to a plant",
                perPlantDay,
                number(given.in(perPlantDay), perPlantDay),
                given.source());
        s.warning(
                "month_need_warning",
                "Water kept against the published range",
                perPlant.exceeds(most),
                "Plants are said to keep more than the " + Numbers.shown(given.in(perPlantDay))
                        + " mL a plant and day that is the most published as given to them (" + given.source()
                        + "): check the unit of water_need in months.csv, which is mL, and lower it.");
        year = single.line("year_water_need", "Water kept by the house, a year", perYear, yearOf(byMonth, months.axis));
    }
}
