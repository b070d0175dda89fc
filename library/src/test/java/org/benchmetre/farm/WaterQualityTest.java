package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.checks.PublishedFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The classes of raw water against every row of the published table, its limits included as the table says. */
class WaterQualityTest {

    /** Rain water: hardness and dissolved solids are then what is typed. */
    private static final Budget SAMPLE = Sample.onRainWater();

    private static final List<String> CLASSES = List.of("slight", "moderate", "severe");

    static List<CSVRecord> bands() throws IOException {
        return PublishedFiles.rows("clogging_bands.csv");
    }

    private static Figures with(String cause, double value) {
        return new Cells(SAMPLE).number("water_" + cause, "", value).figures();
    }

    private static String classOf(String cause, double value) {
        return Cells.text(with(cause, value), "water_cause_class", cause);
    }

    private static String limitClass(CSVRecord band, String limit, int neighbour) {
        int own = CLASSES.indexOf(band.get("class"));
        return CLASSES.get(band.get(limit).equals("yes") ? own : own + neighbour);
    }

    @ParameterizedTest
    @MethodSource("bands")
    void everyBandHoldsFromItsLowerToItsUpperLimit(CSVRecord band) {
        String cause = band.get("cause");
        boolean bottom = band.get("low").isEmpty();
        boolean top = band.get("high").isEmpty();
        double low = bottom ? 0 : Double.parseDouble(band.get("low"));
        double high = top ? 2 * low : Double.parseDouble(band.get("high"));
        assertThat(band.get("source")).isNotBlank();
        assertThat(classOf(cause, (low + high) / 2)).isEqualTo(band.get("class"));
        assertThat(classOf(cause, low)).isEqualTo(bottom ? "slight" : limitClass(band, "low_included", -1));
        assertThat(classOf(cause, high)).isEqualTo(top ? "severe" : limitClass(band, "high_included", 1));
        if (!bottom) {
            assertThat(classOf(cause, low * 1.001)).isEqualTo(band.get("class"));
        }
        if (!top) {
            assertThat(classOf(cause, high * 0.999)).isEqualTo(band.get("class"));
        }
    }

    @Test
    void everyCauseOfTheTableIsGradedAndTheBandsCoverAllThree() throws IOException {
        List<String> causes = SAMPLE.line("water_cause_class").axes().get(0).keys();
        assertThat(bands()).hasSize(3 * causes.size());
        assertThat(bands().stream().map(band -> band.get("cause")).distinct().toList())
                .containsExactlyInAnyOrderElementsOf(causes);
    }

    @Test
    void theWorstCauseIsTheClassOfTheWater() {
        Cells clean = new Cells(SAMPLE);
        for (String cause : SAMPLE.line("water_cause_class").axes().get(0).keys()) {
            clean.number("water_" + cause, "", 0);
        }
        assertThat(clean.figures().text("water_worst_class")).isEqualTo("slight");
        assertThat(Cells.text(clean.figures(), "water_cause_advice", "iron")).isEqualTo("nothing");
        clean.number("water_iron", "", 0.1);
        assertThat(clean.figures().text("water_worst_class")).isEqualTo("moderate");
        assertThat(Cells.text(clean.figures(), "water_cause_advice", "iron")).contains("filter");
        clean.number("water_bacteria", "", 50_001);
        assertThat(clean.figures().text("water_worst_class")).isEqualTo("severe");
    }

    @Test
    void aSevereCauseIsWarnedOfByName() {
        assertThat(Cells.text(with("iron", 1.5), "water_severe_warning", "iron"))
                .isEmpty();
        Figures severe = with("iron", 1.51);
        assertThat(Cells.text(severe, "water_severe_warning", "iron")).contains("treat it before the house");
        assertThat(Cells.text(severe, "water_severe_warning", "ph")).isEmpty();
    }
}
