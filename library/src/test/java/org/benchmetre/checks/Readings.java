package org.benchmetre.checks;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;

/** What the rows of published figures read: a line of a house with the row's entries, or a reading by name. */
final class Readings {

    /** Entries that several rows share, by name. */
    private static final Map<String, List<String>> SHARED =
            Map.of("bare_part", List.of("material_freight[pump]=0 1", "material_sales_tax[pump]=0 1"));

    private Readings() {}

    /** The number of a row, in its unit. */
    static double of(PublishedRow row, Budget sample) {
        String reads = row.reads();
        String inputs = row.inputs();
        Unit unit = Unit.parse(row.unit());
        if (WateringChecks.NAMES.contains(reads)) {
            return WateringChecks.found(reads, inputs, sample);
        }
        if (BreakEvenChecks.FUNCTIONS.contains(reads)) {
            return BreakEvenChecks.found(reads, inputs, sample);
        }
        if (StatementChecks.NAMES.contains(reads)) {
            return StatementChecks.found(reads, inputs, sample);
        }
        return switch (reads) {
            case "convert" -> amount(inputs) * unitOf(inputs).factorTo(unit).toDouble();
            case "convert_level" -> unitOf(inputs).convertLevel(amount(inputs), unit);
            case "yield_per_area" -> quotient(figures(sample, inputs), "yield_total", "house_area");
            case "loose_volume_ratio" -> quotient(figures(sample, inputs), "loose_volume", "substrate_volume");
            case "first_fruit_days" -> figures(sample, inputs).number("stock_first_fruit_weeks", "bare_root") * 7;
            case "water_given" -> WaterChecks.given(sample, inputs);
            case "pump_power" -> WaterChecks.power(sample, inputs, unit);
            case "ion_mass", "salt_rate" -> ofFeed(sample, reads, inputs.split("; of="));
            case "no_outlet_left" -> figures(sample, inputs).number("way_no_outlet_left", "emitter");
            case "season_index" -> SeasonPrices.index(inputs.split("; ")[0], inputs.split("; ")[1]);
            case "partial_budget" -> FourBoxes.figures(inputs, unit).number("partial_net");
            case "npv" -> Flows.of(inputs).figures().number("the_answer");
            case "irr" -> in(unit, Flows.of(inputs).figures(), "the_answer");
            case "cash_npv" -> in(unit, PlanCash.figures(sample, inputs), "net_present_value");
            case "cash_irr" -> in(unit, PlanCash.figures(sample, inputs), "internal_rate_of_return");
            case "cash_discounted_payback" -> in(unit, PlanCash.figures(sample, inputs), "discounted_payback_years");
            default -> in(unit, figures(sample, inputs), reads);
        };
    }

    /** A cell of a line in a unit: {@code line} or {@code line[key]}. */
    private static double in(Unit unit, Figures figures, String address) {
        String[] place = address.split("[\\[\\]]");
        Line line = figures.budget().line(place[0]);
        double number = place.length > 1 ? figures.number(place[0], place[1].split(";")) : figures.number(place[0]);
        return Unit.apply(number, line.unit().factorTo(unit));
    }

    private static double quotient(Figures figures, String line, String over) {
        return figures.number(line) / figures.number(over);
    }

    /** A feed made with rain water: the sample with nothing in its raw water. Nitrate and ammonium weigh as nitrogen together. */
    private static double ofFeed(Budget sample, String line, String[] sides) {
        String[] rainWater = Stream.of("calcium", "magnesium", "sulphur", "alkalinity", "sodium", "chloride")
                .map(content -> "raw_water_" + content + "=0 mmol/L")
                .toArray(String[]::new);
        Figures figures = Figures.of(Sample.with(Sample.with(sample, rainWater), sides[0].split("; ")));
        return sides[1].equals("nitrogen") ? figures.number("feed_nitrogen_mass") : figures.number(line, sides[1]);
    }

    private static double amount(String quantity) {
        return Double.parseDouble(quantity.substring(0, quantity.indexOf(' ')));
    }

    private static Unit unitOf(String quantity) {
        return Unit.parse(quantity.substring(quantity.indexOf(' ') + 1));
    }

    private static Figures figures(Budget sample, String inputs) {
        return Figures.of(Sample.with(
                sample,
                Stream.of(inputs.split("; "))
                        .flatMap(input -> SHARED.getOrDefault(input, List.of(input)).stream())
                        .toArray(String[]::new)));
    }
}
