package org.benchmetre.farm.irrigation.water;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.layout.House;

/** The water of the house, by irrigation system: what plants keep, what is given, zones, pump, hours, and what it all costs. */
public final class Watering {

    /** What water, feed, drain and pumping cost. */
    public final WaterCost cost;
    /** What check valves would save. */
    public final CheckValves valves;
    /** Water given by way and month, m3/mo. */
    public final Line givenByMonth;
    /** Water given a year, m3/a, by way. */
    public final Line given;
    /** Drain a year, m3/a, by way. */
    public final Line drained;
    /** Electricity of the pump a year, kWh/a, by way. */
    public final Line pumpEnergy;
    /** Pumping a year, money/a, by way. */
    public final Line pumping;
    /** Pipe from the pump to the far bench, m. */
    public final Line headerLength;
    /** Flow of the largest zone, L/h, by way. */
    public final Line zoneFlow;
    /** Price of electricity, money/kWh. */
    public final Line electricityPrice;

    /**
     * The year that is watered.
     *
     * @param months the months
     * @param inCrop share of benches in crop in each month
     */
    public record Season(Months months, Line inCrop) {}

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param season the months, and what is in crop in them
     * @param h hydraulics of the benches
     * @param wayChoice key of the way that is counted
     * @param feedPerVolume cost of the feed in a cubic metre
     */
    public Watering(
            BudgetBuilder b, FarmEntries entries, Season season, Hydraulics h, Line wayChoice, Line feedPerVolume) {
        Months months = season.months;
        Ways ways = h.ways;
        House house = ways.house;
        WaterNeed need = new WaterNeed(b, entries.profile(), months, ways.planting, season.inCrop);
        DrainShare drain = new DrainShare(b, entries);
        GrossWater gross = new GrossWater(b, ways, h, drain, need, months);
        Supply supply = new Supply(b, entries, ways, house, h.flowPerBench, wayChoice);
        HeaderPipe header = new HeaderPipe(b, entries, supply.zoneFlow, h);
        Pumping pump = new Pumping(b, entries, h, supply, header, gross.year);
        new WateringHours(b, entries, months, h, gross, supply.zonesRun);
        cost = new WaterCost(b, entries, gross, feedPerVolume, pump.cost);
        valves = new CheckValves(b, h, gross, cost.ofMore);
        pumping = pump.cost;
        pumpEnergy = pump.energy;
        drained = gross.drain;
        givenByMonth = gross.byMonth;
        given = gross.year;
        electricityPrice = pump.electricityPrice;
        headerLength = header.length;
        zoneFlow = supply.zoneFlow;
    }
}
