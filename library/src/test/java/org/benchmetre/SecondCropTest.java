package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
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

    private static final Plan HOUSE = read();
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
    void a_leafy_crop_in_gutters_is_priced(String address, double expected) {
        assertThat(HOUSE.quantity(address).value()).isCloseTo(expected, ROUNDING);
    }

    @Test
    void it_takes_what_its_own_profile_says_and_else_what_all_crops_have() {
        assertThat(HOUSE.budget().structure().kind()).isEqualTo("lettuce");
        assertThat(HOUSE.quantity("bench_width").value()).isEqualTo(0.15);
        assertThat(HOUSE.quantity("zone_count").value()).isEqualTo(1);
        assertThat(HOUSE.quantity("on_cost_share").value()).isEqualTo(0.15);
        assertThat(HOUSE.budget()
                        .entry(HOUSE.budget().line("drain_fraction"))
                        .orElseThrow()
                        .source())
                .isEqualTo("invented for a test");
    }

    @Test
    void nothing_about_it_is_troubled_and_all_checks_agree() {
        assertThat(HOUSE.figures().troubles()).isEmpty();
        assertThat(HOUSE.disagreements()).isEmpty();
        assertThat(HOUSE.text("all_parts_warning")).isEmpty();
    }

    @Test
    void substrate_without_a_blend_is_said_and_nothing_of_it_is_bought() throws ScenarioException {
        Plan plan = HOUSE.with("air_gap", "10 mm");
        // 40 mm by 100 mm is 4 L in each of 40 m
        assertThat(plan.quantity("loose_volume").value()).isCloseTo(160, ROUNDING);
        assertThat(plan.quantity("coir_volume").value()).isZero();
        assertThat(plan.text("all_parts_warning"))
                .startsWith("The root zone holds substrate and the blend has no parts");
    }

    @Test
    void it_is_explained() {
        assertThat(HOUSE.explain("coir_volume").toString()).contains("coir_volume", "all_parts", "loose_volume");
        assertThat(HOUSE.explain("first_cost_total").toString()).contains("431.4");
    }

    @Test
    void poi_recalculates_its_workbook_to_the_same_figures() throws IOException {
        Budget budget = HOUSE.budget();
        PoiReferee referee = new PoiReferee(budget, FarmWorkbook.setup(budget));
        cases(budget).forEach(referee::add);
        assertThat(referee.differences()).isEmpty();
    }

    @Test
    void libreoffice_recalculates_its_workbook_to_the_same_figures() throws IOException {
        LibreOfficeReferee.require();
        Budget budget = HOUSE.budget();
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book book = referee.book(budget, FarmWorkbook.setup(budget));
        cases(budget).forEach(book::add);
        assertThat(referee.differences()).isEmpty();
    }

    /** The workbook as written, and seeded adjustments. */
    private static Stream<Map<Line, Map<Integer, Given>>> cases(Budget budget) {
        return LongStream.rangeClosed(0, SEEDS)
                .mapToObj(seed -> seed == 0 ? Map.of() : Adjustments.seeded(budget, seed));
    }

    private static Plan read() {
        try {
            return Benchmetre.read(Path.of("src", "test", "resources", "org", "benchmetre", "gutter-house"));
        } catch (ScenarioException e) {
            throw new IllegalStateException(e);
        }
    }
}
