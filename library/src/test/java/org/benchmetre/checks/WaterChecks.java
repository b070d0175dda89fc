package org.benchmetre.checks;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;

/**
 * Published amounts of water and power through the lines of a house: its own ratio of figure to cause, times the published cause,
 * because flow and pressure of a house follow from its benches and cannot be typed in.
 */
final class WaterChecks {

    private static final String WAY = "emitter";

    private WaterChecks() {}

    /** Water given for the published water kept. */
    static double given(Budget house, String inputs) {
        List<String> all = List.of(inputs.split("; "));
        Figures f = entries(house, all.subList(0, 2));
        return f.number("way_gross_water", WAY) / f.number("year_water_need") * value(all.get(2), Unit.parse("L/m2"));
    }

    /** Power drawn for the published flow and head. */
    static double power(Budget house, String inputs, Unit unit) {
        List<String> all = List.of(inputs.split("; "));
        Figures f = entries(house, all.subList(0, 2));
        double flow = value(all.get(2), Unit.parse("L/h")) / f.number("way_zone_flow", WAY);
        double pressure = value(all.get(3), Unit.parse("kPa")) / f.number("way_pump_pressure", WAY);
        double kilowatt = f.number("way_pump_power", WAY) * flow * pressure;
        return kilowatt * Unit.parse("kW").factorTo(unit).toDouble();
    }

    private static Figures entries(Budget house, List<String> settings) {
        return Figures.of(Sample.with(house, settings.toArray(String[]::new)));
    }

    private static double value(String input, Unit unit) {
        String[] words = input.substring(input.indexOf('=') + 1).split(" ", 2);
        return Double.parseDouble(words[0])
                * Unit.parse(words[1]).factorTo(unit).toDouble();
    }
}
