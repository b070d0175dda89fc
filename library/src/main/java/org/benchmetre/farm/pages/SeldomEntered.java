package org.benchmetre.farm.pages;

import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;

/**
 * Entries that few readers touch: physical constants, what a bag or a bottle declares, bands that a bank reads ratios against, measured areas
 * that stand for computed ones. While they hold their documented value their rows are folded away on <em>Entries</em>.
 */
final class SeldomEntered {

    private static final Pattern NAMES = Pattern.compile(String.join(
            "|",
            ".*_(declared_.*|declared_as|purity)",
            "(nitric|phosphoric|sulphuric)_acid_(strength|density)",
            ".*_(strong|weak)",
            "tax_life_.*",
            "u_value_.*|(roof|side|end|other)_area|other_glazing|air_heat|air_volume|envelope_areas",
            "water_(iron|manganese|suspended|dissolved|sulphide|bacteria|hardness|ph|viscosity_measured|temperature)",
            "operating_(outstanding|months|financed)",
            "ion_balance_limit|recipe_tolerance|.*_limit_of_crop|feed_ec_(least|most)|root_ph_.*|feed_ph_.*",
            "(flow_variation|velocity)_limit|close_call_share|regulator_loss|filter_loss",
            "space_(yearly_cost|use_share|weeks)|bench_week_charge|bench_weeks_charged",
            "solar_(transmission|useful_share)|temperature_spread|boiler_margin|circulation_power|light_power|base_power",
            "flush_hours|flushes_per_year|acid_treatment_cost|treatments_per_year|outlet_replace_hours",
            "mulch_(weeding|algae)_hours|mulch_soiled_share|mulch_early_share|container_(pitch|rows|litres|plants)"));

    private SeldomEntered() {}

    static Set<Line> of(Budget budget) {
        return budget.lines().stream()
                .filter(line -> budget.entry(line).isPresent()
                        && NAMES.matcher(line.id()).matches())
                .collect(Collectors.toSet());
    }
}
