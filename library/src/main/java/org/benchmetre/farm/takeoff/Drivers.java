package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
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
 * What parts are counted by: a closed list of figures that a row of the parts table may name as its driver. Outlets, metres of line and
 * the flow of the largest zone differ by irrigation system, all others are the same for every way.
 */
public final class Drivers {

    private static final Unit MONTH = Unit.parse("mo");

    /** What counts nothing but the house. */
    static final String ONE_HOUSE = "one";

    /** The unit of a part that names none and is counted by pieces. */
    private static final String EACH = "each";

    private record Driver(String label, Unit unit, Formula amount) {}

    /** One row for each driver. */
    public final Axis axis;
    /** Names, as a part writes them. */
    public final Line key;
    /** Amount of each driver; where irrigation systems differ, for the chosen one. */
    public final Line amount;

    /** What each driver counts, as people read it. */
    final Line label;
    /** Unit of each driver, a word. */
    final Line unit;
    /** What each driver measures, a word; empty where it counts pieces. */
    final Line measure;
    /** The unit of a part that names none. */
    final Line usualUnit;
    /** The units that parts may be measured in. */
    final PartUnits units;

    private final Map<String, Driver> all = new LinkedHashMap<>();
    private final Map<String, Line> byWay = new LinkedHashMap<>();
    private final Ways ways;

    /**
     * What drivers are taken from.
     *
     * @param house benches
     * @param containers what stands in place of a trough
     * @param planting plants
     * @param trough root zone and mulch
     * @param substrate parts of the blend
     * @param plant what pipes, pumps and heaters are sized by
     */
    public record Sections(
            House house, Containers containers, Planting planting, Trough trough, Substrate substrate, Plant plant) {}

    /**
     * What pipes, pumps and heaters are sized by.
     *
     * @param ways outlets and metres of line
     * @param headerLength pipe from the pump to the far bench
     * @param zoneFlow flow of the largest zone in L/h, by way; zones run one after the other, so that no pump gives more
     * @param heaterPower size of the heater for the design night, kW
     * @param cropShare share of each month in crop
     */
    public record Plant(Ways ways, Line headerLength, Line zoneFlow, Line heaterPower, Line cropShare) {}

    /**
     * Declares the drivers.
     *
     * @param b where schedules are added
     * @param from what they are taken from
     * @param chosenWay key of the way that is counted
     */
    public Drivers(BudgetBuilder b, Sections from, Line chosenWay) {
        House house = from.house();
        Trough trough = from.trough();
        Substrate substrate = from.substrate();
        Plant plant = from.plant();
        ways = plant.ways();
        all.put(ONE_HOUSE, new Driver("The house", Unit.ONE, one()));
        put("bench_metres", house.benchMetres);
        put("bench_count", house.benchCount);
        put("container_count", from.containers().count);
        put("plant_count", from.planting().plantCount);
        put("house_area", house.houseArea);
        put("house_perimeter", house.perimeter);
        put("substrate_volume", trough.substrateVolume);
        put("loose_volume", substrate.looseVolume);
        put("coir_volume", substrate.coir);
        put("peat_volume", substrate.peat);
        put("perlite_volume", substrate.perlite);
        put("other_volume", substrate.other);
        put("mulch_metres", trough.mulchMetres);
        put("zone_count", house.zoneCount);
        put("header_length", plant.headerLength());
        ScheduleBuilder differing = b.schedule(Sheets.MATERIALS, "Drivers that differ by irrigation system");
        put(differing, "outlet_count", ways.outletCount, chosenWay);
        put(differing, "line_metres", ways.lineMetres, chosenWay);
        put(differing, "design_flow", plant.zoneFlow(), chosenWay);
        put("heater_power", plant.heaterPower());
        all.put("crop_months", months(plant.cropShare()));
        axis = Axis.rows("driver", "Driver", List.copyOf(all.keySet()), 0);

        ScheduleBuilder s = b.schedule(Sheets.MATERIALS, "Drivers: what parts are counted by");
        units = new PartUnits(b);
        label = s.textLine("driver_label", "Counts", words(Driver::label));
        key = s.textLine(
                "driver_key",
                "Key",
                new Rows(axis, all.keySet().stream().map(k -> text(k)).toList()));
        unit = s.textLine("driver_unit", "Unit", words(driver -> shown(driver.unit())));
        measure = s.textLine(
                "driver_measure",
                "Measures",
                words(driver -> PartMeasure.ofDriver(driver.unit())
                        .map(PartMeasure::word)
                        .orElse("")));
        usualUnit = s.textLine("driver_usual_unit", "Unit of a part that names none", words(Drivers::usualUnit));
        b.nameRows(axis, label);
        List<Formula> amounts = new ArrayList<>();
        all.values().forEach(driver -> amounts.add(driver.amount().counting(DRIVER)));
        amount = s.line(
                "driver_amount",
                "Amount, for the chosen irrigation system",
                DRIVER,
                new Rows(axis, amounts),
                "the same for every system, but for outlets, metres of line and flow of a zone");
    }

    private void put(String name, Line line) {
        all.put(name, new Driver(line.label(), line.unit(), line));
    }

    private void put(ScheduleBuilder s, String name, Line line, Line chosenWay) {
        Line here = s.line("driver_way_" + name, line.label(), line.unit(), line);
        all.put(name, new Driver(line.label(), line.unit(), lookup(here, ways.key, chosenWay)));
        byWay.put(name, here);
    }

    private static Driver months(Line cropShare) {
        Formula inCrop = sum(cropShare, cropShare.axes().get(0));
        return new Driver("Months in crop", MONTH, inCrop.counting(MONTH));
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

    private static String usualUnit(Driver driver) {
        return PartMeasure.ofDriver(driver.unit()).isPresent() ? shown(driver.unit()) : EACH;
    }

    /**
     * The unit of a part that names none.
     *
     * @return by the key of its driver
     */
    Map<String, String> usualUnits() {
        Map<String, String> units = new LinkedHashMap<>();
        all.forEach((key, driver) -> units.put(key, usualUnit(driver)));
        return units;
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
