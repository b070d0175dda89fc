package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.benchmetre.checks.SeasonPrices;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The samples that a reader gets are farms one can believe: whole, without a warning, and as published where something is published. */
class SamplesTest {

    private static final Path TROUGHS = Path.of("..", "samples", "trough-house");
    private static final Path TWO_CROPS = Path.of("..", "samples", "two-crop-glasshouse");

    /** A price is typed to the cent, an index has three digits behind the point: half of the last one of 23.00. */
    private static final Offset<Double> CENT = within(0.005 + 0.0005 * 23);

    private static final Map<String, String> MONTHS = Map.ofEntries(
            Map.entry("jan", "Jan"),
            Map.entry("feb", "Feb"),
            Map.entry("mar", "Mar"),
            Map.entry("apr", "Apr"),
            Map.entry("may", "May"),
            Map.entry("jun", "Jun"),
            Map.entry("jul", "Jul"),
            Map.entry("aug", "Aug"),
            Map.entry("sep", "Sep"),
            Map.entry("oct", "Oct"),
            Map.entry("nov", "Nov"),
            Map.entry("dec", "Dec"));

    /** {@code | what | `address` | number | ...}. */
    private static final Pattern QUOTED_FIGURE = Pattern.compile("\\| `([^`]+)` \\| ([0-9.]+) \\|");

    static List<Path> given() {
        return Sample.GIVEN;
    }

    static List<Path> samples() {
        return Sample.SAMPLES;
    }

    private static double of(Plan plan, String address) {
        return plan.quantity(address).value();
    }

    @ParameterizedTest
    @MethodSource("given")
    void nothing_is_told_of_it_and_all_sums_agree(Path scenario) throws ScenarioException {
        Plan plan = Benchmetre.read(scenario);
        assertThat(plan.warnings()).extracting(Remark::message).isEmpty();
        assertThat(plan.doubts()).extracting(Remark::message).isEmpty();
        assertThat(plan.disagreements()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void nothing_of_a_whole_budget_is_left_out(Path sample) throws ScenarioException {
        assertThat(Benchmetre.read(sample).text("left_out")).isEmpty();
    }

    /** Below a mean of 10 degC fewer flowers set fruit (Braak 1968, as cited by Ledesma and others, 2008). */
    @ParameterizedTest
    @MethodSource("samples")
    void months_with_fruit_are_warm_enough_for_it(Path sample) throws ScenarioException {
        Plan plan = Benchmetre.read(sample);
        for (String month : MONTHS.keySet()) {
            if (of(plan, "month_share[" + month + "]") > 0) {
                assertThat(of(plan, "inside_mean[" + month + "]")).as(month).isGreaterThan(10);
            }
        }
    }

    /** Published for gutters are 8.75 plants a m2 and more (CTIFL). */
    @Test
    void the_trough_house_is_planted_as_gutters_are() throws ScenarioException {
        assertThat(of(Benchmetre.read(TROUGHS), "plants_per_area")).isGreaterThan(8.75);
    }

    /** Half of the hours are picking and packing, and a kilogram takes as long as published. */
    @Test
    void the_trough_house_takes_the_hours_that_are_published() throws ScenarioException {
        Plan plan = Benchmetre.read(TROUGHS);
        assertThat(plan.text("published_place[fruit_work_share]")).isEqualTo("within");
        assertThat(plan.text("published_place[hours_per_kg]")).isEqualTo("within");
    }

    /** 4 kg a m2 in autumn and 8 in spring (Berrykonsult): to a tenth. */
    @ParameterizedTest
    @CsvSource({"autumn, 4", "spring, 8"})
    void the_glasshouse_bears_what_two_crops_are_published_to(String crop, double published) throws ScenarioException {
        Plan plan = Benchmetre.read(TWO_CROPS);
        double kilograms = of(plan, "yield_total") * of(plan, "crop_fruit_share[" + crop + "]");
        assertThat(kilograms / of(plan, "house_area")).isCloseTo(published, within(0.1));
    }

    /** Planted mid-August, picked October to Christmas and April to early June (De Goeij-Kroon), plants paid for once. */
    @Test
    void the_glasshouse_is_picked_in_autumn_and_in_spring_from_the_same_plants() throws ScenarioException {
        Plan plan = Benchmetre.read(TWO_CROPS);
        List<String> picked = List.of("oct", "nov", "dec", "apr", "may", "jun");
        for (String month : MONTHS.keySet()) {
            assertThat(of(plan, "month_yield[" + month + "]") > 0).as(month).isEqualTo(picked.contains(month));
        }
        assertThat(of(plan, "budget_quantity[plants]"))
                .isBetween(of(plan, "plant_count"), 1.05 * of(plan, "plant_count"));
    }

    @ParameterizedTest
    @CsvSource({
        "trough-house, wholesale, 9.50, wholesale_new_york",
        "trough-house, direct, 23.00, retail_us",
        "two-crop-glasshouse, auction, 6.40, grower_us_fresh"
    })
    void prices_move_over_the_year_as_published(String sample, String channel, double level, String series)
            throws ScenarioException {
        Plan plan = Benchmetre.read(Path.of("..", "samples", sample));
        for (Map.Entry<String, String> month : MONTHS.entrySet()) {
            SeasonPrices.printed(series, month.getValue())
                    .ifPresent(index -> assertThat(of(plan, "channel_price[" + channel + ";" + month.getKey() + "]"))
                            .as(month.getKey())
                            .isCloseTo(level * index, CENT));
        }
    }

    /** What a page of a sample quotes of it is what the plan says, to half a unit of the last digit. */
    @ParameterizedTest
    @MethodSource("samples")
    void its_page_quotes_its_figures(Path sample) throws IOException, ScenarioException {
        Plan plan = Benchmetre.read(sample);
        List<MatchResult> quoted = QUOTED_FIGURE
                .matcher(Files.readString(sample.resolve("README.md")))
                .results()
                .toList();
        assertThat(quoted.isEmpty()).isEqualTo(!sample.equals(TROUGHS));
        for (MatchResult figure : quoted) {
            String digits = figure.group(2);
            int decimals = digits.contains(".") ? digits.length() - digits.indexOf('.') - 1 : 0;
            assertThat(of(plan, figure.group(1)))
                    .as(figure.group())
                    .isCloseTo(Double.parseDouble(digits), within(0.5 * Math.pow(10, -decimals)));
        }
    }
}
