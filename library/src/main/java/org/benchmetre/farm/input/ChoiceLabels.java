package org.benchmetre.farm.input;

import static java.util.Map.entry;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.entry.TextForm;

/**
 * What people read for the words of choices, where underscores to spaces and a capital do not say enough. Files and formulas keep the word.
 */
final class ChoiceLabels {

    private static final Map<String, String> WORDS = Map.ofEntries(
            entry("a", "years"),
            entry("crop", "crops"),
            entry("wk", "weeks"),
            entry("two_row", "Two rows"),
            entry("us", "US"),
            entry("one", "The house, once"),
            entry("bench_count", "Benches"),
            entry("container_count", "Containers"),
            entry("plant_count", "Plants"),
            entry("house_area", "m² of house"),
            entry("substrate_volume", "Litres of substrate"),
            entry("loose_volume", "Litres of loose substrate"),
            entry("coir_volume", "Litres of coir"),
            entry("peat_volume", "Litres of peat"),
            entry("perlite_volume", "Litres of perlite"),
            entry("other_volume", "Litres of other substrate"),
            entry("mulch_metres", "Metres of mulch film"),
            entry("zone_count", "Zones"),
            entry("header_length", "Metres of header pipe"),
            entry("outlet_count", "Outlets"),
            entry("line_metres", "Metres of line"),
            entry("house_perimeter", "Metres round the house"),
            entry("design_flow", "L/h of the largest zone"),
            entry("heater_power", "kW of the heater"),
            entry("crop_months", "Months in crop"),
            entry("yield_kg", "kg of fruit"),
            entry("p2o5", "P2O5"),
            entry("p", "P"),
            entry("k2o", "K2O"),
            entry("k", "K"),
            entry("cao", "CaO"),
            entry("ca", "Ca"),
            entry("mgo", "MgO"),
            entry("mg", "Mg"),
            entry("so3", "SO3"),
            entry("s", "S"),
            entry("own", "Own (no cash)"),
            entry("even", "Evenly"),
            entry("yield", "With the fruit"),
            entry("months", "By the months entered"),
            entry("bench_week", "Bench and week"),
            entry("check", "At the next check"),
            entry("end", "One end"),
            entry("full", "Full spacing"),
            entry("half", "Half spacing"),
            entry("from_house", "From the house"),
            entry("equal_payment", "Equal payments"),
            entry("each_payment", "Each payment, to the cent"),
            entry("life", "With the line"));

    /** How often a task comes back: three times per week. */
    private static final Map<String, String> TIMES = Map.of("a", "year", "crop", "crop", "wk", "week");

    /** How often a loan is paid in a year. */
    private static final Map<String, String> PAYMENTS =
            Map.of("12", "Each month", "4", "Each quarter", "1", "Once a year");

    private static final Map<String, Map<String, String>> BY_LINE = Map.of(
            "task_times_unit",
            TIMES,
            "house_regime",
            Map.of("own", "As typed by month"),
            "loan_payments_a_year",
            PAYMENTS,
            "use_kind",
            FundKind.labels());

    private ChoiceLabels() {}

    static TextForm of(String line, TextForm form) {
        Map<String, String> labels = new HashMap<>(WORDS);
        labels.putAll(BY_LINE.getOrDefault(line, Map.of()));
        return form.labels().isEmpty() ? form : form.labelled(labels);
    }
}
