package org.benchmetre.budget.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells and instructions grow with the rows of a table, never with their square. No clock is looked at. */
class GrowthTest {

    /** Each step adds as many rows; a square would add more the second time, by a third at these sizes. */
    private static final double ALIKE = 1.02;

    /** More ways than have doubtful entries, with those of the sample. */
    private static final int LOOKED_AT = 20;

    /**
     * Of a part that carries outlets: label, key, life, its unit and range, price and its range, driver, ways, amount, yearly cost and
     * delivered price, whole units and units a driver.
     */
    private static final int COLUMNS_READ = 16;

    /** Instructions of a part that by way has its amount, whole units and costs. */
    private static final long EACH_WAY = 19;

    private static final List<String> DRIVERS =
            List.of("bench_metres", "plant_count", "outlet_count", "one", "line_metres", "house_area");

    private record Size(long cells, long instructions, long operands) {
        static Size of(Budget budget) {
            Program program = Unroller.program(budget);
            long operands = 0;
            for (int[] from : program.arguments()) {
                operands += from.length;
            }
            long cells = budget.lines().stream().mapToLong(Line::size).sum();
            return new Size(cells, program.operations().length, operands);
        }

        Size minus(Size other) {
            return new Size(cells - other.cells, instructions - other.instructions, operands - other.operands);
        }
    }

    @TempDir
    Path folder;

    /** The trough house with further parts and ways, the same every time; one part in four carries the key of a way. */
    private Budget house(int moreParts, int moreWays) throws IOException {
        Path house = Files.createDirectory(folder.resolve("house-" + moreParts + "-" + moreWays));
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                Files.copy(file, house.resolve(file.getFileName()));
            }
        }
        List<String> ways = new ArrayList<>(Files.readAllLines(house.resolve("irrigation.csv")));
        List<String> keys = new ArrayList<>(List.of("emitter", "tape", "dripline"));
        String tape = ways.get(2);
        for (int i = 0; i < moreWays; i++) {
            keys.add("tape_" + i);
            ways.add(tape.replaceFirst("tape,Two strips of drip tape", "tape_" + i + ",Tape " + i)
                    .replace(",tape,", ",tape_part_" + i + ","));
        }
        Files.write(house.resolve("irrigation.csv"), ways);
        List<String> parts = new ArrayList<>(Files.readAllLines(house.resolve("materials.csv")));
        for (int i = 0; i < moreWays; i++) {
            parts.add(part("tape_part_" + i, "line_metres", "tape_" + i));
        }
        Random random = new Random(9);
        for (int i = 0; i < moreParts; i++) {
            String option = i % 4 == 0 ? keys.get(random.nextInt(keys.size())) : "";
            parts.add(part("part_" + i, DRIVERS.get(random.nextInt(DRIVERS.size())), option));
        }
        Files.write(house.resolve("materials.csv"), parts);
        Faults faults = new Faults();
        Budget budget = Sample.read(house, faults);
        assertThat(faults.faults()).isEmpty();
        return budget;
    }

    private static String part(String key, String driver, String option) {
        return String.join(
                ",",
                key,
                "Part " + key,
                "Supply",
                driver,
                "0.01",
                "0",
                "each",
                "1",
                "2",
                "1",
                "5",
                "2026",
                "0",
                "0",
                "10",
                "5",
                "15",
                "a",
                "0",
                "0",
                "0",
                "0",
                option,
                "invented for the test");
    }

    @Test
    void twice_as_many_parts_more_are_twice_the_work_more() throws IOException {
        Size base = Size.of(house(100, 2));
        Size once = Size.of(house(200, 2)).minus(base);
        Size twice = Size.of(house(300, 2)).minus(base);
        checkTwice(once, twice);
    }

    /** Ways that doubtful entries are not looked at for; as many parts each time, since every part is asked about every way. */
    @Test
    void twice_as_many_ways_more_are_twice_the_work_more() throws IOException {
        Size base = Size.of(house(60, LOOKED_AT));
        Size once = Size.of(house(50, LOOKED_AT + 10)).minus(base);
        Size twice = Size.of(house(40, LOOKED_AT + 20)).minus(base);
        checkTwice(once, twice);
    }

    private static void checkTwice(Size once, Size twice) {
        assertThat((double) twice.cells()).isLessThanOrEqualTo(2 * ALIKE * once.cells());
        assertThat((double) twice.instructions()).isLessThanOrEqualTo(2 * ALIKE * once.instructions());
        assertThat((double) twice.operands()).isLessThanOrEqualTo(2 * ALIKE * once.operands());
    }

    /** A part is priced once; by way it takes no more than whether it belongs, what it is counted by there, the next whole unit of it, two
     * costs, and which part is the new outlet at each end of the range of part prices.
     */
    @Test
    void a_way_more_takes_a_few_instructions_for_each_part() throws IOException {
        assertThat(forEachPart(LOOKED_AT)).isBetween(1L, EACH_WAY);
    }

    /** One of the first ways has doubtful entries too: the part that carries its outlets is found, and its columns are read, once. */
    @Test
    void a_way_with_doubtful_entries_reads_each_column_of_its_part_once() throws IOException {
        assertThat(forEachPart(2)).isBetween(EACH_WAY + 1, EACH_WAY + COLUMNS_READ + 1);
    }

    /** Instructions that one way more takes for each part. */
    private long forEachPart(int moreWays) throws IOException {
        Size fewParts = Size.of(house(50, moreWays + 1)).minus(Size.of(house(50, moreWays)));
        Size moreParts = Size.of(house(150, moreWays + 1)).minus(Size.of(house(150, moreWays)));
        return (moreParts.instructions() - fewParts.instructions()) / 100;
    }
}
