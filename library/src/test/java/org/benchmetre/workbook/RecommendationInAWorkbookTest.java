package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The recommendation in a workbook is live: a life of tape typed over across its flip value changes it. */
class RecommendationInAWorkbookTest {

    private static final double ASIDE = 0.001;

    @TempDir
    private Path folder;

    /** What a reader sees once a spreadsheet program has recalculated. */
    private record Seen(String recommended, String sentence, String state) {}

    @Test
    void typing_over_the_life_of_tape_across_its_flip_value_changes_the_recommendation()
            throws IOException, ScenarioException {
        LibreOfficeReferee.require();
        Figures figures = Benchmetre.read(Sample.TROUGH_HOUSE)
                .with("pulse_per_plant", "1000 mL/plant")
                .figures();
        double flip = figures.number("flip_value", "material_life_tape");
        double now = figures.number("material_life", "tape");
        assertThat(flip).isBetween(0.5, now);

        List<Seen> seen = recalculated(figures, now, flip * (1 + ASIDE), flip * (1 - ASIDE));
        assertThat(seen.get(0).recommended()).isEqualTo("Two strips of drip tape");
        assertThat(seen.get(0).state()).startsWith("as filled on these entries");
        assertThat(seen.get(1).recommended()).isEqualTo("Two strips of drip tape");
        assertThat(seen.get(1).state()).startsWith("out of date");
        assertThat(seen.get(2).recommended()).isEqualTo("In-line dripline");
        assertThat(seen.get(2).sentence()).startsWith("Irrigation: In-line dripline");
        assertThat(seen.get(2).state()).startsWith("out of date");
    }

    private List<Seen> recalculated(Figures figures, double... lives) throws IOException {
        LibreOfficeReferee referee = new LibreOfficeReferee(folder);
        LibreOfficeReferee.Book book = referee.book(figures.budget());
        Line line = figures.budget().line("material_life");
        int tape = line.axes().get(0).indexOf("tape");
        for (double life : lives) {
            book.add(Map.of(line, Map.of(tape, Given.number(life, line.unit()))));
        }
        referee.recalculate();
        return IntStream.range(0, lives.length)
                .mapToObj(i -> new Seen(
                        book.shown(i, "recommended_label", 0).toString(),
                        book.shown(i, "irrigation_verdict", 0).toString(),
                        book.shown(i, "flip_state", 0).toString()))
                .toList();
    }
}
