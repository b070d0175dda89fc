package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * Heat in a unit of the fuels that greenhouses burn most, by the unit in which they are sold. Propane and heating oil: Bartok,
 * <i>Greenhouse heat loss</i>. A therm and a kilowatt hour hold what their names say. Natural gas by volume and wood pellets are
 * from memory: they differ by place, and the supplier says what his hold.
 */
final class FuelTable {

    private static final Unit HEAT = Unit.parse("kWh/fuel_unit");
    private static final String PROPANE = "propane";
    private static final String OIL = "oil";
    private static final String GAS = "natural gas";
    private static final String LITRE = "litre";
    private static final String US_GALLON = "US gallon";
    private static final String BARTOK = "Bartok, Greenhouse heat loss";
    private static final String MEMORY = "from memory; ask the supplier";
    private static final String BY_NAME = "by definition";

    /** A fuel with the unit it is sold by. */
    private enum Fuel {
        PROPANE_LITRE(PROPANE, LITRE, 92_500, "Btu/gal", "L", BARTOK),
        PROPANE_GALLON(PROPANE, US_GALLON, 92_500, "Btu/gal", "gal", BARTOK),
        OIL_LITRE(OIL, LITRE, 138_500, "Btu/gal", "L", BARTOK),
        OIL_GALLON(OIL, US_GALLON, 138_500, "Btu/gal", "gal", BARTOK),
        GAS_CUBIC_METRE(GAS, "m3", 10.5, "kWh/m3", "m3", MEMORY),
        GAS_THERM(GAS, "therm", 100_000, "Btu", "1", BY_NAME),
        GAS_KWH(GAS, "kWh", 1, "kWh", "1", BY_NAME),
        PELLETS_KILOGRAM("wood pellets", "kg", 4.8, "kWh/kg", "kg", MEMORY),
        ELECTRICITY_KWH("electricity", "kWh", 1, "kWh", "1", BY_NAME);

        private final String fuel;
        private final String soldBy;
        private final double heat;
        private final String source;

        Fuel(String fuel, String soldBy, double heat, String in, String unit, String source) {
            this.fuel = fuel;
            this.soldBy = soldBy;
            Unit wanted = Unit.parse("kWh").over(Unit.parse(unit));
            this.heat = heat * Unit.parse(in).factorTo(wanted).toDouble();
            this.source = source;
        }

        private String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Axis axis = Axis.rows(
            "fuel", "Fuel", Arrays.stream(Fuel.values()).map(Fuel::key).toList(), 0);

    /** Heat in a unit of the fuel named, kWh/fuel_unit; 0 where the table has no such fuel sold by that unit. */
    final Line heat;

    FuelTable(BudgetBuilder b, Line name, Line soldBy) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Fuels: heat in a unit as it is sold");
        s.note("A fuel that is not here is named as one likes, and the heat in a unit of it is entered.");
        Line fuel = s.textLine("fuel_table_name", "Fuel", rows(each -> text(each.fuel)));
        b.nameRows(axis, fuel);
        Line unit = s.textLine("fuel_table_sold_by", "Sold by", rows(each -> text(each.soldBy)));
        Line each = s.line(
                "fuel_table_heat",
                "Heat in it",
                HEAT,
                rows(row -> number(row.heat, HEAT)),
                "propane 92,500 and oil 138,500 Btu/gal: " + BARTOK + "; gas by the m3 and pellets " + MEMORY);
        s.textLine("fuel_table_source", "Source", rows(row -> text(row.source)));
        Line named = s.line(
                "fuel_table_named",
                "Heat, where it is the fuel named",
                HEAT,
                when(and(name.is(fuel), isUnit(soldBy, unit)), each, none(HEAT)));
        heat = b.schedule(Sheets.OPERATIONS, "Fuel named")
                .line(
                        "fuel_heat_of_table",
                        "Heat in a unit of the fuel named, by the table",
                        HEAT,
                        greatest(named, axis));
    }

    /** The unit as the table writes it, or in other words for it. */
    private static Formula isUnit(Line soldBy, Line unit) {
        return or(
                soldBy.is(unit),
                and(soldBy.is("gallon"), unit.is(US_GALLON)),
                and(or(soldBy.is("liter"), soldBy.is("L")), unit.is(LITRE)));
    }

    private Formula rows(Function<Fuel, Formula> cell) {
        List<Formula> cells = Arrays.stream(Fuel.values()).map(cell).toList();
        return new Rows(axis, cells);
    }
}
