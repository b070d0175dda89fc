package org.benchmetre.farm.irrigation;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * The water, the lie of the bench, and what the grower asks of the lines. Kinematic viscosity is that of pure water at its
 * temperature unless one was measured: dynamic viscosity by Kestin, Sokolov and Wakeham, Journal of Physical and Chemical
 * Reference Data 7:941, 1978, over density by McCutcheon, Martin and Barnwell, Handbook of Hydrology, 1993 (both from memory);
 * valid from 0 to 40 degrees Celsius or more, and 1.004 mm2/s at 20.
 */
final class Water {

    /** Kinematic viscosity, mm2/s. */
    final Line viscosity;
    /** Slope along the run, positive where it rises from the inlet, %. */
    final Line slope;
    /** Emission uniformity asked for, %. */
    final Line target;
    /** Flow variation allowed along a line, %. */
    final Line flowVariation;
    /** Velocity limit, m/s. */
    final Line velocityLimit;
    /** Water for a plant in one pulse, mL/plant. */
    final Line pulse;

    Water(BudgetBuilder b, FarmEntries entries) {
        Unit percent = Unit.parse("%");
        Unit celsius = Unit.parse("degC");
        Unit measured = Unit.parse("mm2/s");
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Water, slope and what is asked of the lines");
        Line temperature = entries.add(s.entry("water_temperature", "Temperature of the water", celsius)
                .from(0, 60)
                .typical(10, 20, 30, COMMON));
        Line given = entries.add(s.entry(
                        "water_viscosity_measured",
                        "Kinematic viscosity, measured; 0 takes it from temperature",
                        measured)
                .from(0, 1000)
                .typical(0, 0, 0, "from temperature"));
        slope = entries.add(s.entry("bench_slope", "Slope of a bench, positive where it rises from the inlet", percent)
                .from(-20, 20)
                .typical(-1, 0, 1, COMMON));
        target = entries.add(s.entry("target_uniformity", "Emission uniformity asked for", percent)
                .above(0, 99)
                .typical(80, 85, 90, COMMON));
        flowVariation = entries.add(s.entry("flow_variation_limit", "Flow variation allowed along a line", percent)
                .from(0, 99)
                .typical(5, 10, 20, COMMON));
        velocityLimit = entries.add(s.entry("velocity_limit", "Usual limit of velocity in pipe", Unit.parse("m/s"))
                .above(0, 10)
                .typical(1.5, 1.5, 1.5, "NRCS practice 430 and ASAE S376, from memory"));
        pulse = entries.add(s.entry("pulse_per_plant", "Water for a plant in one pulse", Unit.parse("mL/plant"))
                .above(0, 10_000)
                .typical(40, 80, 150, COMMON));
        viscosity = s.line(
                "water_viscosity",
                "Kinematic viscosity of the water",
                measured,
                when(given.isPositive(), given, ofTemperature(temperature.over(number(1, celsius)))),
                "dynamic viscosity by Kestin, Sokolov and Wakeham 1978 over density by McCutcheon and others 1993, from memory");
    }

    private static Formula ofTemperature(Formula t) {
        Formula below = plain(20).minus(t);
        Formula power = below.over(t.plus(plain(96)))
                .times(plain(1.2364)
                        .minus(plain(0.00137).times(below))
                        .plus(plain(5.7e-6).times(below).times(below)));
        Formula dynamic = plain(1.002e-3).times(plain(10).power(power));
        Formula away = t.minus(plain(3.9863));
        Formula lighter = t.plus(plain(288.9414))
                .over(plain(508929.2).times(t.plus(plain(68.12963))))
                .times(away)
                .times(away);
        Formula density = plain(1000).times(one().minus(lighter));
        return dynamic.over(density).counting(Unit.parse("m2/s")).in(Unit.parse("mm2/s"));
    }

    /** Slope as a plain number. */
    Formula rise() {
        return slope.in(ONE);
    }

    /** The same slope, rising. */
    Formula steepness() {
        return greater(rise(), none(ONE).minus(rise()));
    }

    private static Formula plain(double value) {
        return number(value, ONE);
    }
}
