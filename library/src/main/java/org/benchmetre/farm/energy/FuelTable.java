package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * Heat in a unit of the fuels that greenhouses burn most, by the unit in which they are sold. Which they are, and where the heat of
 * each comes from, says the profile; the supplier says what his hold.
 */
final class FuelTable {

    private static final Unit HEAT = Unit.parse("kWh/fuel_unit");
    private static final String LITRE = "litre";
    private static final String US_GALLON = "US gallon";

    /** A fuel with the unit it is sold by; heat in kWh for one of it. */
    private record Sold(String key, String fuel, String soldBy, double heat, String source) {

        static Sold of(ProfileRow row) {
            Unit wanted = Unit.parse("kWh").over(Unit.parse(row.text("sold_unit")));
            double factor = Unit.parse(row.text("heat_unit")).factorTo(wanted).toDouble();
            return new Sold(
                    row.text("key"),
                    row.text("fuel"),
                    row.text("sold_by"),
                    row.number("heat") * factor,
                    row.text("source"));
        }
    }

    private final List<Sold> fuels;
    private final Axis axis;

    /** Heat in a unit of the fuel named, kWh/fuel_unit; 0 where the table has no such fuel sold by that unit. */
    final Line heat;

    FuelTable(BudgetBuilder b, CropProfile profile, Line name, Line soldBy) {
        fuels = profile.rows("fuels").stream().map(Sold::of).toList();
        axis = Axis.rows("fuel", "Fuel", fuels.stream().map(Sold::key).toList(), 0);
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
                fuels.stream().map(Sold::source).distinct().collect(Collectors.joining("; ")));
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

    private Formula rows(Function<Sold, Formula> cell) {
        return new Rows(axis, fuels.stream().map(cell).toList());
    }
}
