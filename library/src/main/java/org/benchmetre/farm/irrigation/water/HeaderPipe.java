package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.MILLIMETRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.PipeLoss;

/**
 * Friction of the header from pump to far bench, by {@link PipeLoss}. The whole flow of the zone is taken to run the whole length,
 * which is on the safe side: benches along the way take their share off.
 */
public final class HeaderPipe {

    /** Pipe from the pump to the far bench, m. */
    public final Line length;
    /** Pressure lost, kPa, by way. */
    public final Line loss;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param zoneFlow flow of the largest zone in L/h, by way
     * @param h viscosity of the water and limit of velocity
     */
    public HeaderPipe(BudgetBuilder b, FarmEntries entries, Line zoneFlow, Hydraulics h) {
        Unit speed = Unit.parse("m/s");
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Header");
        length = entries.add(s.entry("header_length", "Pipe from pump to the far bench", METRE)
                .from(0, 10_000));
        Line diameter = entries.add(s.entry("header_diameter", "Inner diameter of that pipe", MILLIMETRE)
                .above(0, 2000));

        ScheduleBuilder ways = b.shared(Sheets.IRRIGATION, Tables.ZONES_AND_PUMP);
        Line velocity = ways.line(
                "way_header_velocity",
                "Velocity in the header",
                speed,
                PipeLoss.velocity(zoneFlow, diameter),
                "flow over the open area pi d²/4 of the pipe");
        Line reynolds = ways.line(
                "way_header_reynolds",
                "Reynolds number of the header",
                ONE,
                PipeLoss.reynolds(velocity, diameter, h.viscosity),
                "velocity x inner diameter / kinematic viscosity");
        Line factor = ways.line(
                "way_header_friction",
                "Friction factor of the header",
                ONE,
                PipeLoss.factor(reynolds),
                "larger of 64/Re and 0.3164 Re^-0.25 (Blasius, 1913)");
        loss = ways.line(
                "way_header_loss",
                "Friction of the header",
                Unit.parse("kPa"),
                PipeLoss.pressure(factor, length, diameter, velocity),
                "Darcy and Weisbach, the whole flow over the whole length");
        ways.warning(
                "way_header_warning",
                "Velocity in the header",
                velocity.exceeds(h.velocityLimit),
                "Water in the header runs faster than velocity_limit, usually 1.5 m/s: raise header_diameter, or raise "
                        + "zone_count so that fewer benches run at once.");
    }
}
