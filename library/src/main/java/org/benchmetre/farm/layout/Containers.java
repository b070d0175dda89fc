package org.benchmetre.farm.layout;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Discrete containers standing on the benches in place of a continuous trough: pots, bags or boxes at an even pitch, in one or more
 * rows. Each takes one pitch of the length between the margins, whole containers only. A pitch of zero means a continuous trough.
 * Plain geometry.
 */
public final class Containers {

    private static final Unit CONTAINER = Unit.parse("container");

    /** Containers on one bench; none where the trough is continuous. */
    public final Line perBench;
    /** Containers in the house. */
    public final Line count;

    private final Line pitch;
    private final Line volume;
    private final Line plants;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param house benches
     */
    public Containers(BudgetBuilder b, FarmEntries entries, House house) {
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Containers on the benches, in place of a trough");
        s.note("A pitch of 0 means a continuous trough; the other entries of this table are not used then.");
        pitch = entries.add(s.entry("container_pitch", "Pitch of containers along a bench", METRE)
                .from(0, 10));
        Line rows = entries.add(s.entry("container_rows", "Rows of containers on a bench", ONE)
                .from(1, 20)
                .whole());
        volume = entries.add(s.entry("container_volume", "Substrate in a container", Unit.parse("L/container"))
                .from(0, 1000));
        plants = entries.add(s.entry("container_plants", "Plants in a container", Unit.parse("plant/container"))
                .from(1, 1000)
                .whole());
        perBench = s.line(
                "containers_per_bench",
                "Containers on a bench",
                CONTAINER,
                when(
                        pitch.isPositive(),
                        rows.times(house.benchRoom.over(pitch).wholeDown()).counting(CONTAINER),
                        none(CONTAINER)));
        count = s.line(
                "container_count",
                "Containers",
                CONTAINER,
                house.benchCount.counting(ONE).times(perBench));
    }

    /** Plants on a bench: those of its containers, or those of the trough. */
    Formula plantsOr(Formula inTrough) {
        return when(pitch.isPositive(), perBench.times(plants), inTrough);
    }

    /** Whether something holds substrate: the containers, or the trough. */
    Formula holdsOr(Formula inTrough) {
        return or(and(pitch.isPositive(), volume.isPositive()), and(not(pitch.isPositive()), inTrough));
    }

    /** Substrate per metre of bench: that of its containers, or that of the trough. */
    Formula litresOr(Formula inTrough, House house) {
        return when(pitch.isPositive(), perBench.times(volume).over(house.benchLength), inTrough);
    }
}
