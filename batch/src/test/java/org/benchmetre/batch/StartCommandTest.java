package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StartCommandTest {

    @TempDir
    Path folder;

    private Path house;

    @BeforeEach
    void nameTheHouse() {
        house = folder.resolve("house");
    }

    @Test
    void a_starter_scenario_is_written() {
        Ran ran = Ran.with("start", house);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo("Wrote " + house + "; its README.md tells how to go on.\n");
        assertThat(ran.err()).isEmpty();
        assertThat(house).isDirectoryContaining("glob:**/README.md").isDirectoryContaining("glob:**/farm.csv");
    }

    @Test
    void it_has_no_faults_and_no_warnings() {
        Ran.with("start", house);

        Ran ran = Ran.with("check", house);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo(house + ": no faults, no warnings.\n");
        assertThat(ran.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"emitter", "tape"})
    void it_can_be_priced_either_way(String way) {
        Ran.with("start", house);

        Ran ran = Ran.with("price", house, "--set", "irrigation_choice=" + way);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).containsPattern("A metre of bench costs [0-9]+\\.[0-9]{2} USD to build");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void a_folder_with_anything_in_it_is_left_as_it_is() throws IOException {
        Files.createDirectory(house);
        Path mine = Files.writeString(house.resolve("farm.csv"), "mine");

        Ran ran = Ran.with("start", house);

        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .isEqualTo("The folder " + house
                        + " could not be written: it exists, is not empty, and is left as it is.\n");
        assertThat(house.toFile().list()).containsExactly("farm.csv");
        assertThat(mine).hasContent("mine");
    }

    @Test
    void a_file_is_left_as_it_is() throws IOException {
        Files.writeString(house, "mine");

        Ran ran = Ran.with("start", house);

        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).isEqualTo("The folder " + house + " could not be written: a file has its name.\n");
        assertThat(house).hasContent("mine");
    }

    @Test
    void a_folder_in_no_folder_cannot_be_written() {
        Path nowhere = folder.resolve("nowhere").resolve("house");

        Ran ran = Ran.with("start", nowhere);

        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo("The folder " + nowhere + " could not be written: the folder around it does not exist.\n");
    }

    @Test
    void its_help_tells_the_exit_codes_and_the_program_names_it() {
        Ran ran = Ran.with("start", "--help");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("Usage: benchmetre start", "FOLDER", "0   done", "2   wrong usage", "3   the folder");
        assertThat(ran.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(Ran.with("--help").out()).contains("start ");
        assertThat(Ran.with("start").exit()).isEqualTo(2);
    }
}
