package org.benchmetre.farm;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Which release of the library this is, as its build wrote it into a file beside the classes. */
final class Release {

    /** The version, such as 1.2.0. */
    static final String VERSION = read();

    private Release() {}

    private static String read() {
        try (InputStream in = Release.class.getResourceAsStream("release.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).trim();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
