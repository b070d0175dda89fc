package org.benchmetre.budget.entry;

import java.util.Optional;
import java.util.function.Consumer;

/** What the gate answers: a value, or why there is none. */
public final class Accepted {

    private final Given given;
    private final Refusal refusal;

    private Accepted(Given given, Refusal refusal) {
        this.given = given;
        this.refusal = refusal;
    }

    static Accepted value(Given given) {
        return new Accepted(given, null);
    }

    static Accepted refused(String found, String expected) {
        return new Accepted(null, new Refusal(found, expected));
    }

    /**
     * The value, or nothing after saying why.
     *
     * @param otherwise is told the refusal
     * @return the value
     */
    public Optional<Given> orElse(Consumer<Refusal> otherwise) {
        if (refusal != null) {
            otherwise.accept(refusal);
        }
        return Optional.ofNullable(given);
    }
}
