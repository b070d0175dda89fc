package org.benchmetre.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;

/**
 * Writes a file beside its target and moves it into place, so that nobody ever finds half of it.
 *
 * <p>An existing file is replaced only when that is asked for, only when it is a plain file that may be written, and keeps its permissions,
 * owner and group. A symbolic link stays, and the file it leads to is replaced. What appears at the last moment is kept unless it is to
 * be replaced.
 */
public final class SafeFile {

    private SafeFile() {}

    /**
     * Says early what {@link #write} would refuse.
     *
     * @param target the file to be written
     * @param overwrite whether an existing file is replaced
     * @throws FileAlreadyExistsException when it exists and is not to be replaced
     * @throws NotPlainFileException when a folder, a device, a pipe or the like has its name
     * @throws IOException when it may not be written
     */
    public static void check(Path target, boolean overwrite) throws IOException {
        place(target, overwrite);
    }

    /**
     * Writes a file.
     *
     * @param bytes all of it
     * @param target where it goes; the folder around it exists
     * @param overwrite whether an existing file is replaced
     * @throws FileAlreadyExistsException when it exists and is not to be replaced; it is left as it is
     * @throws NotPlainFileException when a folder, a device, a pipe or the like has its name
     * @throws IOException when it cannot be written, or its owner not be kept; nothing is left behind
     */
    public static void write(byte[] bytes, Path target, boolean overwrite) throws IOException {
        Path place = place(target, overwrite);
        Path folder = place.getParent();
        Parts.clear(folder);
        try (PartLock part = Parts.make(folder)) {
            try {
                if (Files.exists(place)) {
                    keepOwner(place, part.file());
                }
                fill(part.channel(), bytes);
                place(target, overwrite);
                move(part.file(), place, overwrite);
            } finally {
                Files.deleteIfExists(part.file());
            }
        }
    }

    /** Where the file really goes: what a link leads to, else the target itself. */
    private static Path place(Path target, boolean overwrite) throws IOException {
        Path there = target.toAbsolutePath();
        if (!Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
            return there;
        }
        Path real = Files.isSymbolicLink(there) ? followed(there) : there;
        if (Files.isDirectory(real)) {
            throw new NotPlainFileException(target, "a folder");
        }
        if (!Files.isRegularFile(real)) {
            throw new NotPlainFileException(target, "no plain file but a device, a pipe or a socket");
        }
        if (!overwrite) {
            throw new FileAlreadyExistsException(target.toString(), null, "it exists already and is left as it is");
        }
        if (!Files.isWritable(real)) {
            throw new AccessDeniedException(target.toString());
        }
        return real;
    }

    private static Path followed(Path link) throws IOException {
        try {
            return link.toRealPath();
        } catch (NoSuchFileException e) {
            throw new NotPlainFileException(link, "a symbolic link that leads nowhere");
        }
    }

    /** Before anything is written, so that nobody reads what the old file kept from them. */
    private static void keepOwner(Path old, Path part) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        PosixFileAttributes kept = Files.readAttributes(old, PosixFileAttributes.class);
        PosixFileAttributes own = view.readAttributes();
        try {
            if (!own.owner().equals(kept.owner())) {
                view.setOwner(kept.owner());
            }
            if (!own.group().equals(kept.group())) {
                view.setGroup(kept.group());
            }
            view.setPermissions(kept.permissions());
        } catch (FileSystemException e) {
            throw new FileSystemException(old.toString(), null, "its owner and permissions cannot be kept");
        }
    }

    private static void fill(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
            channel.write(rest);
        }
        channel.force(true);
    }

    private static void move(Path part, Path place, boolean overwrite) throws IOException {
        if (!overwrite) {
            Parts.place(part, place);
            return;
        }
        try {
            Files.move(part, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
