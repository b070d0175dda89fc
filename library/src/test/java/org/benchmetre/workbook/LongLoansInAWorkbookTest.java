package org.benchmetre.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.Benchmetre;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Five loans: the workbook has a row for each of 360 months where one of them is that long, and not else. */
class LongLoansInAWorkbookTest {

    private static final String HEADER = "loan,label,amount,rate,term,payments_per_year";
    private static final List<String> SHORT = List.of(
            "one,First loan,1000,6 %,5,12",
            "two,Second loan,2000,7 %,4,12", "three,Third loan,3000,8 %,3,4", "four,Fourth loan,4000,5 %,2,1");
    private static final String FIVE_YEARS = "five,Fifth loan,5000,6 %,5,12";
    private static final String THIRTY_YEARS = "five,Fifth loan,5000,6 %,30,12";

    @TempDir
    private Path folder;

    private Budget house(String name, String last) throws IOException, ScenarioException {
        Path house = Files.createDirectory(folder.resolve(name));
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file : files.toList()) {
                Files.copy(file, house.resolve(file.getFileName()));
            }
        }
        List<String> rows = new ArrayList<>(List.of(HEADER));
        rows.addAll(SHORT);
        rows.add(last);
        Files.write(house.resolve("loans.csv"), rows);
        return Benchmetre.read(house).budget();
    }

    /** Rows of the sheet from the first payment to the last that has anything in the column of its number. */
    private static long rows(Budget budget) throws IOException {
        Written written = Written.of(budget, FarmWorkbook.setup(budget));
        Spot first = written.plan().spot(budget.line("loan_payment_number"), 0);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written.bytes()))) {
            XSSFSheet sheet = workbook.getSheet(first.sheet());
            int row = first.row();
            while (sheet.getRow(row) != null && sheet.getRow(row).getCell(first.column()) != null) {
                row++;
            }
            return row - first.row();
        }
    }

    @Test
    void a_row_for_each_month_of_the_longest_loan() throws Exception {
        assertThat(rows(house("short", FIVE_YEARS))).isEqualTo(60);
        assertThat(rows(house("long", THIRTY_YEARS))).isEqualTo(360);
    }

    @Test
    void each_loan_is_paid_back_in_its_own_last_month() throws Exception {
        Figures f = Figures.of(house("paid", THIRTY_YEARS));
        Line owed = f.budget().line("loan_balance");
        assertThat(f.number("loan_balance", "five", "359")).isPositive();
        for (String key : List.of("one", "two", "three", "four", "five")) {
            assertThat(f.number("loan_balance", key, "360")).as(key).isZero();
            assertThat(f.number("loan_principal", key, "1")).as(key).isPositive();
        }
        assertThat(owed.axes().get(1).size()).isEqualTo(360);
    }

    @Test
    void libre_office_opens_it_and_agrees() throws Exception {
        LibreOfficeReferee.require();
        Budget budget = house("opened", THIRTY_YEARS);
        LibreOfficeReferee referee = new LibreOfficeReferee(Files.createDirectory(folder.resolve("referee")));
        referee.book(budget, FarmWorkbook.setup(budget)).add(Map.of());
        assertThat(referee.differences()).isEmpty();
    }
}
