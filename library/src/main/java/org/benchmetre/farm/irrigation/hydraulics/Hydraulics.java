package org.benchmetre.farm.irrigation.hydraulics;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.decision.LastReached;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * The hydraulics of every irrigation system, bench by bench: outlets in reach, friction and pressure along a lateral, how evenly plants
 * are watered, the longest line that still is, and the water stored between pulses. All lines run along the ways.
 */
public final class Hydraulics {

    /** Lengths of line that are searched, in metres. */
    private static final double SHORTEST = 1;

    private static final double LONGEST = 1000;

    /** The irrigation systems. */
    public final Ways ways;
    /** Flow of a bench, L/h. */
    public final Line flowPerBench;
    /** Flow for a plant on average, L/(h plant). */
    public final Line flowPerPlant;
    /** Pressure needed at the inlet of a bench, kPa. */
    public final Line inletPressure;
    /** Design emission uniformity of new outlets, %. */
    public final Line emissionUniformity;
    /** Class of that uniformity, in words. */
    public final Line emissionClass;
    /** Whether friction decides, in words. */
    public final Line frictionNote;
    /** The uniformity where the pressure range is kept, else 0, %: what the uniformity asked for is held against. */
    public final Line uniformityInRange;
    /** Fewest outlets in reach of any plant, outlet/plant. */
    public final Line outletsInReach;
    /** Outlets on a lateral; 0 where anything needed to work out flow and friction is missing. */
    public final Line lateralOutlets;
    /** Usual limit of velocity in pipe, m/s. */
    public final Line velocityLimit;
    /** Emission uniformity asked for, %. */
    public final Line targetUniformity;
    /** Water for a plant in one pulse while the lines run full, mL/plant. */
    public final Line pulse;
    /** Kinematic viscosity of the water, m2/s. */
    public final Line viscosity;
    /** What drains from the lines for a plant after a pulse, mL/plant. */
    public final Line drained;
    /** What drains from the lines after shut-off, share of all water of a pulse, %. */
    public final Line drainedShare;
    /** Emission uniformity over whole pulses, at most, %: what water given follows. */
    public final Line pulsedUniformity;
    /** Longest line that meets the uniformity asked for, m; none where no length does. */
    public final Line longestRun;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param ways the irrigation systems
     */
    public Hydraulics(BudgetBuilder b, FarmEntries entries, Ways ways) {
        this.ways = ways;
        House house = ways.house;
        Planting planting = ways.planting;
        Outlets outlets = new Outlets(b, ways);
        Conditions water = new Conditions(b, entries);
        InReach where = new InReach(b, ways, outlets, house, planting);
        BenchLines bench = new BenchLines(b, outlets, water, where, house, planting);
        BenchPressure pressure = new BenchPressure(b, bench.lateral, outlets, water);
        BenchEvenness even = new BenchEvenness(b, ways, outlets, water, where, pressure);
        StoredWater stored = new StoredWater(b, ways, outlets, water, bench);
        new RunLengths(b, outlets, water, where, pressure.slope, even.asMade);
        longestRun = b.shared(Sheets.IRRIGATION, Tables.LONGEST)
                .solved(
                        "way_longest_run",
                        "Longest line that meets the target",
                        Unit.METRE,
                        "the length at which the design emission uniformity meets the target, by a search; the table of lengths "
                                + "beside it is live",
                        new LastReached(outlets.run, ways.key, even.uniformityInRange, water.target, SHORTEST, LONGEST),
                        ways.axis);
        flowPerBench = bench.flow;
        flowPerPlant = bench.flowPerPlant;
        inletPressure = pressure.lateral.inlet;
        emissionUniformity = even.uniformity;
        emissionClass = even.emissionClass;
        frictionNote = bench.frictionNote;
        uniformityInRange = even.uniformityInRange;
        outletsInReach = where.fewest;
        lateralOutlets = bench.lateral.outlets;
        velocityLimit = water.velocityLimit;
        targetUniformity = water.target;
        drained = stored.drained;
        drainedShare = stored.drainedShare;
        pulsedUniformity = new PulsedEvenness(b, even, stored).uniformity;
        pulse = water.pulse;
        viscosity = water.viscosity;
    }
}
