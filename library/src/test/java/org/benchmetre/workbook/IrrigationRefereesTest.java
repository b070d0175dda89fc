package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The referees on benches that slope, are fed in the middle, leave their pressure range, or have no outlet at all. */
class IrrigationRefereesTest {

    private static final Budget SAMPLE = Sample.troughHouse();

    private static final List<Map<Line, Map<Integer, Given>>> CASES = List.of(
            changes(
                    "bench_slope=-0.2",
                    "way_first_outlet[tape]=half",
                    "way_feed_point[emitter]=middle",
                    "water_temperature=9"),
            changes(
                    "bench_slope=4",
                    "bench_length=75",
                    "way_flow_exponent[dripline]=0.05",
                    "way_check_valves[tape]=yes"),
            changes("bench_length=0.1", "pulse_per_plant=5", "way_reach[dripline]=0"),
            changes("pulse_per_plant=20", "way_check_valves[dripline]=yes", "uniformity_rule=both"),
            changes("pulse_per_plant=4000", "way_check_valves[emitter]=yes", "drain_handling=reuse"),
            changes(
                    "potassium_nitrate_purity=0.9",
                    "monopotassium_phosphate_declared_phosphorus=51.5",
                    "potassium_declared_as=k",
                    "monopotassium_phosphate_declared_potassium=28",
                    "ammonium_nitrate_choice=phosphate",
                    "recipe_ammonium_share=0.1",
                    "raw_water_calcium=0",
                    "raw_water_magnesium=0",
                    "water_hardness=80"),
            changes(
                    "way_key[spare_1]=mist",
                    "way_lines[spare_1]=2",
                    "way_outlets_per_plant[spare_1]=0.25",
                    "way_outlet_flow[spare_1]=9",
                    "way_outlet_pressure[spare_1]=210",
                    "way_flow_exponent[spare_1]=1",
                    "way_inner_diameter[spare_1]=5"));

    @TempDir
    private Path folder;

    @Test
    void the_spreadsheet_library_agrees() throws IOException {
        PoiReferee referee = new PoiReferee(SAMPLE);
        CASES.forEach(referee::add);
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void libre_office_agrees() throws IOException {
        LibreOfficeReferee.require();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        CASES.forEach(referee.book(SAMPLE)::add);
        assertThat(referee.differences()).isEmpty();
    }

    private static Map<Line, Map<Integer, Given>> changes(String... settings) {
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        for (String setting : settings) {
            String[] parts = setting.split("[\\[\\]=]+");
            Line line = SAMPLE.line(parts[0]);
            int cell = parts.length > 2 ? line.axes().get(0).indexOf(parts[1]) : 0;
            String value = parts[parts.length - 1];
            Given given =
                    line.kind() == Kind.TEXT ? Given.text(value) : Given.number(Double.parseDouble(value), line.unit());
            changes.computeIfAbsent(line, any -> new HashMap<>()).put(cell, given);
        }
        return changes;
    }
}
