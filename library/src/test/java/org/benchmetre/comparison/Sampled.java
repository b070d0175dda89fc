package org.benchmetre.comparison;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.farm.Sample;

/** The sample houses, compared. */
final class Sampled {

    static final Path TROUGHS = Sample.TROUGH_HOUSE;
    static final Path CONTAINERS = Sample.CONTAINER_HOUSE;

    private Sampled() {}

    /** Troughs, containers, and troughs once more. */
    static Comparison three(Measure per) {
        return of(per, TROUGHS, CONTAINERS, TROUGHS);
    }

    static Comparison two(Measure per) {
        return of(per, TROUGHS, CONTAINERS);
    }

    private static Comparison of(Measure per, Path... folders) {
        try {
            return Benchmetre.compare(List.of(folders), Optional.empty(), List.of(), per);
        } catch (ScenarioException e) {
            throw new AssertionError(e);
        }
    }
}
