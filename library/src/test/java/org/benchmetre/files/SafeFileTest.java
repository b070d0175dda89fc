package org.benchmetre.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {

    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    private Path target;

    @BeforeEach
    void nameTheTarget() {
        target = folder.resolve("house.xlsx");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static boolean made(String... command) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }

    private static boolean hasPermissions(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    @Test
    void a_new_file_is_written_and_nothing_beside_it() throws IOException {
        SafeFile.write(NEW, target, false);

        assertThat(target).hasContent("new");
        assertThat(names()).containsExactly("house.xlsx");
    }

    @Test
    void an_existing_file_is_kept_unless_it_is_to_be_replaced() throws IOException {
        Files.writeString(target, "mine");

        assertThatThrownBy(() -> SafeFile.write(NEW, target, false)).isInstanceOf(FileAlreadyExistsException.class);
        assertThat(target).hasContent("mine");
        SafeFile.write(NEW, target, true);
        assertThat(target).hasContent("new");
        assertThat(names()).containsExactly("house.xlsx");
    }

    @Test
    void a_file_that_is_replaced_keeps_its_permissions() throws IOException {
        assumeTrue(hasPermissions(folder), "Permissions are those of POSIX systems.");
        Files.writeString(target, "mine");
        Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rw-rw---x"));

        SafeFile.write(NEW, target, true);

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(target)))
                .isEqualTo("rw-rw---x");
    }

    @Test
    void a_file_that_is_replaced_keeps_its_owner_and_group() throws IOException {
        assumeTrue(hasPermissions(folder), "Owners are those of POSIX systems.");
        Files.writeString(target, "mine");
        int owner = given("unix:uid", 12_345);
        int group = given("unix:gid", 23_456);

        SafeFile.write(NEW, target, true);

        assertThat(Files.getAttribute(target, "unix:uid")).isEqualTo(owner);
        assertThat(Files.getAttribute(target, "unix:gid")).isEqualTo(group);
        assertThat(target).hasContent("new");
    }

    /** Whose the target is once it was given away; who is not the superuser keeps it. */
    private int given(String attribute, int stranger) throws IOException {
        try {
            Files.setAttribute(target, attribute, stranger);
            return stranger;
        } catch (FileSystemException notAllowed) {
            return (int) Files.getAttribute(target, attribute);
        }
    }

    @Test
    void a_link_stays_and_what_it_leads_to_is_replaced() throws IOException {
        Path real = Files.writeString(folder.resolve("real.xlsx"), "mine");
        Files.createSymbolicLink(target, Path.of("real.xlsx"));

        SafeFile.write(NEW, target, true);

        assertThat(Files.isSymbolicLink(target)).isTrue();
        assertThat(real).hasContent("new");
        assertThat(Files.isSymbolicLink(real)).isFalse();
        assertThat(names()).containsExactly("house.xlsx", "real.xlsx");
    }

    @Test
    void a_link_that_leads_nowhere_is_refused() throws IOException {
        Files.createSymbolicLink(target, Path.of("nothing.xlsx"));

        assertThatThrownBy(() -> SafeFile.write(NEW, target, true))
                .isInstanceOf(NotPlainFileException.class)
                .hasMessageContaining("it is a symbolic link that leads nowhere");
        assertThatThrownBy(() -> SafeFile.write(NEW, target, false)).isInstanceOf(NotPlainFileException.class);
        assertThat(names()).containsExactly("house.xlsx");
        assertThat(Files.isSymbolicLink(target)).isTrue();
    }

    @Test
    void a_folder_is_refused() throws IOException {
        Files.createDirectory(target);

        assertThatThrownBy(() -> SafeFile.write(NEW, target, true))
                .isInstanceOf(NotPlainFileException.class)
                .hasMessageContaining("it is a folder");
        assertThat(target).isEmptyDirectory();
        assertThat(names()).containsExactly("house.xlsx");
    }

    @Test
    void a_pipe_is_refused_and_stays_one() throws IOException, InterruptedException {
        assumeTrue(made("mkfifo", target.toString()), "There is no mkfifo here.");

        assertStaysNoPlainFile();
    }

    @Test
    void a_device_is_refused_and_stays_one() throws IOException, InterruptedException {
        assumeTrue(made("mknod", target.toString(), "c", "1", "3"), "Only the superuser makes devices.");

        assertStaysNoPlainFile();
    }

    private void assertStaysNoPlainFile() throws IOException {
        assertThatThrownBy(() -> SafeFile.write(NEW, target, true))
                .isInstanceOf(NotPlainFileException.class)
                .hasMessageContaining("a device, a pipe or a socket");
        assertThat(Files.readAttributes(target, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                        .isOther())
                .isTrue();
        assertThat(names()).containsExactly("house.xlsx");
    }

    @Test
    void a_file_that_may_not_be_written_is_not_replaced() throws IOException {
        Files.writeString(target, "mine");
        boolean kept = target.toFile().setWritable(false) && !Files.isWritable(target);

        if (kept) {
            assertThatThrownBy(() -> SafeFile.write(NEW, target, true)).isInstanceOf(AccessDeniedException.class);
        } else { // the superuser writes anything
            SafeFile.write(NEW, target, true);
        }
        assertThat(target).hasContent(kept ? "mine" : "new");
    }

    @Test
    void the_folder_around_it_must_exist() throws IOException {
        assertThatThrownBy(() -> SafeFile.write(NEW, folder.resolve("nowhere").resolve("house.xlsx"), false))
                .isInstanceOf(NoSuchFileException.class);
        assertThat(names()).isEmpty();
    }

    @Test
    void a_file_that_appears_at_the_last_moment_is_kept() throws IOException {
        Path part = Files.writeString(folder.resolve("part"), "new");
        Files.writeString(target, "mine");

        assertThatThrownBy(() -> Parts.place(part, target)).isInstanceOf(FileAlreadyExistsException.class);
        assertThatThrownBy(() -> Parts.reserve(part, target)).isInstanceOf(FileAlreadyExistsException.class);
        assertThat(target).hasContent("mine");
        assertThat(part).hasContent("new");
    }

    @Test
    void where_there_are_no_links_the_name_is_reserved_first() throws IOException {
        Path part = Files.writeString(folder.resolve("part"), "new");

        Parts.reserve(part, target);

        assertThat(target).hasContent("new");
        assertThat(names()).containsExactly("house.xlsx");
    }
}
