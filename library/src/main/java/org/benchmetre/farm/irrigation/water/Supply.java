package org.benchmetre.farm.irrigation.water;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.BENCH;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.ZONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.layout.House;

/**
 * Zones from the supply: as many whole benches at once as the supply feeds, and as many zones as it takes to water them all. The
 * house is run in the zones entered, or in those needed where they are more. Plain counting.
 */
public final class Supply {

    /** Pressure at the source, kPa; 0 for an open tank. */
    public final Line pressure;
    /** Whole benches the supply feeds at once, by way; 0 where it does not feed one. */
    public final Line benchesAtOnce;
    /** Zones the supply asks for, by way. */
    public final Line zonesNeeded;
    /** Zones as run, by way. */
    public final Line zonesRun;
    /** Flow of the largest zone, L/h, by way. */
    public final Line zoneFlow;
    /** Flow of a zone on average, L/h, by way. */
    public final Line averageZoneFlow;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param ways irrigation systems
     * @param house benches and zones
     * @param perBench flow of one bench in L/h, by way
     * @param wayChoice key of the way that is counted
     */
    public Supply(BudgetBuilder b, FarmEntries entries, Ways ways, House house, Line perBench, Line wayChoice) {
        Unit litresPerHour = Unit.parse("L/h");
        ScheduleBuilder s = b.schedule(Sheets.ENTRIES, "Water supply");
        Line flow = entries.add(
                s.entry("supply_flow", "Flow the supply gives", litresPerHour).above(0, 1_000_000_000));
        pressure = entries.add(s.entry("supply_pressure", "Pressure at the source, 0 for a tank", Unit.parse("kPa"))
                .from(0, 2000));

        ScheduleBuilder zones = b.shared(Sheets.IRRIGATION, Tables.ZONES_AND_PUMP);
        zones.note(
                "The supply feeds so many whole benches at once; the house runs in the zones entered, or more if needed.");
        Formula fed = supplied(flow, perBench, house);
        benchesAtOnce = zones.line(
                "way_benches_at_once",
                "Benches the supply feeds at once",
                BENCH,
                when(perBench.isPositive(), fed, none(BENCH)));
        Formula atLeastOne = greater(benchesAtOnce, number(1, BENCH));
        zonesNeeded = zones.line(
                "way_zones_needed",
                "Zones needed",
                ZONE,
                when(
                        perBench.isPositive(),
                        house.benchCount.over(atLeastOne).wholeUp().counting(ZONE),
                        none(ZONE)));
        Formula entered = lesser(house.zoneCount, house.benchCount.counting(ZONE));
        zonesRun = zones.line("way_zones_run", "Zones as run", ZONE, ways.whereFilled(greater(zonesNeeded, entered)));
        Line together = zones.line(
                "way_benches_in_zone",
                "Benches in the largest zone",
                BENCH,
                when(
                        zonesRun.isPositive(),
                        house.benchCount.over(zonesRun.counting(ONE)).wholeUp(),
                        none(BENCH)));
        zoneFlow = zones.line(
                "way_zone_flow", "Flow of the largest zone", litresPerHour, perBench.times(together.counting(ONE)));
        averageZoneFlow = zones.line(
                "way_average_zone_flow",
                "Flow of a zone on average",
                litresPerHour,
                when(
                        zonesRun.isPositive(),
                        perBench.times(house.benchCount.counting(ONE)).over(zonesRun.counting(ONE)),
                        none(litresPerHour)),
                "flow of all benches over the zones, which run one after the other");
        zones.warning(
                "way_supply_warning",
                "Supply against one bench",
                and(ways.key.isFilled(), perBench.exceeds(flow)),
                "Supply smaller than one bench: raise supply_flow, shorten the bench, or take fewer or smaller outlets. "
                        + "Zones, pressure and run time are counted as if one bench were fed in full.");
        b.schedule(Sheets.IRRIGATION, "Zones of the chosen irrigation system")
                .warning(
                        "zone_count_warning",
                        "Zones entered against zones needed",
                        lookup(zonesNeeded, ways.key, wayChoice).exceeds(house.zoneCount),
                        "Fewer zones are entered than the supply needs for the chosen irrigation system: raise zone_count, so "
                                + "that valves and regulators are counted, or raise supply_flow.");
    }

    private static Formula supplied(Line flow, Line perBench, House house) {
        return lesser(flow.over(perBench).wholeDown().counting(BENCH), house.benchCount);
    }
}
