package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table with more rows than a farm has is one fault, and reading stops there. */
class RowLimitsTest {

    @TempDir
    Path folder;

    @BeforeEach
    void copySample() throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    private List<String> faultsWith(String file, int rows) throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve(file));
        List<String> many = new ArrayList<>(lines.subList(0, 1));
        String row = lines.get(1);
        String rest = row.substring(row.indexOf(','));
        IntStream.range(0, rows).forEach(i -> many.add("row_" + i + rest));
        Files.write(folder.resolve(file), many);
        Faults faults = new Faults();
        Sample.read(folder, faults);
        return faults.faults().stream()
                .map(Fault::message)
                .filter(fault -> fault.contains(" rows, expected"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "materials.csv, 2000",
        "irrigation.csv, 200",
        "tasks.csv, 500",
        "plant_stock.csv, 60",
        "channels.csv, 60"
    })
    void one_row_more_than_the_limit_is_one_fault_that_names_it(String file, int most) throws IOException {
        assertThat(faultsWith(file, most + 1))
                .containsExactly(file + ": found " + (most + 1) + " rows, expected at most " + most
                        + ", for each row is worked out in many tables.");
    }

    @Test
    void as_many_rows_as_the_limit_are_no_fault() throws IOException {
        assertThat(faultsWith("channels.csv", 60)).isEmpty();
    }

    @Test
    void a_hundred_thousand_rows_are_told_at_once() throws IOException {
        assertThat(faultsWith("materials.csv", 100_000))
                .containsExactly(
                        "materials.csv: found more than 10000 rows, expected at most 2000, for each row is worked out in"
                                + " many tables.");
    }

    @Test
    void more_groups_of_parts_than_can_be_summed_are_a_fault() throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(folder.resolve("materials.csv")));
        for (int i = 0; i < 61; i++) {
            lines.add("part_" + i + ",Part,Group " + i
                    + ",one,1,0,each,1,2,1,5,2026,0,0,10,5,15,a,0,0,0,0,,invented for the test");
        }
        Files.write(folder.resolve("materials.csv"), lines);
        Faults faults = new Faults();
        Sample.read(folder, faults);
        assertThat(faults.faults())
                .extracting(Fault::message)
                .anySatisfy(fault -> assertThat(fault)
                        .startsWith("materials.csv: found ")
                        .endsWith(" different groups, expected at most 60, for each group is summed in many tables."));
    }
}
