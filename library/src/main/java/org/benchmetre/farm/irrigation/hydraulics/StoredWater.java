package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.LITRE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.layout.Planting;

/**
 * Water stored in the lines against the pulse.
 *
 * <pre>
 * V = (pi d²/4) L             t = V / Q             tp = p / qp             e = V / plants      D = e / (p + e)
 * V  water in the lines of a bench, L      d  inner diameter, mm     L  metres of line on a bench
 * t  time to fill them, min                Q  flow of a bench, L/h
 * tp length of a pulse, min                p  water for a plant in a pulse while the lines run full, mL    qp flow for a plant, L/h
 * e  emptied from the lines for a plant after a pulse, mL; 0 with check valves
 * D  drained after shut-off, share of all water of a pulse
 * </pre>
 *
 * Without check valves a line runs out of the outlets, most of it at the low end, whenever the pump stops, and has to be filled
 * again before the next pulse is even. What fills it is what drains, so that a pulse takes p + e. Plain geometry and counting.
 */
final class StoredWater {

    /** What drains from the lines for a plant after a pulse, mL/plant; 0 with check valves. */
    final Line drained;
    /** What drains from the lines after shut-off, share of all water of a pulse, %. */
    final Line drainedShare;

    StoredWater(BudgetBuilder b, Ways ways, Outlets outlets, Conditions water, BenchLines bench) {
        Planting planting = ways.planting;
        Unit minute = Unit.parse("min");
        Unit perPlantUnit = Unit.parse("mL/plant");
        Unit litresPerMetre = Unit.parse("L/m");
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Water stored in the lines, and the pulse");
        s.note(
                "Without check valves the lines drain when the pump stops, most of it through the outlets at the low end, and the next "
                        + "pulse first fills them again: it takes what plants get while the lines run full, and what drains.");
        Line perMetre = s.line(
                "way_line_volume",
                "Water in a metre of line",
                litresPerMetre,
                PipeLoss.area(outlets.diameter).in(litresPerMetre),
                "pi d²/4, plane geometry");
        Line onBench = s.line(
                "way_stored_per_bench",
                "Water in the lines of a bench",
                LITRE,
                perMetre.times(ways.lines).times(ways.house.benchLength.plus(ways.tail)));
        Line perPlant = s.line(
                "way_stored_per_plant",
                "Water in the lines for each plant",
                perPlantUnit,
                planting.eachOnABench(onBench).in(perPlantUnit));
        Formula flows = bench.flow.isPositive();
        Line fillTime = s.line(
                "way_fill_time",
                "Time to fill the lines",
                minute,
                when(flows, onBench.over(bench.flow).in(minute), none(minute)));
        Line pulseLength = s.line(
                "way_pulse_length",
                "Length of a pulse",
                minute,
                when(
                        bench.flowPerPlant.isPositive(),
                        water.pulse.over(bench.flowPerPlant).in(minute),
                        none(minute)));
        drained = s.line(
                "way_drained_per_plant",
                "Drains from the lines for each plant after a pulse",
                perPlantUnit,
                when(outlets.valves.is(Outlets.YES), none(perPlantUnit), perPlant));
        drainedShare = s.line(
                "way_drained_share",
                "Drains after shut-off, share of all water of a pulse",
                Evenness.PERCENT,
                drained.over(water.pulse.plus(drained)).in(Evenness.PERCENT),
                "emptied over what runs while the lines are full and what is emptied: plain counting");
        s.warning(
                "way_pulse_warning",
                "Pulse against the time to fill",
                and(flows, drained.isPositive(), fillTime.exceeds(pulseLength)),
                "The lines take longer to fill than they then run full, so that plants at the low end get most of a pulse. Give longer "
                        + "pulses less often (pulse_per_plant), fit outlets with check valves, or choose a narrower pipe.");
    }
}
