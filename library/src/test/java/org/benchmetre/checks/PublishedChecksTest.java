package org.benchmetre.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Function;
import org.benchmetre.budget.Texts;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs every row of {@code published.csv}: inputs, what was published, how near it must come, and who says so. */
class PublishedChecksTest {

    private static final Budget TROUGH_HOUSE = Sample.troughHouse();

    static Stream<CSVRecord> checks() throws IOException {
        return PublishedFiles.rows("published.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void agreesWithThePublishedValue(CSVRecord check) {
        double expected = Double.parseDouble(check.get("expected"));
        double tolerance = Double.parseDouble(check.get("tolerance"));
        double allowed = check.get("tolerance_kind").equals("rel") ? tolerance * Math.abs(expected) : tolerance;
        assertThat(check.get("source")).isNotBlank();
        assertThat(found(check)).as(check.get("id")).isCloseTo(expected, within(allowed));
    }

    private static double found(CSVRecord check) {
        String inputs = check.get("inputs");
        Unit unit = Unit.parse(check.get("unit"));
        if (WateringChecks.FUNCTIONS.contains(check.get("function"))) {
            return WateringChecks.found(check.get("function"), inputs, TROUGH_HOUSE);
        }
        if (BreakEvenChecks.FUNCTIONS.contains(check.get("function"))) {
            return BreakEvenChecks.found(check.get("function"), inputs, TROUGH_HOUSE);
        }
        return switch (check.get("function")) {
            case "convert" -> amount(inputs) * unitOf(inputs).factorTo(unit).toDouble();
            case "convert_level" -> unitOf(inputs).convertLevel(amount(inputs), unit);
            case "plants_per_metre", "litres_per_plant", "bench_floor_share" ->
                figures(inputs).number(check.get("function"));
            case "receipts_per_area" ->
                figures(inputs).number("receipts_total") / figures(inputs).number("house_area");
            case "space_rate" ->
                figures(inputs).number("space_rate")
                        * Unit.parse("money/(m2 wk)").factorTo(unit).toDouble();
            case "first_fruit_day_degrees" ->
                figures(inputs).number("stock_first_fruit_weeks", "bare_root") * 7 * (amountOf(inputs) - 2.4);
            case "loose_volume_ratio" ->
                figures(inputs).number("loose_volume") / figures(inputs).number("substrate_volume");
            case "drain_measured_share" -> figures(inputs).number("drain_measured_share");
            case "water_given" -> WaterChecks.given(TROUGH_HOUSE, inputs);
            case "pump_power" -> WaterChecks.power(TROUGH_HOUSE, inputs, unit);
            case "ion_mass", "salt_rate" -> ofFeed(check, inputs.split("; of="));
            case "no_outlet_left" -> figures(inputs).number("way_no_outlet_left", "emitter");
            case "ua_total", "design_air_loss", "design_day_fuel" -> in(unit, check.get("function"), figures(inputs));
            case "capital_recovery" -> recovery(inputs);
            case "partial_budget" -> FourBoxes.figures(inputs, unit).number("partial_net");
            case "npv", "irr" -> Flows.of(inputs).figures().number("the_answer");
            default -> throw new IllegalArgumentException("No check is written for " + check.get("function") + ".");
        };
    }

    /** A feed made with rain water: the sample with nothing in its raw water. Nitrate and ammonium weigh as nitrogen together. */
    private static double ofFeed(CSVRecord check, String[] sides) {
        String[] rainWater = Stream.of("calcium", "magnesium", "sulphur", "alkalinity", "sodium", "chloride")
                .map(content -> "raw_water_" + content + "=0 mmol/L")
                .toArray(String[]::new);
        Figures figures = Figures.of(Sample.with(Sample.with(TROUGH_HOUSE, rainWater), sides[0].split("; ")));
        return sides[1].equals("nitrogen")
                ? figures.number("feed_nitrogen_mass")
                : figures.number(check.get("function"), sides[1]);
    }

    private static double recovery(String inputs) {
        Map<String, Double> by = new HashMap<>();
        for (String input : inputs.split("; ")) {
            String[] sides = input.split("=");
            by.put(sides[0], quotient(sides[1].split(" ")[0]));
        }
        double[] arguments = {by.get("rate"), by.get("life"), by.get("cost"), by.get("salvage")};
        return Function.RECOVERY.body().of(arguments, new Texts());
    }

    private static double quotient(String text) {
        String[] sides = text.split("/");
        return Double.parseDouble(sides[0]) / (sides.length > 1 ? Double.parseDouble(sides[1]) : 1);
    }

    private static double in(Unit unit, String line, Figures figures) {
        return Unit.apply(figures.number(line), TROUGH_HOUSE.line(line).unit().factorTo(unit));
    }

    private static double amount(String quantity) {
        return Double.parseDouble(quantity.substring(0, quantity.indexOf(' ')));
    }

    private static double amountOf(String input) {
        return amount(input.substring(input.indexOf('=') + 1));
    }

    private static Unit unitOf(String quantity) {
        return Unit.parse(quantity.substring(quantity.indexOf(' ') + 1));
    }

    private static Figures figures(String inputs) {
        return Figures.of(Sample.with(TROUGH_HOUSE, inputs.split("; ")));
    }
}
