package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A price list may name salts, micronutrients and acids, by the pack, in any unit that converts. */
class PricesOfSaltsTest {

    @TempDir
    private Path folder;

    private Figures with(String... rows) throws IOException, ScenarioException {
        Path list = folder.resolve("prices.csv");
        Files.writeString(
                list,
                "item,pack,unit,price,price_year,source\n" + String.join("\n", rows) + "\n",
                StandardCharsets.UTF_8);
        return Benchmetre.read(Sample.TROUGH_HOUSE, Optional.of(list), List.of())
                .figures();
    }

    @Test
    void a_pack_is_priced_by_the_kilogram_or_litre() throws Exception {
        Figures f = with(
                "calcium_nitrate,25,kg,20,2025,a quotation",
                "monopotassium_phosphate,50,lb,60,2026,",
                "micronutrient,1,kg,15.5,2026,",
                "nitric_acid,200,L,300,2024,");
        assertThat(f.number("calcium_nitrate_price")).isEqualTo(0.8);
        assertThat(f.number("monopotassium_phosphate_price")).isCloseTo(60 / 22.6796185, within(1e-12));
        assertThat(f.number("micronutrient_price")).isEqualTo(15.5);
        assertThat(f.number("nitric_acid_price")).isEqualTo(1.5);
        assertThat(f.number("feed_price_year")).isEqualTo(2024);
        assertThat(f.budget()
                        .given(f.budget().line("calcium_nitrate_price"))
                        .get(0)
                        .source())
                .isEqualTo("a quotation");
    }

    @Test
    void another_kind_of_unit_is_refused() {
        assertThatThrownBy(() -> with("calcium_nitrate,25,m,20,2025,"))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("kg, or a unit that converts to it");
    }

    @Test
    void a_price_is_held_against_the_bounds_of_prices() {
        assertThatThrownBy(() -> with("calcium_nitrate,25,kg,-1,2025,"))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("-1");
    }
}
