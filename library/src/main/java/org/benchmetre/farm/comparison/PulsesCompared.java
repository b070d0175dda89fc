package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.one;

import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.water.Watering;
import org.benchmetre.farm.ownership.OperatingInterest;

/**
 * What pulses cost each irrigation system: water given for each metre of bench, without and with check valves, and what those
 * would save in a year, interest on operating capital counted.
 */
final class PulsesCompared {

    private static final Unit LITRES = Unit.parse("L/(m a)");
    private static final Unit MONEY = Unit.parse("money/(m a)");

    /** What drains from the lines after shut-off, share of all water of a pulse, %, by way. */
    final Line drainedShare;
    /** Emission uniformity over whole pulses, at most, %, by way. */
    final Line uniformity;
    /** What check valves would save, their price not counted, money/(m a), by way. */
    final Line saving;

    /**
     * Declares the lines.
     *
     * @param s where they stand
     * @param h hydraulics of the benches
     * @param watering water of the house
     * @param interest interest on operating capital
     * @param benchMetres metres of bench
     */
    PulsesCompared(ScheduleBuilder s, Hydraulics h, Watering watering, OperatingInterest interest, Line benchMetres) {
        drainedShare = h.drainedShare;
        uniformity = h.pulsedUniformity;
        s.line(
                "side_water_given",
                "Water given",
                LITRES,
                watering.given.over(benchMetres).in(LITRES));
        s.line(
                "side_water_with_valves",
                "Water given with check valves",
                LITRES,
                watering.valves.given.over(benchMetres).in(LITRES));
        saving = s.line(
                "side_valve_saving",
                "Check valves would save",
                MONEY,
                watering.valves.saved.times(one().plus(interest.factor)).over(benchMetres),
                "water, nutrient solution, drain, pumping and interest on them; the price of check valves is not counted");
    }
}
