package org.benchmetre.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.benchmetre.Benchmetre;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmbeddingExampleTest {

    @TempDir
    Path folder;

    @Test
    void the_example_of_the_embedding_page_runs_and_its_folder_reads_as_the_plan_it_was_written_from()
            throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        EmbeddingExample.run(new PrintStream(bytes, true, StandardCharsets.UTF_8), folder);

        String printed = bytes.toString(StandardCharsets.UTF_8);
        assertThat(printed.lines().limit(3)).allMatch(line -> line.matches("[0-9]+\\.[0-9]{2} USD/m"));
        assertThat(printed).contains("yearly_cost_per_metre");
        assertThat(folder.resolve("house.xlsx")).isNotEmptyFile();
        assertThat(Benchmetre.read(folder.resolve("tape-house")).quantity("yearly_cost_per_metre"))
                .isEqualTo(Benchmetre.read(Path.of("../samples/trough-house"))
                        .with("irrigation_choice", "tape")
                        .quantity("yearly_cost_per_metre"));
    }
}
