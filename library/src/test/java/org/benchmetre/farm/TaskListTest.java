package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a task list is named with file, row and column. */
class TaskListTest {

    private static final String HEAD =
            "task,group,driver,hours,per_hour,times,times_unit,pattern,jan,feb,mar,wage_class,input_cost,price_year,source";

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private Budget budgetOf(String... rows) throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        Files.delete(folder.resolve("tasks.csv"));
        if (rows.length > 0) {
            Files.writeString(folder.resolve("tasks.csv"), HEAD + "\n" + String.join("\n", rows) + "\n");
        }
        return Sample.read(folder, faults);
    }

    private List<String> faultsOf(String... rows) throws IOException {
        budgetOf(rows);
        return faults.faults().stream().map(Fault::message).toList();
    }

    @Test
    void withoutAFileThereIsPickingAndPackingAndFourEmptyRows() throws IOException {
        Budget budget = budgetOf();
        Figures f = Figures.of(budget);
        assertThat(faults.faults()).isEmpty();
        assertThat(budget.line("task_driver").size()).isEqualTo(4);
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("hired_hours_total"))
                .isPositive()
                .isEqualTo(f.number("picking_hours") + f.number("packing_hours"));
    }

    @Test
    void sharesThatDoNotAddToOneAreAFaultWithTheirSum() throws IOException {
        assertThat(faultsOf("care,Crop care,plant_count,,200,1,crop,,0.5,0.25,0.2,general,,,mine"))
                .containsExactly("tasks.csv, row 2, column jan: found shares of the year that add up to 0.95,"
                        + " expected shares of the year that add up to 1 for Share of the year in each month"
                        + " (task_month_share[care;jan]).");
    }

    @Test
    void sharesWithSevenDigitsAddToOne() throws IOException {
        assertThat(faultsOf(
                        "care,Crop care,plant_count,,200,1,crop,months,0.3333333,0.3333333,0.3333333,general,,,mine"))
                .isEmpty();
    }

    @Test
    void aPatternOfMonthsWantsSharesAndSharesWantNoOtherPattern() throws IOException {
        assertThat(faultsOf(
                        "care,Crop care,plant_count,,200,1,crop,months,,,,general,,,mine",
                        "more,Crop care,plant_count,,200,1,crop,even,1,,,general,,,mine"))
                .containsExactly(
                        "tasks.csv, row 2, column jan: found no share in any month, expected shares of months that add up"
                                + " to 1 for Share of the year in each month (task_month_share[care;jan]).",
                        "tasks.csv, row 3, column pattern: found \"even\" beside shares of months, expected months or"
                                + " nothing for Spread over months (task_pattern[more]).");
    }

    @Test
    void anUnknownDriverIsAFaultThatNamesTheNearest() throws IOException {
        assertThat(faultsOf("care,Crop care,plant_cuont,,200,1,crop,,,,,general,,,mine"))
                .hasSize(1)
                .allMatch(message -> message.startsWith("tasks.csv, row 2, column driver: found \"plant_cuont\"")
                        && message.contains("did you mean plant_count"));
    }

    @Test
    void hoursOrARateIsGivenNotBothAndNotNeither() throws IOException {
        assertThat(faultsOf(
                        "both,Crop care,plant_count,0.1,200,1,crop,,,,,general,,,mine",
                        "none,Crop care,plant_count,,,1,crop,,,,,general,,,mine",
                        "bought,Crop protection,house_area,,,1,a,,,,,,0.5,2026,mine"))
                .containsExactly(
                        "tasks.csv, row 2, column per_hour: found \"200 driver/h\", expected nothing here, as hours are"
                                + " given, for Drivers an hour (task_drivers_per_hour[both]).",
                        "tasks.csv, row 3, column hours: found nothing, expected hours, or a rate in per_hour, or a"
                                + " price in input_cost for Hours a driver (task_hours_per_driver[none]).");
    }

    @Test
    void fruitOfAYearIsNotCountedByCrop() throws IOException {
        assertThat(faultsOf("carry,Harvest,yield_kg,,200,1,crop,yield,,,,general,,,mine"))
                .containsExactly(
                        "tasks.csv, row 2, column times_unit: found \"crop\", expected a, as yield_kg is the fruit"
                                + " of a whole year, for Times per (task_times_unit[carry]).");
    }

    @Test
    void aPriceWantsItsYearAndAWordThatIsNoClassIsNamed() throws IOException {
        assertThat(faultsOf("hive,Pollination,one,,,3,crop,,,,,famly,85,,mine"))
                .hasSize(2)
                .anyMatch(message -> message.contains("column price_year: found nothing"))
                .anyMatch(message -> message.contains("did you mean family"));
    }

    @Test
    void aColumnThatNothingReadsIsAWarning() throws IOException {
        budgetOf("care,Crop care,plant_count,,200,1,crop,,,,,general,,,mine");
        assertThat(faults.warnings()).isEmpty();
        Path tasks = folder.resolve("tasks.csv");
        Files.writeString(tasks, Files.readString(tasks).replace("wage_class", "wage_clas"));
        Sample.read(folder, faults);
        assertThat(faults.warnings())
                .anyMatch(warning -> warning.message().contains("wage_clas")
                        && warning.message().contains("did you mean wage_class"));
    }
}
