package org.benchmetre.farm.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.FarmBudget;
import org.benchmetre.farm.input.FarmEntries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Profiles say nothing of lines that do not exist, nothing without a source, and nothing that the entry itself would refuse. */
class CropProfileTest {

    private static final List<String> TABLES = List.of(
            "entries",
            "months",
            "facts",
            "ions",
            "salts",
            "acids",
            "fuels",
            "regimes",
            "water",
            "unit_prices",
            "tax_classes");

    @ParameterizedTest
    @ValueSource(strings = {"strawberry", "lettuce"})
    void every_row_names_an_entry(String crop) {
        Budget budget = budget(crop);
        List<String> lines = CropProfile.of(crop).lines();
        assertThat(lines)
                .hasSizeGreaterThan(200)
                .allSatisfy(id -> assertThat(budget.find(id))
                        .as(id)
                        .hasValueSatisfying(
                                line -> assertThat(budget.entry(line)).isPresent()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"strawberry", "lettuce"})
    void every_row_has_a_source(String crop) {
        CropProfile profile = CropProfile.of(crop);
        for (String table : TABLES) {
            assertThat(profile.rows(table))
                    .as(table)
                    .isNotEmpty()
                    .allSatisfy(row ->
                            assertThat(row.text("source")).as(row.place()).isNotBlank());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"strawberry", "lettuce"})
    void every_default_lies_within_the_bounds_of_its_entry(String crop) {
        Budget budget = budget(crop);
        for (String id : CropProfile.of(crop).lines()) {
            Line line = budget.line(id);
            Entry entry = budget.entry(line).orElseThrow();
            if (line.kind() == Kind.TEXT) {
                assertThat(entry.form().isFit(entry.usualText())).as(id).isTrue();
            } else {
                budget.given(line)
                        .forEach(given -> assertThat(given.number())
                                .as(id)
                                .isBetween(
                                        entry.bounds().least(), entry.bounds().most()));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"strawberry", "lettuce"})
    void every_range_names_a_line_and_has_a_source(String crop) {
        Budget budget = budget(crop);
        assertThat(CropProfile.of(crop).rows("ranges")).allSatisfy(row -> {
            assertThat(budget.find(row.text("line"))).as(row.place()).isPresent();
            assertThat(row.text("source")).as(row.place()).isNotBlank();
        });
    }

    @Test
    void what_a_crop_says_stands_in_place_of_what_all_crops_have() {
        CropProfile leaves = CropProfile.of("lettuce");
        assertThat(leaves.needed("bench_width").typical()).isEqualTo("0.15");
        assertThat(CropProfile.of("strawberry").needed("bench_width").typical()).isEqualTo("0.3");
        assertThat(leaves.rows("salts")).isEqualTo(CropProfile.of("strawberry").rows("salts"));
    }

    @Test
    void a_profile_is_asked_for_by_its_crop_alone() {
        assertThat(CropProfile.exists("strawberry")).isTrue();
        assertThat(List.of("common", "radish", "../strawberry", "")).noneMatch(CropProfile::exists);
        assertThatThrownBy(() -> CropProfile.of("radish"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("There is no profile of a crop 'radish'.");
    }

    @Test
    void what_a_profile_does_not_say_is_named() {
        CropProfile profile = CropProfile.of("strawberry");
        assertThatThrownBy(() -> profile.fact("colour"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("The profile of strawberry does not say colour.");
        EntryBuilder nothing =
                new BudgetBuilder("Test", "EUR").schedule("Sheet", "Table").entry("colour", "x", Unit.ONE);
        assertThatThrownBy(() -> new FarmEntries(profile).add(nothing))
                .isInstanceOf(FormulaException.class)
                .hasMessage("Entry colour has no documented default in the profile of strawberry.");
    }

    @Test
    void a_default_outside_its_range_is_a_fault_of_the_profile() {
        ProfileRow row = new ProfileRow(
                "here", Map.of("low", "2", "typical", "1", "high", "3", "unit", "m", "source", "invented"));
        assertThatThrownBy(() -> Documented.of(row).in(Unit.METRE))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("The documented default 1 lies outside 2.0 to 3.0.");
    }

    @Test
    void no_section_names_a_crop() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java", "org", "benchmetre", "farm"))) {
            List<Path> sources = files.filter(file ->
                            file.toString().endsWith(".java") && !file.endsWith(Path.of("farm", "FarmBudget.java")))
                    .toList();
            assertThat(sources).hasSizeGreaterThan(100);
            for (Path source : sources) {
                assertThat(Files.readString(source, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT))
                        .as(source.toString())
                        .doesNotContain("strawberr");
            }
        }
    }

    private static Budget budget(String crop) {
        return FarmBudget.of(new Structure("Test", "EUR", crop, Map.of()));
    }
}
