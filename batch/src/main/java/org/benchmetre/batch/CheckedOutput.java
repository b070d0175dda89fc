package org.benchmetre.batch;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A stream that commands print to, in UTF-8. It keeps the first failure, which writers only count. */
final class CheckedOutput extends OutputStream {

    private static final String NO_READER = "Broken pipe";

    private final OutputStream stream;
    private final PrintWriter writer;
    private IOException failure;

    CheckedOutput(OutputStream stream) {
        this.stream = stream;
        this.writer = new PrintWriter(new OutputStreamWriter(this, StandardCharsets.UTF_8));
    }

    PrintWriter writer() {
        return writer;
    }

    /** Why not everything could be printed; empty when it could, or when whoever read it had enough and left. */
    Optional<IOException> failure() {
        writer.flush();
        return Optional.ofNullable(failure).filter(problem -> !isLeft(problem));
    }

    /**
     * Whether the reader left. Only what has no position is read by somebody: a pipe, a socket, a terminal. Such a stream has no room to run out
     * of. The words of the failure alone do not tell, since they come in the language of the system.
     */
    private boolean isLeft(IOException problem) {
        return NO_READER.equals(problem.getMessage()) || stream instanceof FileOutputStream file && !hasPosition(file);
    }

    private static boolean hasPosition(FileOutputStream file) {
        try {
            return file.getChannel().position() >= 0;
        } catch (IOException none) {
            return false;
        }
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        attempt(() -> stream.write(bytes, from, count));
    }

    @Override
    public void flush() throws IOException {
        attempt(stream::flush);
    }

    /** Does nothing more after a failure. */
    private void attempt(Attempt attempt) throws IOException {
        if (failure != null) {
            throw failure;
        }
        try {
            attempt.run();
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    @FunctionalInterface
    private interface Attempt {
        void run() throws IOException;
    }
}
