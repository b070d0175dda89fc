package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookCommandTest {

    @TempDir
    Path folder;

    @Test
    void a_workbook_is_written() throws IOException {
        Path target = folder.resolve("house.xlsx");
        Ran ran = Ran.with("workbook", Ran.SAMPLE, "-o", target);

        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo("Wrote " + target + ".\n");
        assertThat(Files.readAllBytes(target)).startsWith('P', 'K');
    }

    @Test
    void an_existing_file_stays_unless_told_otherwise() throws IOException {
        Path target = Files.writeString(folder.resolve("house.xlsx"), "mine");

        Ran refused = Ran.with("workbook", Ran.SAMPLE, "-o", target);
        assertThat(refused.exit()).isEqualTo(3);
        assertThat(refused.err()).contains("exists and is left as it is");
        assertThat(target).hasContent("mine");

        assertThat(Ran.with("workbook", Ran.SAMPLE, "-o", target, "--overwrite").exit())
                .isZero();
        assertThat(Files.readAllBytes(target)).startsWith('P', 'K');
    }

    @Test
    void only_an_xlsx_file_is_a_workbook_so_that_no_input_is_written_over() throws IOException {
        Path scenario = Ran.copy(folder);
        Path input = scenario.resolve("farm.csv");
        String before = Files.readString(input);

        Ran ran = Ran.with("workbook", scenario, "-o", input, "--overwrite");

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("A workbook is an .xlsx file, but found " + input + ".");
        assertThat(input).hasContent(before);
        assertThat(Ran.with("compare", scenario, scenario, "-o", input, "--overwrite")
                        .exit())
                .isEqualTo(2);
        assertThat(input).hasContent(before);
    }

    @Test
    void a_folder_that_is_not_there_cannot_be_written_to() {
        Path target = folder.resolve("nowhere").resolve("house.xlsx");
        Ran ran = Ran.with("workbook", Ran.SAMPLE, "-o", target);

        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo("The file " + target + " could not be written: the folder around it does not exist.\n");
    }

    @Test
    void a_folder_cannot_be_written_over() throws IOException {
        Path target = Files.createDirectory(folder.resolve("house.xlsx"));
        Files.writeString(target.resolve("note.txt"), "mine");

        Ran ran = Ran.with("workbook", Ran.SAMPLE, "-o", target, "--overwrite");

        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).isEqualTo("The file " + target + " could not be written: it is a folder.\n");
        assertThat(target.resolve("note.txt")).hasContent("mine");
    }

    @Test
    void no_file_that_is_read_is_replaced_by_whatever_name() throws IOException {
        Path scenario = Ran.copy(folder);
        Path farm = scenario.resolve("farm.csv");
        String before = Files.readString(farm);
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), farm);
        Path prices = Files.writeString(folder.resolve("prices.xlsx"), "item,pack,unit,price,price_year,source\n");

        Ran linked = Ran.with("workbook", scenario, "-o", link, "--overwrite");
        Ran list = Ran.with("workbook", scenario, "--prices", prices, "-o", prices, "--overwrite");

        assertThat(linked.exit()).isEqualTo(2);
        assertThat(linked.err()).startsWith("The workbook would replace a file that was read, ");
        assertThat(farm).hasContent(before);
        assertThat(list.exit()).isEqualTo(2);
        assertThat(prices).content().startsWith("item,");
        assertThat(Ran.with("compare", scenario, Ran.SAMPLE, "-o", link, "--overwrite")
                        .exit())
                .isEqualTo(2);
        assertThat(farm).hasContent(before);
    }

    @Test
    void a_pipe_is_not_replaced() throws Exception {
        Path target = folder.resolve("pipe.xlsx");
        assumeTrue(pipe(target), "There is no mkfifo here.");

        Ran ran = Ran.with("workbook", Ran.SAMPLE, "-o", target, "--overwrite");

        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo("The file " + target
                        + " could not be written: it is no plain file but a device, a pipe or a socket.\n");
    }

    private static boolean pipe(Path target) throws InterruptedException {
        try {
            return new ProcessBuilder("mkfifo", target.toString()).start().waitFor() == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }
}
