package org.benchmetre;

import org.benchmetre.scenario.Faults;

/** A scenario that cannot be used. Carries everything found, faults, warnings and notes. */
public final class ScenarioException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Faults faults;

    /**
     * Tells all faults at once.
     *
     * @param faults what was found, at least one fault
     */
    public ScenarioException(Faults faults) {
        super(faults.report().stripTrailing());
        this.faults = faults;
    }

    /**
     * What was found.
     *
     * @return faults, warnings and notes; null after the exception was serialised
     */
    public Faults faults() {
        return faults;
    }
}
