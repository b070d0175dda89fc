package org.benchmetre.files;

import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** What was to be replaced is no plain file. It is untouched. */
public final class NotPlainFileException extends FileSystemException {

    private static final long serialVersionUID = 1L;

    /**
     * Names what is in the way.
     *
     * @param target its path
     * @param what what it is, in words that follow "it is"
     */
    public NotPlainFileException(Path target, String what) {
        super(target.toString(), null, "it is " + what);
    }
}
