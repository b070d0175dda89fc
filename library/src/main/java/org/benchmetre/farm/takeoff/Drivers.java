package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.layout.Containers;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;
import org.benchmetre.farm.layout.Substrate;
import org.benchmetre.farm.layout.Trough;

/**
 * What parts are counted by: a closed list of figures that a row of the parts table may name as its driver. Outlets and metres of
 * line differ by irrigation system, all others are the same for every way.
 */
public final class Drivers {

    private record Driver(String label, String unit, Formula amount) {}

    /** One row for each driver. */
    public final Axis axis;
    /** Names, as a part writes them. */
    public final Line key;
    /** Amount of each driver; where irrigation systems differ, for the chosen one. */
    public final Line amount;

    private final Map<String, Driver> all = new LinkedHashMap<>();
    private final Map<String, Line> byWay = new LinkedHashMap<>();

    /**
     * What drivers are taken from.
     *
     * @param house benches
     * @param containers what stands in place of a trough
     * @param planting plants
     * @param trough root zone and mulch
     * @param substrate parts of the blend
     * @param ways outlets and metres of line
     */
    public record Sections(
            House house, Containers containers, Planting planting, Trough trough, Substrate substrate, Ways ways) {}

    /**
     * Declares the drivers.
     *
     * @param b where schedules are added
     * @param from what they are taken from
     * @param headerLength pipe from the pump to the far bench
     * @param chosenWay key of the way that is counted
     */
    public Drivers(BudgetBuilder b, Sections from, Line headerLength, Line chosenWay) {
        House house = from.house();
        Trough trough = from.trough();
        Substrate substrate = from.substrate();
        all.put("one", new Driver("The house", "1", one()));
        put("bench_metres", house.benchMetres);
        put("bench_count", house.benchCount);
        put("container_count", from.containers().count);
        put("plant_count", from.planting().plantCount);
        put("house_area", house.houseArea);
        put("substrate_volume", trough.substrateVolume);
        put("loose_volume", substrate.looseVolume);
        put("coir_volume", substrate.coir);
        put("peat_volume", substrate.peat);
        put("perlite_volume", substrate.perlite);
        put("other_volume", substrate.other);
        put("mulch_metres", trough.mulchMetres);
        put("zone_count", house.zoneCount);
        put("header_length", headerLength);
        put("outlet_count", from.ways().outletCount, from.ways(), chosenWay);
        put("line_metres", from.ways().lineMetres, from.ways(), chosenWay);
        axis = Axis.rows("driver", "Driver", List.copyOf(all.keySet()), 0);

        ScheduleBuilder s = b.schedule(Sheets.MATERIALS, "Drivers: what parts are counted by");
        Line label = s.textLine("driver_label", "Counts", words(Driver::label));
        key = s.textLine(
                "driver_key",
                "Key",
                new Rows(axis, all.keySet().stream().map(k -> text(k)).toList()));
        s.textLine("driver_unit", "Unit", words(Driver::unit));
        b.nameRows(axis, label);
        List<Formula> amounts = new ArrayList<>();
        all.values().forEach(driver -> amounts.add(driver.amount().counting(DRIVER)));
        amount = s.line(
                "driver_amount",
                "Amount, for the chosen irrigation system",
                DRIVER,
                new Rows(axis, amounts),
                "the same for every system, but for outlets and metres of line");
    }

    private void put(String name, Line line) {
        all.put(name, new Driver(line.label(), shown(line.unit()), line));
    }

    private void put(String name, Line line, Ways ways, Line chosenWay) {
        all.put(name, new Driver(line.label(), shown(line.unit()), lookup(line, ways.key, chosenWay)));
        byWay.put(name, line);
    }

    /**
     * The amount of a driver by irrigation system.
     *
     * @param driver name of the driver
     * @param alike its amount where all ways have the same
     * @return that amount, or the one of each way where ways differ
     */
    Formula byWay(Line driver, Line alike) {
        Formula amount = alike;
        for (Map.Entry<String, Line> each : byWay.entrySet()) {
            amount = when(driver.is(each.getKey()), each.getValue().counting(DRIVER), amount);
        }
        return amount;
    }

    private static String shown(Unit unit) {
        return unit.equals(Unit.METRE) ? "m" : unit.toString();
    }

    private Formula words(Function<Driver, String> word) {
        return new Rows(
                axis, all.values().stream().map(d -> text(word.apply(d))).toList());
    }

    /**
     * The names a part may write.
     *
     * @return in the order of the table
     */
    public List<String> names() {
        return axis.keys();
    }
}
