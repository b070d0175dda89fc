package org.benchmetre.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** A zip file whose entries all have the same fixed time, so that the same workbook has the same bytes. */
final class ZipStamp extends ZipArchiveOutputStream {

    /** The time of all entries: the zip format has no earlier day that every time zone can write. */
    static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    ZipStamp(OutputStream out) {
        super(out);
    }

    @Override
    public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
        entry.setTimeLocal(TIME);
        super.putArchiveEntry(entry);
    }
}
