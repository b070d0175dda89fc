package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.farm.Seeded;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The verdict on irrigation says what the figures say, at any setting: clear, depends on entries, or too close to call. */
class VerdictTest {

    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    /** Pulses so long that the drain which is planned covers what empties from the lines. */
    private static final String LONG_PULSES = "pulse_per_plant=1000 mL/plant";

    private static final Budget TROUGHS = Sample.with(Sample.troughHouse(), LONG_PULSES);
    private static final Budget CONTAINERS = Sample.containerHouse();
    private static final String CLEAR = "material_price[dripline]=400 money/pack";

    @TempDir
    private Path folder;

    static Stream<Budget> seeded() {
        return seeded(25);
    }

    static Stream<Budget> fewerSeeded() {
        return seeded(6);
    }

    private static Stream<Budget> seeded(int seeds) {
        return LongStream.rangeClosed(1, seeds)
                .boxed()
                .flatMap(seed ->
                        Stream.of(Seeded.budget(TROUGHS, seed * SPREAD), Seeded.budget(CONTAINERS, seed * SPREAD)));
    }

    private static String verdict(String... settings) {
        return Figures.of(Sample.with(TROUGHS, settings)).text("irrigation_verdict");
    }

    private static IntStream rows(Figures f, String id) {
        return IntStream.range(0, f.budget().line(id).size());
    }

    private static String text(Figures f, String id, int row) {
        return f.text(f.budget().line(id), row);
    }

    private static double number(Figures f, String id, int row) {
        return f.number(f.budget().line(id), row);
    }

    /** Labels of the entries whose flip value lies inside their usual range, in the order of the table. */
    private static List<String> inside(Figures f) {
        Line value = f.budget().line("flip_value");
        return rows(f, "flip_value")
                .filter(row -> !f.hasReason(value, row))
                .filter(row -> number(f, "flip_high", row) > 0)
                .filter(row -> f.number(value, row) >= number(f, "flip_low", row)
                        && f.number(value, row) <= number(f, "flip_high", row))
                .mapToObj(row -> text(f, "flip_label", row))
                .toList();
    }

    private static double differing(Figures f) {
        Line cost = f.budget().line("cause_way_cost_per_metre");
        Line key = f.budget().line("way_key");
        int first = key.axes().get(0).indexOf(f.text("recommended_way"));
        return rows(f, "cause_label")
                .mapToObj(row ->
                        Position.NONE.with(f.budget().line("cause_label").axes().get(0), row))
                .mapToDouble(cause ->
                        f.number(cost, cost.cellAt(cause.with(key.axes().get(0), first))))
                .sum();
    }

    /** What the first saves against the next. */
    private static double saving(Figures f) {
        return f.number("way_yearly_cost_per_metre", f.text("next_way"))
                - f.number("way_yearly_cost_per_metre", f.text("recommended_way"));
    }

    @ParameterizedTest
    @MethodSource("seeded")
    void it_says_what_the_figures_say(Budget budget) {
        Figures f = Figures.of(budget);
        String verdict = f.text("irrigation_verdict");
        assertThat(f.troubles()).isEmpty();
        assertThat(verdict).startsWith("Irrigation: " + f.text("recommended_label"));
        assertThat(verdict.contains("None reaches")).isEqualTo(f.number("ways_reaching_target") == 0);
        assertThat(verdict.contains("The entries still choose"))
                .isEqualTo(!f.text("recommended_way").equals(f.text("irrigation_choice")));
        if (f.text("next_way").isEmpty()) {
            assertThat(verdict).contains(", the only system that reaches ");
            return;
        }
        boolean close = saving(f) <= Math.max(0.005, f.number("close_call_share") * differing(f));
        boolean depends = !inside(f).isEmpty() || f.number("target_flips") > 0;
        assertThat(verdict.contains(" are too close to call, ")).isEqualTo(close);
        assertThat(verdict.contains(": depends on ")).isEqualTo(!close && depends);
        assertThat(verdict.contains(": clear")).isEqualTo(!close && !depends);
        String apart = String.format(Locale.ROOT, "%,.2f USD/", saving(f));
        assertThat(verdict).contains(close ? "too close to call, " + apart : ", " + apart);
        assertThat(verdict).contains(f.text("irrigation_next"));
    }

    @ParameterizedTest
    @MethodSource("seeded")
    void it_depends_on_the_entries_that_flip_it_inside_their_usual_range(Budget budget) {
        Figures f = Figures.of(budget);
        Stream<String> target = f.number("target_flips") > 0 ? Stream.of("Emission uniformity asked for") : Stream.of();
        List<String> all = Stream.concat(target, inside(f).stream()).toList();
        String named = String.join("; ", all.subList(0, Math.min(3, all.size())));
        assertThat(f.text("irrigation_depends")).isEqualTo(named + (all.size() > 3 ? "; and others" : ""));
    }

    /** By trying every target of the range: whether another system comes first at any of them. */
    @ParameterizedTest
    @MethodSource("fewerSeeded")
    void the_uniformity_asked_for_is_a_doubt_where_some_usual_target_puts_another_system_first(Budget budget) {
        for (String variation : List.of("0.03", "0.09", "0.13")) {
            Budget varied = Sample.with(budget, "way_coefficient_of_variation[tape]=" + variation + " 1");
            Figures f = Figures.of(varied);
            boolean flips = IntStream.rangeClosed(0, 40)
                    .mapToObj(step -> Sample.with(varied, "target_uniformity=" + (80 + step / 4.0) + " %"))
                    .anyMatch(
                            there -> !Figures.of(there).text("recommended_way").equals(f.text("recommended_way")));
            assertThat(f.number("target_flips") > 0).as(variation).isEqualTo(flips);
        }
    }

    /** By trying the usual values of every doubtful entry, one at a time. */
    @ParameterizedTest
    @MethodSource("fewerSeeded")
    void where_no_usual_value_makes_it_a_system_no_usual_value_does(Budget budget) {
        Figures f = Figures.of(budget);
        String other = f.text("flip_other");
        if (!f.text("irrigation_flips").contains(" No usual value makes it ")) {
            assertThat(f.text("flip_never_words").isEmpty() || f.number("doubts_inside") == 0)
                    .isTrue();
            return;
        }
        rows(f, "flip_label")
                .filter(row -> number(f, "flip_high", row) > 0)
                .forEach(row ->
                        assertThat(usual(f, row)).as(text(f, "flip_label", row)).doesNotContain(other));
    }

    /** Which system comes first at values of the usual range of an entry. */
    private static List<String> usual(Figures f, int row) {
        double low = number(f, "flip_low", row);
        double high = number(f, "flip_high", row);
        String address = text(f, "flip_address", row);
        String unit = f.budget().line(address.replaceFirst("\\[.*", "")).unit().toString();
        return Stream.of(0.001, 0.25, 0.5, 0.75, 1.0)
                .map(part -> address + "=" + (low + part * (high - low)) + " " + unit)
                .map(setting -> Figures.of(Sample.with(f.budget(), setting)).text("recommended_way"))
                .toList();
    }

    @Test
    void it_is_clear_where_no_usual_value_flips_it() {
        assertThat(verdict(CLEAR, "irrigation_choice=tape"))
                .matches("Irrigation: Two strips of drip tape, 1\\.28 USD/\\S.* below In-line dripline: clear\\.");
        Figures f = Figures.of(Sample.with(TROUGHS, CLEAR));
        assertThat(f.text("irrigation_depends")).isEmpty();
        assertThat(f.text("irrigation_flips")).isEqualTo("No usual value of an entry changes it.");
    }

    @Test
    void it_names_three_entries_that_flip_it_and_says_that_there_are_more() {
        assertThat(verdict("close_call_share=0.05 1"))
                .contains(
                        " below In-line dripline: depends on Life of Drip tape; Failing outlets of Two strips of drip tape; "
                                + "Failing outlets of In-line dripline; and others.")
                .endsWith(" The entries still choose One emitter a plant.");
        assertThat(Figures.of(TROUGHS).text("irrigation_flips"))
                .startsWith("It would be In-line dripline at: Life of Drip tape 1.14 crops; ")
                .endsWith(". More below. No usual value makes it One emitter a plant.");
    }

    @Test
    void it_is_too_close_to_call_where_the_saving_is_a_small_share_of_what_differs() {
        assertThat(verdict("close_call_share=0.06 1")).contains(" are too close to call, 0.17 USD/");
        assertThat(verdict("close_call_share=0.05 1")).contains(": depends on ");
    }

    @Test
    void two_systems_that_are_alike_are_too_close_to_call_whatever_the_share() throws IOException {
        Budget twins = house(text -> text.replaceAll("(?m)^tape,Two(.*)$", "tape,Two$1\ntwin,Two more$1")
                .replaceAll("(?m),tape,([^,\"]*|\"[^\"]*\")$", ",tape twin,$1"));
        Figures f = Figures.of(Sample.with(twins, LONG_PULSES, "close_call_share=0 1"));
        assertThat(f.number("way_yearly_cost_per_metre", "twin"))
                .isEqualTo(f.number("way_yearly_cost_per_metre", "tape"));
        assertThat(f.text("irrigation_verdict"))
                .startsWith(
                        "Irrigation: Two strips of drip tape and Two more strips of drip tape are too close to call, 0.00 ");
    }

    @Test
    void one_system_alone_is_said_to_be_the_only_one() throws IOException {
        Budget one = house(text -> text.replaceAll("(?m)^(tape|tape_fitting|dripline),.*\\R", "")
                .replace(",emitter dripline,", ",emitter,"));
        Figures f = Figures.of(one);
        assertThat(f.text("irrigation_verdict")).isEqualTo("Irrigation: One emitter a plant, the only system entered.");
        assertThat(f.text("irrigation_flips")).isEmpty();
        assertThat(f.text("partial_title")).isEqualTo("There is no other system to change to.");
        assertThat(f.text("cause_title")).startsWith("Yearly cost by cause");
    }

    @Test
    void one_that_reaches_the_target_and_none_that_does_are_said() {
        assertThat(verdict("target_uniformity=96 %", "irrigation_choice=tape"))
                .isEqualTo(
                        "Irrigation: Two strips of drip tape, the only system that reaches 96 % emission uniformity.");
        assertThat(verdict("target_uniformity=98.5 %")).contains(" None reaches 98.5 % emission uniformity. ");
        assertThat(Figures.of(Sample.with(TROUGHS, "target_uniformity=96 %")).text("irrigation_uniformity_missed"))
                .isEqualTo("One emitter a plant does not reach the emission uniformity asked for, 96 %, inside its "
                        + "pressure range.");
        assertThat(Figures.of(TROUGHS).text("irrigation_uniformity_missed")).isEmpty();
    }

    @Test
    void values_of_a_search_that_have_gone_out_of_date_are_told() {
        Line wage = TROUGHS.line("install_wage");
        Figures f = Figures.of(TROUGHS);
        assertThat(f.typedOver(Map.of(wage, Map.of(0, Given.number(19, wage.unit()))))
                        .text("irrigation_verdict"))
                .endsWith(" Lives and failing outlets as first filled.");
    }

    @Test
    void where_a_usual_range_is_missing_it_is_clear_only_inside_those_given() {
        Figures f = Figures.of(Sample.with(
                TROUGHS,
                CLEAR,
                "material_price_low[dripline]=0 money/pack",
                "material_price_high[dripline]=0 money/pack"));
        assertThat(f.text("irrigation_verdict")).contains(": clear inside the usual ranges given.");
    }

    /** Labels are what stands in a sentence: keys and names of lines never do. */
    @Test
    void no_sentence_holds_a_key() {
        Budget budget = Sample.with(
                TROUGHS,
                "way_label[emitter]=System one",
                "way_label[tape]=System two",
                "way_label[dripline]=System three",
                "material_label[emitter]=Part one",
                "material_label[tape]=Part two",
                "material_label[dripline]=Part three");
        for (String[] settings : List.of(
                new String[] {"install_wage=18 money/h"},
                new String[] {CLEAR},
                new String[] {"close_call_share=0.9 1"},
                new String[] {"target_uniformity=96 %"},
                new String[] {"target_uniformity=98.5 %"})) {
            Figures f = Figures.of(Sample.with(budget, settings));
            for (String id : List.of(
                    "irrigation_verdict",
                    "irrigation_depends",
                    "irrigation_flips",
                    "irrigation_uniformity_missed",
                    "irrigation_reason_evenness",
                    "irrigation_reason_pulses",
                    "partial_title",
                    "cause_title",
                    "flip_note")) {
                assertThat(f.text(id))
                        .as(id)
                        .doesNotContain("_")
                        .doesNotContainPattern("\\b(emitter|tape|dripline)\\b");
            }
        }
    }

    /** The trough house with every file changed. */
    private Budget house(UnaryOperator<String> change) throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                String text = Files.readString(file, StandardCharsets.UTF_8);
                Files.writeString(folder.resolve(file.getFileName()), change.apply(text), StandardCharsets.UTF_8);
            }
        }
        Faults faults = new Faults();
        Budget budget = Sample.read(folder, faults);
        assertThat(faults.faults()).isEmpty();
        return budget;
    }
}
