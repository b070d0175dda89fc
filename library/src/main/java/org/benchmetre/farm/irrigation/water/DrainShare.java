package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * How much of the water given is meant to drain, and what a drain tray says of it. Drain fraction = drain over water given
 * (University of Florida, IFAS Extension publication HS1268, cited as ENH1268). A measurement is shown beside the plan and warns;
 * it does not replace the plan.
 */
public final class DrainShare {

    static final String BOTH = "both";
    static final String LARGER = "larger";

    private static final String NOT_MEASURED = "0 stands for not measured";

    /** Share of the water given that is meant to drain, 0 to 0.9. */
    public final Line planned;
    /** How drain and uneven watering combine: {@code larger} or {@code both}. */
    public final Line rule;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     */
    public DrainShare(BudgetBuilder b, FarmEntries entries) {
        Unit depth = Unit.parse("L/m2");
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Drain");
        s.note("Leave the measured amounts at 0 when no drain tray has been read.");
        planned = entries.add(s.entry("drain_fraction", "Share of the water given that drains", ONE)
                .from(0, 0.9));
        rule = entries.add(s.textEntry("uniformity_rule", "Drain and uneven outlets: the larger, or both multiplied")
                .oneOf(List.of(LARGER, BOTH)));
        Line given = entries.add(
                s.entry("applied_measured", "Measured: water given", depth).from(0, 100_000));
        Line drain = entries.add(
                s.entry("drain_measured", "Measured: drain of it", depth).from(0, 100_000));
        s.line(
                "drain_measured_share",
                "Measured: share that drains",
                ONE,
                onlyWhen(given.isPositive(), drain.over(given), "not measured"),
                "drain over water given");
        s.warning(
                "drain_measured_warning",
                "Drain as measured",
                drain.exceeds(given),
                "More drain was measured than water given: read the tray again or correct drain_measured and "
                        + "applied_measured.");
        Formula measured = when(given.isPositive(), drain.over(given), planned);
        s.warning(
                "drain_short_warning",
                "Drain as planned",
                and(given.isPositive(), planned.exceeds(measured)),
                "Less drains than planned, and salt may build up in the root zone: water more often, or lower "
                        + "drain_fraction if that is meant.");
    }
}
