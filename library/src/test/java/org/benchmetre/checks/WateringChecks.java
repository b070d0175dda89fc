package org.benchmetre.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.irrigation.hydraulics.HelperFormulas;

/** Published figures of irrigation lines, reached through the row of drip tape of the sample. */
final class WateringChecks {

    /** The functions that published rows may ask for. */
    static final Set<String> FUNCTIONS = Set.of(
            "outlet_factor",
            "outlet_factor_half",
            "pipe_friction",
            "hazen_williams",
            "lateral_hazen_williams",
            "lateral_friction",
            "emission_uniformity",
            "emission_uniformity_by_pressure",
            "pressure_variation",
            "stored_water");

    private static final double PIPE = 10;

    private WateringChecks() {}

    static double found(String function, String inputs, Budget sample) {
        Map<String, Double> plain = new HashMap<>();
        List<String> settings = new ArrayList<>();
        for (String input : inputs.split("; ")) {
            String[] sides = input.split("=");
            if (sides[1].contains(" ")) {
                settings.add(input);
            } else {
                plain.put(sides[0], Double.parseDouble(sides[1]));
            }
        }
        return switch (function) {
            case "outlet_factor", "outlet_factor_half" ->
                HelperFormulas.outletFactor(
                        plain.get("exponent"), plain.get("outlets").intValue(), function.endsWith("half"));
            case "pipe_friction" ->
                pipe(sample, settings, "way_friction_head")
                        * plain.get("length")
                        / PIPE
                        * plain.get("blasius")
                        / 0.3164;
            case "hazen_williams" -> pipe(sample, settings, "way_friction_hazen_williams") * plain.get("length") / PIPE;
            case "emission_uniformity" ->
                HelperFormulas.emissionUniformity(
                        plain.get("cv"), plain.get("in_reach"), plain.get("lowest_over_average"));
            case "emission_uniformity_by_pressure" ->
                HelperFormulas.emissionUniformity(
                        plain.get("cv"),
                        plain.get("in_reach"),
                        Math.pow(plain.get("lowest") / plain.get("average"), plain.get("exponent")));
            case "lateral_hazen_williams" -> tape(sample, settings, "way_friction_hazen_williams");
            case "lateral_friction" -> tape(sample, settings, "way_friction_head");
            case "pressure_variation" -> tape(sample, settings, "way_pressure_variation_allowed") / 100;
            case "stored_water" -> tape(sample, settings, "way_line_volume");
            default -> throw new IllegalArgumentException("No check is written for " + function + ".");
        };
    }

    /** Ten metres of pipe with one outlet at the end. */
    private static double pipe(Budget sample, List<String> settings, String id) {
        List<String> all = new ArrayList<>(settings);
        all.add("way_outlet_spacing[tape]=10 m");
        all.add("way_run_length[tape]=10 m");
        return tape(sample, all, id);
    }

    private static double tape(Budget sample, List<String> settings, String id) {
        return Figures.of(Sample.with(sample, settings.toArray(String[]::new))).number(id, "tape");
    }
}
