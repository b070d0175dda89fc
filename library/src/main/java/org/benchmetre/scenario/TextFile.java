package org.benchmetre.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The text of a file in UTF-8, decoded strictly. */
final class TextFile {

    /** Larger files are no scenario files: 20 MB, a megabyte being a million bytes. */
    static final int MOST_BYTES = 20_000_000;

    private static final String EXPECTED =
            "a text file in UTF-8 (the file may be in Windows-1252 or UTF-16; save it again"
                    + " as CSV with the encoding UTF-8)";

    private TextFile() {}

    static String read(Path path, Place file) throws Unreadable {
        return decoded(bytes(path, file), file);
    }

    private static byte[] bytes(Path path, Place file) throws Unreadable {
        if (Files.isDirectory(path)) {
            throw new Unreadable(file, "a folder", "a CSV file");
        }
        if (!Files.isRegularFile(path)) {
            throw new Unreadable(file, "no such file", "a CSV file");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new Unreadable(file, "more than 20 MB", "a file of at most 20 MB");
            }
            return bytes;
        } catch (IOException e) {
            throw new Unreadable(
                    file,
                    "a file that does not open (" + e.getClass().getSimpleName() + ")",
                    "a file that may be read");
        }
    }

    private static String decoded(byte[] bytes, Place file) throws Unreadable {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            throw badByte(bytes, in.position(), file);
        }
        String text = out.flip().toString();
        int zero = text.indexOf('\0');
        if (zero >= 0) {
            throw badByte(bytes, text.substring(0, zero).getBytes(StandardCharsets.UTF_8).length, file);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static Unreadable badByte(byte[] bytes, int offset, Place file) {
        int line = 1;
        for (int i = 0; i < offset; i++) {
            boolean lineFeed = bytes[i] == '\n';
            boolean loneReturn = bytes[i] == '\r' && bytes[i + 1] != '\n';
            line += lineFeed || loneReturn ? 1 : 0;
        }
        String found = String.format(
                Locale.ROOT, "the byte 0x%02X in line %d, which is not UTF-8 text", bytes[offset] & 0xFF, line);
        return new Unreadable(file, found, EXPECTED);
    }
}
