package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;

/**
 * Evenness over whole pulses, with what drains from the lines between them.
 *
 * <pre>
 * EUp = EU (1 - D)
 * EUp  emission uniformity over whole pulses, at most, %     EU  emission uniformity while the lines run full, %
 * D    drained after shut-off, share of all water of a pulse
 * </pre>
 *
 * A mass-balance bound derived here, not published: of all water of a pulse the share 1 - D runs while the lines are full, of which
 * the plants that get least have EU times the mean; where what drains reaches none of them, they have no more. It turns into EU as
 * pulses get long, and is EU with check valves. Where some of it reaches them, they are better off than is counted.
 */
final class PulsedEvenness {

    /** Emission uniformity over whole pulses, at most, %. */
    final Line uniformity;

    PulsedEvenness(BudgetBuilder b, BenchEvenness even, StoredWater stored) {
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "How evenly whole pulses water");
        s.note(
                "A mass-balance bound derived here, not published: as if nothing of what drains between pulses reached the plants that "
                        + "get least. It turns into the emission uniformity of lines that run full as pulses get long.");
        uniformity = s.line(
                "way_pulsed_uniformity",
                "Emission uniformity over whole pulses, at most",
                Evenness.PERCENT,
                even.uniformity.times(one().minus(stored.drainedShare.in(ONE))),
                "EU (1 - share that drains after shut-off): a mass-balance bound derived here, not published");
    }
}
