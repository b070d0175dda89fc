package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two irrigation systems that share the part which carries their outlets: one strip and two strips of the same tape. */
class SharedPartTest {

    private static final double RELATIVE = 1e-9;

    @TempDir
    private Path folder;

    @BeforeEach
    void oneStripAndTwo() throws IOException {
        try (Stream<Path> files = Files.list(Sample.TROUGH_HOUSE)) {
            for (Path file : files.toList()) {
                String text = Files.readString(file, StandardCharsets.UTF_8);
                String tape = text.lines()
                        .filter(line -> line.startsWith("tape,Two"))
                        .findFirst()
                        .orElse("");
                String strip = tape.replace("tape,Two strips of drip tape,2,", "strip,One strip of drip tape,1,");
                String more = tape.isEmpty() ? "" : strip + "\n";
                String shared = file.endsWith("materials.csv")
                        ? text.replaceAll("(?m)^(tape|tape_fitting)(,.*),tape,", "$1$2,tape strip,")
                        : text;
                Files.writeString(folder.resolve(file.getFileName()), shared + more, StandardCharsets.UTF_8);
            }
        }
    }

    private Figures figures(String... settings) throws ScenarioException {
        List<String> longPulses = new ArrayList<>(List.of("pulse_per_plant=1000 mL/plant"));
        longPulses.addAll(List.of(settings));
        return Benchmetre.read(folder, Optional.empty(), longPulses).figures();
    }

    private static int row(Figures f, String address) {
        Line line = f.budget().line("flip_address");
        int[] rows = IntStream.range(0, line.size())
                .filter(row -> f.text(line, row).equals(address))
                .toArray();
        assertThat(rows).as("the rows of " + address).hasSize(1);
        return rows[0];
    }

    private static double cost(Figures f, String way) {
        return f.number("way_yearly_cost_per_metre", way);
    }

    @Test
    void life_and_price_of_the_shared_part_stand_once_and_failing_outlets_for_each_way() throws ScenarioException {
        Figures f = figures();
        Line label = f.budget().line("flip_label");
        assertThat(cost(f, "strip")).isPositive().isNotEqualTo(cost(f, "tape"));
        assertThat(f.text(label, row(f, "material_life[tape]"))).isEqualTo("Life of Drip tape");
        assertThat(f.text(label, row(f, "material_price[tape]"))).isEqualTo("Price of a pack of Drip tape");
        assertThat(f.text(label, row(f, "way_failed_per_year[tape]")))
                .isEqualTo("Failing outlets of Two strips of drip tape");
        assertThat(f.text(label, row(f, "way_failed_per_year[strip]")))
                .isEqualTo("Failing outlets of One strip of drip tape");
    }

    @Test
    void the_price_of_the_shared_part_moves_both_ways_and_its_flip_value_makes_costs_meet() throws ScenarioException {
        Figures f = figures();
        Line value = f.budget().line("flip_value");
        int row = row(f, "material_price[tape]");
        assertThat(f.hasReason(value, row)).isFalse();
        Figures there = figures("material_price[tape]=" + f.number(value, row));
        String first = f.text("recommended_way");
        String to = f.text(f.budget().line("flip_to_way"), row);
        assertThat(cost(there, to)).isCloseTo(cost(there, first), within(RELATIVE * cost(there, first)));
        assertThat(cost(there, "tape") - cost(f, "tape"))
                .isNotCloseTo(cost(there, "strip") - cost(f, "strip"), within(1e-3));
    }
}
