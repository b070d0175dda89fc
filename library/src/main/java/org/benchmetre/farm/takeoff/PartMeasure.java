package org.benchmetre.farm.takeoff;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/**
 * What a part can be measured by, the unit in which drivers of that measure are kept, and the spellings that stand in a workbook. Files and
 * calls take any spelling; a cell of a workbook is looked up among these.
 */
enum PartMeasure {
    /** Length, in metres. */
    LENGTH("m", "bench_metres", "m,metre,metres,meter,meters,cm,mm,km,in,inch,inches,ft,foot,feet,yd,yard,yards"),
    /** Area, in square metres. */
    AREA("m2", "house_area", "m2,sqm,sq m,cm2,ft2,sqft,sq ft,in2,yd2,sq yd,ha,acre,acres"),
    /** Volume, in litres. */
    VOLUME("L", "substrate_volume", "L,litre,litres,liter,liters,mL,m3,ft3,cuft,cu ft,yd3,cu yd,gal,gallon,gallons"),
    /** Flow, in litres an hour. */
    FLOW("L/h", "design_flow", "L/h,L/min,L/s,m3/h,gal/h,gph,gal/min,gpm"),
    /** Power, in kilowatts. */
    POWER("kW", "heater_power", "kW,W,Btu/h,hp"),
    /** Time, in months. */
    TIME("mo", "crop_months", "mo,month,months,wk,week,weeks,d,day,days,a,yr,year,years,h,hour,hours"),
    /** Mass; no driver has it. */
    MASS("kg", "", "kg,g,t,lb,lbs,pound,pounds,oz"),
    /** Energy; no driver has it. */
    ENERGY("kWh", "", "kWh,MJ");

    private static final List<String> OFFERED = List.of(
            "m", "ft", "m2", "ft2", "L", "gal", "ft3", "L/h", "gal/min", "kW", "Btu/h", "mo", "wk", "kg", "lb", "kWh");

    private static final List<String> CAPACITIES = List.of(
            "L/h", "m3/h", "L/min", "gal/h", "gal/min", "m2", "ft2", "ha", "acre", "kW", "W", "Btu/h", "m", "ft", "L",
            "m3", "gal", "mo", "wk", "h");

    private final Unit base;
    private final String served;
    private final List<String> words;

    PartMeasure(String base, String served, String words) {
        this.base = Unit.parse(base);
        this.served = served;
        this.words = List.of(words.split(","));
    }

    /** The spellings of its units, in the order of the table. */
    List<String> words() {
        return words;
    }

    /** What formulas call it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Key of the driver that a capacity of this measure is held against; empty where there is none. */
    String served() {
        return served;
    }

    /** How many of a unit make one of the unit that drivers are kept in. */
    double perBase(String word) {
        return base.factorTo(Unit.parse(word)).toDouble();
    }

    /** Its units as files keep them, each once. */
    private List<String> units() {
        return words.stream()
                .map(word -> Unit.parse(word).toString())
                .distinct()
                .toList();
    }

    /** A few of its units, the driver's first. */
    List<String> offered() {
        return units().stream().filter(OFFERED::contains).toList();
    }

    /** The units that a part may be measured in. */
    static List<String> ofParts() {
        return Arrays.stream(values()).flatMap(each -> each.units().stream()).toList();
    }

    /** The units that a capacity may have, each of a measure that a driver stands for. */
    static List<String> ofCapacities() {
        return CAPACITIES;
    }

    /** The measure of a unit; empty where it counts. */
    static Optional<PartMeasure> of(Unit unit) {
        return Arrays.stream(values())
                .filter(each -> each.base.sameDimension(unit))
                .findFirst();
    }

    /** The measure of what a word stands for; empty for a word of somebody's own. */
    static Optional<PartMeasure> of(String word) {
        try {
            return of(Unit.parse(word));
        } catch (UnitException e) {
            return Optional.empty();
        }
    }

    /**
     * The measure of a driver.
     *
     * @throws IllegalArgumentException when the driver is kept in another unit than its measure
     */
    static Optional<PartMeasure> ofDriver(Unit unit) {
        Optional<PartMeasure> measure = of(unit);
        if (measure.isPresent() && !measure.get().base.equals(unit)) {
            throw new IllegalArgumentException("A driver of " + measure.get().word() + " is in " + measure.get().base
                    + ", but found " + unit + ".");
        }
        return measure;
    }
}
