package org.benchmetre.batch;

import picocli.CommandLine.Option;

/** Whether cautions are printed in full; in short they always are. */
final class CautionOption {

    @Option(names = "--cautions", description = "Prints cautions in full; in short they are always printed.")
    private boolean inFull;

    boolean inFull() {
        return inFull;
    }
}
