package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarterTest {

    private static final Path TEMPLATE = Path.of("..", "templates", "starter");

    @TempDir
    Path folder;

    private static List<String> names(Path of) throws IOException {
        try (Stream<Path> found = Files.list(of)) {
            return found.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void the_list_of_files_is_what_the_template_holds() throws IOException {
        assertThat(names(TEMPLATE)).containsExactlyInAnyOrderElementsOf(Starter.FILES);
    }

    @Test
    void a_new_folder_holds_the_template_byte_for_byte() throws IOException {
        Path house = folder.resolve("house");

        Starter.copyTo(house);

        assertThat(names(house)).isEqualTo(names(TEMPLATE));
        for (String name : Starter.FILES) {
            assertThat(house.resolve(name)).hasSameBinaryContentAs(TEMPLATE.resolve(name));
        }
        assertThat(names(folder)).containsExactly("house");
    }

    @Test
    void an_empty_folder_is_filled() throws IOException {
        Path house = Files.createDirectory(folder.resolve("house"));
        Object before = Files.readAttributes(house, "fileKey").get("fileKey");

        Starter.copyTo(house);

        assertThat(names(house)).isEqualTo(names(TEMPLATE));
        assertThat(names(folder)).containsExactly("house");
        assertThat(Files.readAttributes(house, "fileKey").get("fileKey")).isEqualTo(before);
    }

    @Test
    void a_folder_with_anything_in_it_is_refused_and_left_as_it_is() throws IOException {
        Path house = Files.createDirectory(folder.resolve("house"));
        Files.writeString(house.resolve("farm.csv"), "mine");

        assertThatThrownBy(() -> Starter.copyTo(house)).isInstanceOf(FileAlreadyExistsException.class);

        assertThat(names(house)).containsExactly("farm.csv");
        assertThat(house.resolve("farm.csv")).hasContent("mine");
        assertThat(names(folder)).containsExactly("house");
    }

    @Test
    void a_file_in_the_way_is_refused_and_left_as_it_is() throws IOException {
        Path house = Files.writeString(folder.resolve("house"), "mine");

        assertThatThrownBy(() -> Starter.copyTo(house)).isInstanceOf(FileAlreadyExistsException.class);

        assertThat(house).hasContent("mine");
        assertThat(names(folder)).containsExactly("house");
    }

    @Test
    void the_folder_around_it_must_exist() throws IOException {
        Path house = folder.resolve("nowhere").resolve("house");

        assertThatThrownBy(() -> Starter.copyTo(house)).isInstanceOf(NoSuchFileException.class);

        assertThat(names(folder)).isEmpty();
    }
}
