package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.workbook.Adjustments;
import org.benchmetre.workbook.LibreOfficeReferee;
import org.benchmetre.workbook.PoiReferee;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A crop that the library does not know: leaves in gutters without substrate. Its profile and a house are files of the tests alone; the
 * code is the same. All of its figures are invented.
 */
class SecondCropTest {

    private static final Path HOUSE = Path.of("src", "test", "resources", "org", "benchmetre", "gutter-house");
    private static final int SEEDS = 4;

    /** A dozen sums and products of doubles below a thousand. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    @TempDir
    private Path folder;

    /**
     * Four gutters of 10 m, bare for 0.1 m at each end, a plant every 0.2 m: 9.8 / 0.2 + 1 = 50 in each. Fruit is what is sold: 200
     * plants, 200 g, eight crops, nine tenths marketable. First cost: 40 m of gutter at 20 for 4 m and cover at 30 for 100 m, 5 m of
     * header at 8 for 5 m, 200 outlets at 30 for 100, 200 plants at 0.10, and 7.3 hours at 18: 4 for gutters, 0.8 for covers, 0.5 for the
     * header, 2 for outlets.
     */
    @ParameterizedTest
    @CsvSource({
        "plants_per_bench, 50",
        "plant_count, 200",
        "substrate_volume, 0",
        "loose_volume, 0",
        "coir_volume, 0",
        "other_volume, 0",
        "material_quantity[coir], 0",
        "material_life[header], 10",
        "fruit_marketable, 288",
        "recipe_nitrogen, 11",
        "recipe_cations, 14.5",
        "recipe_anions, 14.5",
        "first_cost_total, 431.4",
        "first_cost_per_metre, 10.785"
    })
    void a_leafy_crop_in_gutters_is_priced(String address, double expected) throws ScenarioException {
        assertThat(house().quantity(address).value()).isCloseTo(expected, ROUNDING);
    }

    @Test
    void it_takes_what_its_own_profile_says_and_else_what_all_crops_have() throws ScenarioException {
        Plan plan = house();
        assertThat(plan.budget().structure().kind()).isEqualTo("lettuce");
        assertThat(plan.quantity("bench_width").value()).isEqualTo(0.15);
        assertThat(plan.quantity("zone_count").value()).isEqualTo(1);
        assertThat(plan.quantity("on_cost_share").value()).isEqualTo(0.15);
        assertThat(plan.budget()
                        .entry(plan.budget().line("drain_fraction"))
                        .orElseThrow()
                        .source())
                .isEqualTo("invented for a test");
    }

    @Test
    void nothing_about_it_is_troubled_and_all_checks_agree() throws ScenarioException {
        Plan plan = house();
        assertThat(plan.figures().troubles()).isEmpty();
        assertThat(plan.disagreements()).isEmpty();
        assertThat(plan.text("all_parts_warning")).isEmpty();
    }

    @Test
    void substrate_without_a_blend_is_said_and_nothing_of_it_is_bought() throws ScenarioException {
        Plan plan = house().with("air_gap", "10 mm");
        assertThat(plan.quantity("loose_volume").value()).isCloseTo(160, ROUNDING);
        assertThat(plan.quantity("coir_volume").value()).isZero();
        assertThat(plan.text("all_parts_warning"))
                .startsWith("The root zone holds substrate and the blend has no parts");
    }

    @Test
    void it_is_explained() throws ScenarioException {
        assertThat(house().explain("coir_volume").toString()).contains("coir_volume", "all_parts", "loose_volume");
        assertThat(house().explain("first_cost_total").toString()).contains("431.4");
    }

    @Test
    void poi_recalculates_its_workbook_to_the_same_figures() throws IOException, ScenarioException {
        Budget budget = house().budget();
        PoiReferee referee = new PoiReferee(budget);
        assertThat(LongStream.rangeClosed(0, SEEDS)
                        .mapToObj(seed ->
                                seed == 0 ? Map.<Line, Map<Integer, Given>>of() : Adjustments.seeded(budget, seed))
                        .parallel()
                        .flatMap(changes -> referee.differences(changes).stream()))
                .isEmpty();
    }

    @Test
    void libreoffice_recalculates_its_workbook_to_the_same_figures() throws IOException, ScenarioException {
        LibreOfficeReferee.require();
        Budget budget = house().budget();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder, budget).add(Map.of());
        for (long seed = 1; seed <= SEEDS; seed++) {
            referee.add(Adjustments.seeded(budget, seed));
        }
        assertThat(referee.differences()).isEmpty();
    }

    private static Plan house() throws ScenarioException {
        return Benchmetre.read(HOUSE);
    }
}
