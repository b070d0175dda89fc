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
    /** Share of each month in crop. */
    public final Line cropShare;
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
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param months months of the year
     * @param h hydraulics of the benches
     * @param wayChoice key of the way that is counted
     * @param feedPerVolume cost of the feed in a cubic metre
     */
    public Watering(
            BudgetBuilder b, FarmEntries entries, Months months, Hydraulics h, Line wayChoice, Line feedPerVolume) {
        Ways ways = h.ways;
        House house = ways.house;
        WaterNeed need = new WaterNeed(b, entries.profile(), months, ways.planting);
        DrainShare drain = new DrainShare(b, entries);
        GrossWater gross = new GrossWater(b, ways, h, drain, need, months);
        Supply supply = new Supply(b, entries, ways, house, h.flowPerBench, wayChoice);
        HeaderPipe header = new HeaderPipe(b, entries, supply.zoneFlow, h);
        Pumping pump = new Pumping(b, entries, h, supply, header, gross.year);
        new WateringHours(b, entries, months, h, gross, supply.zonesRun);
        cost = new WaterCost(b, entries, gross, feedPerVolume, pump.cost);
        cropShare = need.cropShare;
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
