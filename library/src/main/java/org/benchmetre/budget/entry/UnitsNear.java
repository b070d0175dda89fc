package org.benchmetre.budget.entry;

import java.util.Optional;
import java.util.stream.Collectors;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/** The units that somebody may have meant with a word that is none: near in spelling, and of the dimension that is asked for. */
final class UnitsNear {

    private static final int LOOKED_AT = 40;
    private static final int OFFERED = 3;

    private UnitsNear() {}

    /** A question behind a refusal, with up to three units; empty when none is near. */
    static String question(String typed, UnitException wrong, Subject subject) {
        if (wrong.unknown().isEmpty()) {
            return "";
        }
        String near = NearNames.nearest(wrong.unknown(), Unit.names(), LOOKED_AT).stream()
                .flatMap(name -> meant(typed.replace(wrong.unknown(), name), subject).stream())
                .distinct()
                .limit(OFFERED)
                .collect(Collectors.joining(" or "));
        return near.isEmpty() ? "" : "; did you mean " + near + "?";
    }

    private static Optional<String> meant(String text, Subject subject) {
        try {
            Unit unit = subject.unit(text);
            return unit.sameDimension(subject.unit())
                    ? Optional.of(unit.display(subject.currency()))
                    : Optional.empty();
        } catch (UnitException e) {
            return Optional.empty();
        }
    }
}
