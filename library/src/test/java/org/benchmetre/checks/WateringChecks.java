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

    /** The readings that published rows may ask for. */
    static final Set<String> NAMES = Set.of(
            "outlet_factor",
            "line_factor",
            "pipe_friction",
            "hazen_williams",
            "lateral_hazen_williams",
            "lateral_friction",
            "emission_uniformity",
            "pressure_variation",
            "stored_water");

    private static final double PIPE = 10;

    private WateringChecks() {}

    static double found(String name, String inputs, Budget sample) {
        Map<String, String> plain = new HashMap<>();
        List<String> settings = new ArrayList<>();
        for (String input : inputs.split("; ")) {
            String[] sides = input.split("=");
            if (sides[0].startsWith("way_") || sides[1].contains(" ")) {
                settings.add(input);
            } else {
                plain.put(sides[0], sides[1]);
            }
        }
        return switch (name) {
            case "outlet_factor" ->
                HelperFormulas.outletFactor(
                        Double.parseDouble(plain.get("exponent")), Integer.parseInt(plain.get("outlets")));
            case "line_factor" ->
                factor(tape(sample, settings), plain.get("law"), settings.contains("way_first_outlet[tape]=half"));
            case "pipe_friction" -> pipe(sample, settings, "way_friction_head", plain.get("length"));
            case "hazen_williams" -> pipe(sample, settings, "way_friction_hazen_williams", plain.get("length"));
            case "emission_uniformity" -> uniformity(tape(sample, settings), plain);
            case "lateral_hazen_williams" -> tape(sample, settings).number("way_friction_hazen_williams", "tape");
            case "lateral_friction" -> tape(sample, settings).number("way_friction_head", "tape");
            case "pressure_variation" -> tape(sample, settings).number("way_pressure_variation_allowed", "tape") / 100;
            case "stored_water" -> tape(sample, settings).number("way_line_volume", "tape");
            default -> throw new IllegalArgumentException("No check is written for " + name + ".");
        };
    }

    /** The loss of a line over that of its length at full flow; outlets a metre apart, the first perhaps at half of that. */
    private static double factor(Figures f, String law, boolean half) {
        double shortfall = half ? 0.5 : 0;
        double metres = f.number("way_lateral_outlets", "tape") - shortfall;
        return f.number("way_friction_" + law, "tape") / f.number("way_gradient_" + law, "tape") / metres;
    }

    /**
     * The uniformity of the tape in proportion to the published ratio of lowest to average flow, or of pressure: that of a bench
     * follows from its slope and friction and cannot be typed in.
     */
    private static double uniformity(Figures f, Map<String, String> plain) {
        double found = f.number("way_emission_uniformity", "tape");
        if (plain.containsKey("lowest_over_average")) {
            double ratio = f.number("way_lowest_outlet_flow", "tape") / f.number("way_outlet_flow", "tape");
            return found / ratio * Double.parseDouble(plain.get("lowest_over_average"));
        }
        double ratio = f.number("way_lowest_pressure", "tape") / f.number("way_outlet_pressure", "tape");
        double published = Double.parseDouble(plain.get("lowest_over_average_pressure"));
        return found * Math.pow(published / ratio, f.number("way_flow_exponent", "tape"));
    }

    /** Ten metres of pipe with one outlet at the end, to which friction is in proportion. */
    private static double pipe(Budget sample, List<String> settings, String id, String length) {
        List<String> all = new ArrayList<>(settings);
        all.add("way_outlet_spacing[tape]=10 m");
        all.add("way_run_length[tape]=10 m");
        return tape(sample, all).number(id, "tape") * Double.parseDouble(length) / PIPE;
    }

    private static Figures tape(Budget sample, List<String> settings) {
        return Figures.of(Sample.with(sample, settings.toArray(String[]::new)));
    }
}
