package org.benchmetre.workbook;

import java.io.IOException;
import java.nio.file.Path;

/** A workbook was to be written over an existing file without having been told to. The file is untouched. */
public final class TargetExistsException extends IOException {

    private static final long serialVersionUID = 1L;

    /**
     * Names the file in the way.
     *
     * @param target the existing file
     */
    public TargetExistsException(Path target) {
        super("The file " + target + " exists already and is left as it is; say that it may be overwritten.");
    }
}
