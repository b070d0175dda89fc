package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;

/** What funds are used for beside the parts. */
class UsesTest {

    private static final OneSection SECTION = new OneSection(UsesTest::build);
    private static final String HEAD = "use,label,kind,amount,month,supplier,quoted,valid_until,security,source\n";
    private static final String SITE =
            HEAD + "site,Levelling the site,land,12000,-3,Earth works,2026-03-01,2026-06-30,0.6,quotation 118\n"
                    + "permits,,,1500,,,,,,\n"
                    + "tractor,Small tractor,equipment,9000,-1,,,,,dealer\n";

    /** The shares of kinds stand for those that lenders count: half of equipment, a tenth of each other kind. */
    private static void build(BudgetBuilder b) {
        Uses uses = new Uses(b);
        Axis kinds = Axis.rows("kind", "Kind", Uses.KINDS, 0);
        ScheduleBuilder s = b.schedule("Sheet", "Kinds");
        Line keys = s.textLine("kind_key", "Kind", rows(kinds, key -> text(key)));
        Line shares = s.line(
                "kind_share",
                "Share",
                ONE,
                rows(kinds, key -> number(key.equals("equipment") ? 0.5 : 0.1, ONE)),
                "test");
        b.schedule("Sheet", "Counted").line("use_counted", "Counted", ONE, uses.countedShare(keys, shares));
    }

    private static Formula rows(Axis kinds, Function<String, Formula> cell) {
        return new Rows(kinds, kinds.keys().stream().map(cell).toList());
    }

    private static List<String> texts(Budget budget, String line) {
        return budget.given(budget.line(line)).stream().map(Given::text).toList();
    }

    private static List<Double> numbers(Budget budget, String line) {
        return budget.given(budget.line(line)).stream().map(Given::number).toList();
    }

    @Test
    void a_use_has_its_amount_month_and_quotation_and_defaults_where_nothing_is_said() {
        Budget budget = SECTION.read(Uses.FILE, SITE);
        assertThat(texts(budget, "use_key")).containsExactly("site", "permits", "tractor", "", "");
        assertThat(texts(budget, "use_label")).startsWith("Levelling the site", "Permits", "Small tractor");
        assertThat(texts(budget, "use_kind")).startsWith("land", "other", "equipment");
        assertThat(numbers(budget, "use_amount")).containsExactly(12000.0, 1500.0, 9000.0, 0.0, 0.0);
        assertThat(numbers(budget, "use_month")).containsExactly(-3.0, 0.0, -1.0, 0.0, 0.0);
        assertThat(texts(budget, "use_supplier")).startsWith("Earth works", "");
        assertThat(texts(budget, "use_quoted")).startsWith("2026-03-01", "");
        assertThat(texts(budget, "use_valid_until")).startsWith("2026-06-30", "");
        assertThat(texts(budget, "use_source")).startsWith("quotation 118", "", "dealer");
    }

    /** The site has its own 0.6; a blank share is that of its kind; a spare row counts nothing. */
    @Test
    void a_blank_security_is_the_share_of_its_kind() {
        Budget budget = SECTION.read(Uses.FILE, SITE);
        Figures f = Figures.of(budget);
        Line counted = budget.line("use_counted");
        assertThat(IntStream.range(0, counted.size()).mapToDouble(row -> f.number(counted, row)))
                .containsExactly(0.6, 0.1, 0.5, 0.0, 0.0);
    }

    @Test
    void without_the_file_all_rows_are_spare() {
        Budget budget = SECTION.read("farm.csv", "line,value,unit\nplan_title,Test,\n");
        assertThat(numbers(budget, "use_amount")).containsExactly(0.0, 0.0);
        assertThat(Figures.of(budget).troubles()).isEmpty();
    }

    @Test
    void what_is_written_reads_as_the_same() {
        Budget budget = SECTION.read(Uses.FILE, SITE);
        Budget again = SECTION.again(budget);
        assertThat(cells(again)).isEqualTo(cells(budget)).isNotEmpty();
    }

    private static Map<String, List<String>> cells(Budget budget) {
        return budget.lines().stream()
                .filter(line -> budget.entry(line).isPresent())
                .collect(Collectors.toMap(
                        Line::id,
                        line -> budget.given(line).stream()
                                .map(given -> given.filled() + " " + given.number() + " " + given.text())
                                .toList()));
    }

    @Test
    void dates_are_year_month_day() {
        assertThat(SECTION.faults(Uses.FILE, "use,amount,quoted\nsite,1,31.3.2026\n"))
                .containsExactly("funds.csv, row 2, column quoted: found \"31.3.2026\", expected a date written"
                        + " year-month-day, such as 2026-03-31, of the years 1990 to 2100, for Quoted"
                        + " (use_quoted[site]).");
    }

    @Test
    void a_quotation_does_not_end_before_it_is_made() {
        assertThat(SECTION.faults(Uses.FILE, "use,amount,quoted,valid_until\nsite,1,2026-03-31,2026-03-30\n"))
                .containsExactly(
                        "funds.csv, row 2, column valid_until: found \"2026-03-30\", expected a date not before"
                                + " 2026-03-31 of Quoted for Valid until (use_valid_until[site]).");
        assertThat(SECTION.faults(Uses.FILE, "use,amount,quoted,valid_until\nsite,1,2026-03-31,2026-03-31\n"))
                .isEmpty();
    }

    @Test
    void amount_month_kind_and_security_have_bounds() {
        assertThat(SECTION.faults(
                        Uses.FILE,
                        "use,amount,month,kind,security\nsite,-1,1,garden,1.5\nroad,,0.5,house,0\npower,2,,land,\n"))
                .containsExactly(
                        "funds.csv, row 2, column kind: found \"garden\", expected one of land, house, equipment, growing,"
                                + " plants, other for Kind (use_kind[site]).",
                        "funds.csv, row 2, column amount: found \"-1 USD\", expected a number from 0 to 1000000000 USD for"
                                + " Amount (use_amount[site]).",
                        "funds.csv, row 2, column month: found \"1 mo\", expected a whole number from -120 to 0 mo for"
                                + " Month paid (use_month[site]).",
                        "funds.csv, row 2, column security: found \"1.5\", expected a number above 0 and of at most 1 for"
                                + " Security, share (use_security[site]).",
                        "funds.csv, row 3, column amount: found nothing, expected a number from 0 to 1000000000 USD for"
                                + " Amount (use_amount[road]).",
                        "funds.csv, row 3, column month: found \"0.5 mo\", expected a whole number from -120 to 0 mo for"
                                + " Month paid (use_month[road]).",
                        "funds.csv, row 3, column security: found \"0\", expected a number above 0 and of at most 1 for"
                                + " Security, share (use_security[road]).");
    }

    @Test
    void a_file_without_amounts_is_one_fault() {
        assertThat(SECTION.faults(Uses.FILE, "use,label\nsite,Site\n"))
                .singleElement()
                .asString()
                .contains("amount");
    }

    @Test
    void sixty_uses_are_the_most() {
        String rows =
                IntStream.rangeClosed(1, 60).mapToObj(n -> "use_" + n + ",1\n").collect(Collectors.joining());
        assertThat(SECTION.faults(Uses.FILE, "use,amount\n" + rows)).isEmpty();
        assertThat(SECTION.faults(Uses.FILE, "use,amount\n" + rows + "use_61,1\n"))
                .containsExactly(
                        "funds.csv: found 61 rows, expected at most 60, for each row is worked out in many tables.");
    }
}
