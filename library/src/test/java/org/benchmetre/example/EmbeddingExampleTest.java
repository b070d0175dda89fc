package org.benchmetre.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
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

    @Test
    void the_embedding_page_shows_the_example_as_it_runs() throws Exception {
        String source = Files.readString(
                Path.of("src", "test", "java", "org", "benchmetre", "example", "EmbeddingExample.java"));
        String body = source.substring(
                source.indexOf("// The page begins here.\n") + "// The page begins here.\n".length(),
                source.indexOf("        // The page ends here."));
        String page = body.lines()
                .map(line -> line.startsWith("        ") ? line.substring(8) : line)
                .map(line -> line.replace("out.println", "System.out.println")
                        .replace("\"../samples", "\"samples")
                        .replace("folder.resolve(", "Path.of("))
                .collect(Collectors.joining("\n"));
        assertThat(Files.readString(Path.of("..", "README.md"))).contains("```java\n" + page + "\n```");
    }
}
