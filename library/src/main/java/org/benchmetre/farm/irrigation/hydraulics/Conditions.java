package org.benchmetre.farm.irrigation.hydraulics;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
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
 * temperature unless one was measured; valid from 0 to 40 degrees Celsius or more, and 1.004 mm²/s at 20.
 *
 * <pre>
 * nu  = mu / rho
 * mu  = 1.002e-3 10^e,  e = (20 - t) / (t + 96) (1.2364 - 0.00137 (20 - t) + 5.7e-6 (20 - t)²)
 * rho = 1000 (1 - (t + 288.9414) / (508929.2 (t + 68.12963)) (t - 3.9863)²)
 * nu  kinematic viscosity, mm²/s    mu  dynamic viscosity, Pa s    rho  density, kg/m³    t  temperature, degC
 * </pre>
 *
 * Dynamic viscosity: Kestin, Sokolov and Wakeham, Journal of Physical and Chemical Reference Data 7:941, 1978; density: McCutcheon,
 * Martin and Barnwell, Handbook of Hydrology, 1993; both from memory.
 */
final class Conditions {

    /** Kinematic viscosity, mm2/s. */
    final Line viscosity;
    /** Rise of a bench from the inlet for each metre, below zero where it falls, a plain number. */
    final Line rise;
    /** The same, rising. */
    final Line steepness;
    /** Emission uniformity asked for, %. */
    final Line target;
    /** Flow variation allowed along a line, %. */
    final Line flowVariation;
    /** Velocity limit, m/s. */
    final Line velocityLimit;
    /** Water for a plant in one pulse while the lines run full, mL/plant. */
    final Line pulse;

    Conditions(BudgetBuilder b, FarmEntries entries) {
        Unit percent = Unit.parse("%");
        Unit celsius = Unit.parse("degC");
        Unit measured = Unit.parse("mm2/s");
        ScheduleBuilder s = b.schedule(Sheets.IRRIGATION, "Water, slope and what is asked of the lines");
        Line temperature = entries.add(s.entry("water_temperature", "Temperature of the water", celsius)
                .from(0, 60));
        Line given = entries.add(s.entry(
                        "water_viscosity_measured",
                        "Kinematic viscosity, measured; 0 takes it from temperature",
                        measured)
                .from(0, 1000));
        Line slope =
                entries.add(s.entry("bench_slope", "Slope of a bench, positive where it rises from the inlet", percent)
                        .from(-20, 20));
        target = entries.add(s.entry("target_uniformity", "Emission uniformity asked for", percent)
                .above(0, 99));
        flowVariation = entries.add(s.entry("flow_variation_limit", "Flow variation allowed along a line", percent)
                .from(0, 99));
        velocityLimit = entries.add(s.entry("velocity_limit", "Usual limit of velocity in pipe", Unit.parse("m/s"))
                .above(0, 10));
        pulse = entries.add(
                s.entry("pulse_per_plant", "Water for a plant in one pulse, lines full", Unit.parse("mL/plant"))
                        .above(0, 10_000));
        rise = s.line("bench_rise", "Rise of a bench for each metre of it", ONE, slope.in(ONE));
        steepness = s.line(
                "bench_steepness",
                "Rise of its rising half where it is fed in the middle",
                ONE,
                greater(rise, none(ONE).minus(rise)));
        Formula t = temperature.counting(ONE);
        Unit dynamicUnit = Unit.parse("Pa s");
        Line power = s.line(
                "water_viscosity_exponent",
                "Power of ten that viscosity is above that at 20 °C",
                ONE,
                viscosityExponent(t),
                "Kestin, Sokolov and Wakeham 1978, from memory");
        Line dynamic = s.line(
                "water_dynamic_viscosity",
                "Dynamic viscosity of pure water",
                dynamicUnit,
                number(1.002e-3, dynamicUnit).times(plain(10).power(power)),
                "Kestin, Sokolov and Wakeham 1978, from memory");
        Unit densityUnit = Unit.parse("kg/m3");
        Line density = s.line(
                "water_density",
                "Density of pure water",
                densityUnit,
                number(1000, densityUnit).times(one().minus(lighter(t))),
                "McCutcheon, Martin and Barnwell 1993, from memory");
        viscosity = s.line(
                "water_viscosity",
                "Kinematic viscosity of the water",
                measured,
                when(given.isPositive(), given, dynamic.over(density).in(measured)),
                "as measured, else dynamic viscosity over density");
    }

    private static Formula viscosityExponent(Formula t) {
        Formula below = plain(20).minus(t);
        return below.over(t.plus(plain(96)))
                .times(plain(1.2364)
                        .minus(plain(0.00137).times(below))
                        .plus(plain(5.7e-6).times(below).times(below)));
    }

    private static Formula lighter(Formula t) {
        Formula away = t.minus(plain(3.9863));
        return t.plus(plain(288.9414))
                .over(plain(508929.2).times(t.plus(plain(68.12963))))
                .times(away)
                .times(away);
    }

    private static Formula plain(double value) {
        return number(value, ONE);
    }
}
