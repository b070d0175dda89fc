package org.benchmetre.batch;

/** Exit codes, the same for every command. */
final class Exit {

    static final int DONE = 0;
    static final int FAULTS = 1;
    static final int USAGE = 2;
    static final int NOT_WRITTEN = 3;
    static final int CHECK_FAILED = 4;

    static final String HEADING = "%nExit codes:%n";
    static final String ZERO = "0:done";
    static final String ONE = "1:the input has faults, or the scenario, a line or a key does not exist";
    static final String TWO = "2:wrong usage";
    static final String THREE = "3:not all could be written or printed, or the file exists and --overwrite is missing";
    static final String FOUR = "4:a check failed";

    private Exit() {}
}
