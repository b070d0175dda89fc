package org.benchmetre.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;

/**
 * The spreadsheet library's own evaluator as a referee: changes are typed into the written file and every formula is recalculated.
 * The file is opened once, whatever the number of changes.
 */
public final class PoiReferee {

    private final Written book;
    private final byte[] written;
    private final List<Map<Line, Map<Integer, Given>>> cases = new ArrayList<>();

    /**
     * Writes the workings of a budget.
     *
     * @param budget the budget
     * @throws IOException when the workbook cannot be made
     */
    public PoiReferee(Budget budget) throws IOException {
        this(budget, Setup.WORKINGS_ALONE);
    }

    /**
     * Writes the workbook of a budget.
     *
     * @param budget the budget
     * @param setup its pages
     * @throws IOException when the workbook cannot be made
     */
    public PoiReferee(Budget budget, Setup setup) throws IOException {
        book = Written.of(budget, setup);
        written = book.bytes();
    }

    /** Takes a workbook that was written from the budget and perhaps tampered with. */
    PoiReferee(Budget budget, byte[] written) {
        this.book = Written.bare(budget);
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
     * Recalculates all cases in one open workbook, each typed in, compared with the engine's figures for the same changes, and typed
     * back.
     *
     * @return differences, empty when all agree
     * @throws IOException when the workbook cannot be read
     */
    public List<String> differences() throws IOException {
        List<String> found = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            Agreement agreement = Agreement.of(workbook, book.plan());
            Figures figures = book.figures();
            Recalculation recalculation = new Recalculation(workbook);
            for (int i = 0; i < cases.size(); i++) {
                Map<Line, Map<Integer, Given>> changes = cases.get(i);
                Typing.of(book.plan(), changes).forEach(typing -> typing.into(workbook));
                recalculation.startAgain();
                String which = "case " + i + ": ";
                agreement.differences(recalculation::value, figures.typedOver(changes)).stream()
                        .map(which::concat)
                        .forEach(found::add);
                Typing.back(book.plan(), changes).forEach(typing -> typing.into(workbook));
            }
        }
        return found;
    }
}
