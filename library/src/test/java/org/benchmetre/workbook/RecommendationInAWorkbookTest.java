package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
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
        Figures figures = Benchmetre.read(Sample.TROUGH_HOUSE).figures();
        double flip = figures.number("flip_value", "material_life_tape");
        double now = figures.number("material_life", "tape");
        assertThat(flip).isBetween(0.5, now);

        List<Seen> seen = recalculated(figures, now, flip * (1 + ASIDE), flip * (1 - ASIDE));
        assertThat(seen.get(0).recommended()).isEqualTo("Two strips of drip tape");
        assertThat(seen.get(0).state()).startsWith("as filled on these entries");
        assertThat(seen.get(1).recommended()).isEqualTo("Two strips of drip tape");
        assertThat(seen.get(1).state()).startsWith("out of date");
        assertThat(seen.get(2).recommended()).isEqualTo("In-line dripline");
        assertThat(seen.get(2).sentence()).startsWith("In-line dripline: least yearly cost");
        assertThat(seen.get(2).state()).startsWith("out of date");
    }

    private List<Seen> recalculated(Figures figures, double... lives) throws IOException {
        LibreOfficeReferee referee = new LibreOfficeReferee(folder, figures.budget());
        List<Path> files = new ArrayList<>();
        for (double life : lives) {
            files.add(typed(figures, life, folder.resolve("life" + files.size() + ".xlsx")));
        }
        referee.recalculate(files);
        List<Seen> seen = new ArrayList<>();
        for (Path file : files) {
            try (XSSFWorkbook workbook = LibreOfficeReferee.open(referee.recalculated(file))) {
                seen.add(new Seen(
                        text(workbook, figures.budget(), "recommended_label"),
                        text(workbook, figures.budget(), "irrigation_recommendation"),
                        text(workbook, figures.budget(), "flip_state")));
            }
        }
        return seen;
    }

    private static Path typed(Figures figures, double life, Path file) throws IOException {
        Budget budget = figures.budget();
        Line line = budget.line("material_life");
        Map<Integer, Given> tape = Map.of(line.axes().get(0).indexOf("tape"), Given.number(life, line.unit()));
        byte[] written = new WorkbookWriter().bytes(figures);
        try (XSSFWorkbook workbook = Agreement.typed(written, budget, Map.of(line, tape));
                OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        }
        return file;
    }

    private static String text(XSSFWorkbook workbook, Budget budget, String id) {
        Spot spot = Plan.of(budget).spot(budget.line(id), 0);
        return Agreement.cached(
                        workbook.getSheet(spot.sheet()).getRow(spot.row()).getCell(spot.column()))
                .toString();
    }
}
