package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of many irrigation systems, all are priced and ranked, but doubtful entries are looked at for the first of the table only. */
class ManyWaysTest {

    private static final String LIMIT = "first 20 systems of the table are looked at";

    @TempDir
    private Path folder;

    /** The trough house, its three ways and as many more of the same tape. */
    private Budget house(int more) throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                String text = Files.readString(file, StandardCharsets.UTF_8);
                String tape = text.lines()
                        .filter(line -> line.startsWith("tape,Two"))
                        .findFirst()
                        .orElse("");
                String ways = IntStream.rangeClosed(1, tape.isEmpty() ? 0 : more)
                        .mapToObj(i -> tape.replace("tape,Two", "tape_" + i + ",Two") + "\n")
                        .collect(Collectors.joining());
                Files.writeString(folder.resolve(file.getFileName()), text + ways, StandardCharsets.UTF_8);
            }
        }
        Faults faults = new Faults();
        Budget budget = Sample.read(folder, faults);
        assertThat(faults.faults()).isEmpty();
        return budget;
    }

    private static List<String> addresses(Budget budget) {
        Figures f = Figures.of(budget);
        Line address = budget.line("flip_address");
        return IntStream.range(0, address.size())
                .mapToObj(row -> f.text(address, row))
                .toList();
    }

    private static String note(Budget budget) {
        return budget.schedules().stream()
                .filter(schedule -> schedule.lines().contains(budget.line("flip_value")))
                .map(Schedule::note)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void ways_after_the_twentieth_have_no_doubtful_entries_and_table_and_answer_say_so() throws IOException {
        Budget budget = house(18);
        assertThat(addresses(budget))
                .contains("way_failed_per_year[tape_17]")
                .doesNotContain("way_failed_per_year[tape_18]", "way_failed_per_year[spare_1]");
        assertThat(note(budget)).contains(LIMIT);
        assertThat(budget.line("way_yearly_cost_per_metre").axes().get(0).filled())
                .isEqualTo(21);
    }

    @Test
    void twenty_ways_all_have_their_doubtful_entries_and_nothing_is_said() throws IOException {
        Budget budget = house(17);
        assertThat(addresses(budget)).contains("way_failed_per_year[tape_17]");
        assertThat(note(budget)).doesNotContain(LIMIT);
    }
}
