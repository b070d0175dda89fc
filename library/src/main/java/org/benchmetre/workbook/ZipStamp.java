package org.benchmetre.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Gives every entry of a zip file the same fixed time, so that the same workbook has the same bytes. */
final class ZipStamp {

    /** The time of all entries: the zip format has no earlier day that every time zone can write. */
    static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    private ZipStamp() {}

    static byte[] stamped(byte[] zip) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(zip.length);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry copy = new ZipEntry(entry.getName());
                copy.setTimeLocal(TIME);
                out.putNextEntry(copy);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
