package org.benchmetre.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The lock by which runs know each other's parts: a run holds it as long as it writes, and it goes with the run however that ends. A part
 * whose lock can be had is left over. Where a file system has no locks, every part counts as held.
 */
final class PartLock implements AutoCloseable {

    /** Those of this virtual machine, which it must not open again: closing any channel of a file lets go all its locks. */
    private static final Set<Path> OWN = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private PartLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Removes what a lock stands for. */
    @FunctionalInterface
    interface Removal {
        void remove() throws IOException;
    }

    /** Creates the file and holds it; empty when it exists, or when somebody took the new file for left over. */
    static Optional<PartLock> create(Path file) throws IOException {
        if (!OWN.add(file)) {
            return Optional.empty();
        }
        Optional<PartLock> held = Optional.empty();
        try {
            held = held(file);
        } catch (FileAlreadyExistsException taken) {
            return held;
        } finally {
            if (held.isEmpty()) {
                OWN.remove(file);
            }
        }
        return held;
    }

    private static Optional<PartLock> held(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        if (isLocked(channel) && Files.exists(file)) {
            return Optional.of(new PartLock(file, channel));
        }
        channel.close();
        return Optional.empty();
    }

    private static boolean isLocked(FileChannel channel) {
        try {
            return channel.tryLock() != null;
        } catch (IOException noLocksHere) {
            return true;
        }
    }

    /** Removes what a file stands for that nobody holds. What cannot be removed hinders nobody and is left alone. */
    static void removeIfLeft(Path file, Removal removal) {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || !OWN.add(file)) {
            return;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                FileLock lock = channel.tryLock()) {
            if (lock != null) {
                removal.remove();
            }
        } catch (IOException leftAlone) {
            return;
        } finally {
            OWN.remove(file);
        }
    }

    Path file() {
        return file;
    }

    FileChannel channel() {
        return channel;
    }

    @Override
    public void close() throws IOException {
        OWN.remove(file);
        channel.close();
    }
}
