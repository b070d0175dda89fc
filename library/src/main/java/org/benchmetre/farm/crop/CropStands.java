package org.benchmetre.farm.crop;

import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Months in which each crop stands on the benches: from that of planting to that of clearing out, each of which counts half. Benches in
 * crop follow from that where crops are listed, otherwise they are as entered by month. Plain counting.
 */
public final class CropStands {

    /** Share of a month that is over when plants are set or cleared: in its middle. */
    static final double HALF = 0.5;

    private static final Unit CROPS = Unit.parse("crop/a");

    /** Months after planting, by crop and month. */
    final Line after;
    /** Share of each month in which each crop stands, by crop and month. */
    public final Line standing;
    /** Share of benches in crop, by month. */
    public final Line inCrop;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param months the months
     * @param grown the crops of a year and the months of the calendar
     */
    public CropStands(BudgetBuilder b, Months months, CropPlants grown) {
        Crops crops = grown.crops();
        CropYear year = grown.year();
        ScheduleBuilder blocks =
                b.schedule(Sheets.CROP, "Crops by month: months after planting, and share of the month in crop");
        Formula twelve = number(Months.IN_A_YEAR, ONE);
        Line from = crops.plantingNumber;
        Line span = b.shared(Sheets.CROP, Tables.CROPS)
                .line(
                        "crop_span",
                        "Months from planting to clearing",
                        ONE,
                        crops.clearOutNumber
                                .minus(from)
                                .plus(when(crops.clearOutNumber.exceeds(from), none(ONE), twelve)),
                        Months.COUNTING);
        after = blocks.line(
                "crop_months_after",
                "Months after planting",
                ONE,
                crops.rows.whereFilled(
                        year.monthNumber.minus(from).plus(when(from.exceeds(year.monthNumber), twelve, none(ONE)))),
                Months.COUNTING);
        Formula edge = or(not(after.isPositive()), not(span.exceeds(after)));
        Formula whole = when(edge, number(HALF, ONE), one());
        standing = blocks.line(
                "crop_standing",
                "Share of the month in crop",
                ONE,
                crops.rows.whereFilled(when(after.exceeds(span), none(ONE), whole)),
                "planted and cleared in the middle of the month: a choice of this project, no source");
        inCrop = FarmTable.CROPS.hasRows(b.structure()) ? ofCrops(b, crops) : entered(b, months);
    }

    private static Line entered(BudgetBuilder b, Months months) {
        return months.numbers(
                b.shared(Sheets.OPERATIONS, Tables.MONTHS),
                "crop_share",
                "month_crop_share",
                "Share of the month in crop",
                ONE,
                new Bounds(0, true, 1, false));
    }

    private Line ofCrops(BudgetBuilder b, Crops crops) {
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.MONTHS);
        Line all = s.line(
                "month_benches_taken",
                "Benches that crops stand on, share",
                ONE,
                sumProduct(standing, crops.perYear, crops.axis).over(number(1, CROPS)));
        s.warning(
                "month_benches_warning",
                "Benches",
                all.exceeds(one()),
                "Crops stand on more benches than there are in this month: lower bench_share, or change planting_month or "
                        + "clear_out_month in crops.csv.");
        return s.line("month_crop_share", "Share of benches in crop", ONE, lesser(all, one()));
    }
}
