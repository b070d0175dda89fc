package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.scenario.CsvTable;
import org.benchmetre.scenario.Deciding;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.ScenarioReader;
import org.benchmetre.scenario.ScenarioTables;
import org.benchmetre.scenario.Settings;
import org.benchmetre.scenario.TableForm;

/** Loans alone, over two years of months and thirty years: read from the text of {@code loans.csv} and of {@code farm.csv}. */
final class LoanPlan {

    static final String FILE = FarmTable.LOANS.file();
    static final List<TableForm> FORMS = List.of(FarmTables.form(FILE));

    private static final int MONTHS = 24;
    private static final int YEARS = 30;
    private static final ScenarioReader READER =
            new ScenarioReader(FORMS, LoanPlan::build, FILE, "strawberry", CropProfile::exists, Deciding.NONE);

    private LoanPlan() {}

    private static Budget build(Structure structure) {
        BudgetBuilder b = new BudgetBuilder(structure);
        FarmEntries entries = new FarmEntries(CropProfile.of(structure));
        Loans loans = new Loans(b, new SecurityKinds(b, entries));
        new LoanSchedule(
                b,
                entries,
                loans,
                loans.amount,
                numbers(b, "plan_month", 1, MONTHS, Unit.ONE),
                numbers(b, "plan_year_number", 0, YEARS, Unit.parse("a")));
        return b.build();
    }

    private static Line numbers(BudgetBuilder b, String id, int from, int to, Unit unit) {
        List<String> keys =
                IntStream.rangeClosed(from, to).mapToObj(Integer::toString).toList();
        Axis axis = Axis.periods(id, "Period", keys);
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, id);
        return s.line(
                id,
                "Number",
                unit,
                new Rows(
                        axis,
                        IntStream.rangeClosed(from, to)
                                .mapToObj(n -> org.benchmetre.budget.Formulas.number(n, unit))
                                .toList()),
                "plain counting");
    }

    private record Files(String loans, String farm, Faults faults) implements ScenarioTables {
        @Override
        public String name() {
            return "loans";
        }

        @Override
        public CsvTable table(String file) {
            String text = file.equals(FILE) ? loans : farm;
            return text.isEmpty() ? CsvTable.none(file) : CsvTable.parse(text, file, faults);
        }
    }

    /** What is read of files; empty after a fault. */
    static Optional<Budget> read(Faults faults, String loans, String farm, Settings settings) {
        return READER.read(new Files(loans, farm, faults), new ScenarioReader.Over(Optional.empty(), settings), faults);
    }

    /** The plan of a file that has no fault. */
    static Budget of(String header, String... rows) {
        return with("", header, rows);
    }

    /** The same with single entries. */
    static Budget with(String farm, String header, String... rows) {
        Faults faults = new Faults();
        Optional<Budget> read = read(faults, text(header, rows), farm, new Settings(List.of()));
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        return read.orElseThrow();
    }

    /** What is wrong with a file. */
    static List<String> faults(String header, String... rows) {
        Faults faults = new Faults();
        read(faults, text(header, rows), "", new Settings(List.of()));
        return faults.faults().stream().map(Fault::message).toList();
    }

    static String text(String header, String... rows) {
        return header.isEmpty() ? "" : header + "\n" + String.join("\n", rows) + "\n";
    }
}
