package org.benchmetre.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/**
 * The spreadsheet library's own evaluator as a referee: changes are typed into the written file and every formula is recalculated.
 * Two copies of the file are opened, whatever the number of changes, and worked through side by side.
 */
public final class PoiReferee {

    private static final int SIDE_BY_SIDE = 2;

    private final Budget budget;
    private final byte[] written;
    private final List<Map<Line, Map<Integer, Given>>> cases = new ArrayList<>();

    /**
     * Writes the workbook of a budget.
     *
     * @param budget the budget
     * @throws IOException when the workbook cannot be made
     */
    public PoiReferee(Budget budget) throws IOException {
        this(budget, new WorkbookWriter().bytes(Figures.of(budget)));
    }

    /** Takes a workbook that was written from the budget and perhaps tampered with. */
    PoiReferee(Budget budget, byte[] written) {
        this.budget = budget;
        this.written = written;
    }

    /**
     * Adds a case.
     *
     * @param changes what is typed in; may be empty
     * @return this
     */
    public PoiReferee add(Map<Line, Map<Integer, Given>> changes) {
        cases.add(changes);
        return this;
    }

    /**
     * Recalculates all cases and compares them with the engine's figures for the same changes.
     *
     * @return differences, empty when all agree
     */
    public List<String> differences() {
        return IntStream.range(0, Math.min(SIDE_BY_SIDE, cases.size()))
                .parallel()
                .mapToObj(this::share)
                .flatMap(List::stream)
                .toList();
    }

    /** Every second case, in one workbook: typed, compared, and brought back. */
    private List<String> share(int first) {
        List<String> found = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            Agreement agreement = Agreement.of(workbook, budget);
            Recalculation recalculation = new Recalculation(workbook);
            for (int i = first; i < cases.size(); i += SIDE_BY_SIDE) {
                Map<Line, Map<Integer, Given>> changes = cases.get(i);
                Typing.of(budget, changes).forEach(typing -> typing.into(workbook));
                recalculation.startAgain();
                String which = "case " + i + ": ";
                agreement.differences(recalculation::value, Figures.of(budget.with(changes))).stream()
                        .map(which::concat)
                        .forEach(found::add);
                Typing.back(budget, changes).forEach(typing -> typing.into(workbook));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }
}
