package org.benchmetre.budget;

import java.util.List;
import java.util.stream.Collectors;

/** Values that a budget does not take: all of them, one sentence each. */
public final class RefusedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient List<Refused> refused;

    RefusedException(List<Refused> refused) {
        super(refused.stream().map(Refused::message).distinct().collect(Collectors.joining("\n")));
        this.refused = List.copyOf(refused);
    }

    /**
     * What was refused.
     *
     * @return one or more, in the order of the lines
     */
    public List<Refused> refused() {
        return refused == null ? List.of() : refused;
    }
}
