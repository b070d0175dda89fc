package org.benchmetre.farm.layout;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.PLANT;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Planting: whole plants per bench from the spacing between neighbours along the trough. Staggered plants are one row whose
 * neighbours stand on alternate sides, so that the spacing on one side is twice that; two rows each keep the spacing. In each row
 * {@code wholeDown((length - 2 margin) / spacing) + 1} plants fit, and none where the bench is shorter than its margins. Plain
 * geometry; money uses the whole plants.
 */
public final class Planting {

    private static final String STAGGERED = "staggered";
    private static final String TWO_ROW = "two_row";

    /** Plants on one bench, a whole number. */
    public final Line plantsPerBench;
    /** Plants for each metre of bench, plant/m. */
    public final Line plantsPerMetre;
    /** Plants in the house. */
    public final Line plantCount;
    /** Plants for each square metre of floor, plant/m2. */
    public final Line plantsPerArea;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param house benches
     * @param containers what stands in place of a trough
     */
    public Planting(BudgetBuilder b, FarmEntries entries, House house, Containers containers) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Planting");
        Line pattern =
                entries.add(s.textEntry("planting_pattern", "Planting pattern").oneOf(List.of(STAGGERED, TWO_ROW)));
        Line spacing = entries.add(s.entry("plant_spacing", "Spacing between neighbours along the trough", METRE)
                .from(0.02, 2));
        Line rows = s.line(
                "rows_per_bench",
                "Rows of plants on a bench",
                ONE,
                when(pattern.is(TWO_ROW), number(2, ONE), one()),
                "two where the pattern is two_row");
        Formula inTrough = when(
                house.benchMargins.exceeds(house.benchLength),
                none(PLANT),
                rows.times(house.benchRoom.over(spacing).wholeDown().plus(one()))
                        .counting(PLANT));
        plantsPerBench = s.line("plants_per_bench", "Plants on a bench", PLANT, containers.plantsOr(inTrough));
        plantsPerMetre = s.line(
                "plants_per_metre",
                "Plants per metre of bench",
                Unit.parse("plant/m"),
                plantsPerBench.over(house.benchLength));
        plantCount = s.line(
                "plant_count", "Plants", PLANT, house.benchCount.counting(ONE).times(plantsPerBench));
        Unit perArea = Unit.parse("plant/m2");
        plantsPerArea = s.line("plants_per_area", "Plants per m² of floor", perArea, plantCount.over(house.houseArea));
        s.warning(
                "plants_per_bench_warning",
                "Plants on a bench",
                not(plantsPerBench.isPositive()),
                "No plant stands on a bench: it is shorter than its two margins, or has no room for a container. Raise "
                        + "bench_length, or lower end_margin or container_pitch.");
    }

    /**
     * What each plant of the house has of a total.
     *
     * @param total of the house
     * @return total over plants; nothing where there are no plants
     */
    public Formula each(Formula total) {
        return shared(total, plantCount);
    }

    /**
     * What each plant of a bench has of an amount.
     *
     * @param amount of a bench
     * @return amount over plants; nothing where there are no plants
     */
    public Formula eachOnABench(Formula amount) {
        return shared(amount, plantsPerBench);
    }

    private static Formula shared(Formula amount, Line plants) {
        return when(plants.isPositive(), amount.over(plants), none(amount.unit().over(PLANT)));
    }
}
