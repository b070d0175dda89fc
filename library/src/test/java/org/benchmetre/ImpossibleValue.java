package org.benchmetre;

import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.unit.Unit;

/** Values that no entry of their kind takes: as they are typed, and as a program would hand them over. */
enum ImpossibleValue {
    BELOW_ITS_BOUNDS("-5") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return isNumber(line) && !entry.bounds().takes(unitOf(budget, line).convertLevel(-5, line.unit()));
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.typed(-5, unitOf(budget, line), line.unit());
        }
    },
    A_TEXT_IN_A_NUMBER("many") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return isNumber(line);
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.text(typed());
        }
    },
    NOT_A_NUMBER("NaN") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return isNumber(line);
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.number(Double.NaN, line.unit());
        }
    },
    INFINITY("Infinity") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return isNumber(line);
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.number(Double.POSITIVE_INFINITY, line.unit());
        }
    },
    /** A program has no such number: it has infinity. */
    LARGER_THAN_ANY_NUMBER("1e999") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return isNumber(line);
        }
    },
    OF_ANOTHER_DIMENSION("3 kg4") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return isNumber(line);
        }

        @Override
        Given given(Budget budget, Line line) {
            Given.AsTyped three = new Given.AsTyped(3, Unit.parse("kg4"));
            Given plain = Given.number(3, line.unit());
            return new Given(true, 3, "", three, plain.credit(), plain.range());
        }
    },
    AN_UNKNOWN_KEY("no_such_key") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return !isNumber(line) && isChoice(entry);
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.text(typed());
        }
    },
    /** Free text may be a number. */
    A_NUMBER_FOR_A_WORD("5") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return !isNumber(line) && (isChoice(entry) || entry.form().kind() == TextForm.Kind.OWN_KEY);
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.number(5, Unit.ONE);
        }
    },
    TOO_LONG("x".repeat(40_000)) {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            return true;
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.text(typed());
        }
    },
    NOTHING_WHERE_THERE_MUST_BE_SOMETHING("") {
        @Override
        boolean isFor(Budget budget, Line line, Entry entry) {
            boolean spare = line.axes().stream().anyMatch(axis -> axis.isSpare(0));
            return entry.blank() == Blank.REFUSED && !spare;
        }

        @Override
        Given given(Budget budget, Line line) {
            return Given.blank(line.unit());
        }
    };

    private final String typed;

    ImpossibleValue(String typed) {
        this.typed = typed;
    }

    /** Whether the first cell of an entry cannot be this. */
    abstract boolean isFor(Budget budget, Line line, Entry entry);

    /** The value as a program makes it; null where it has no way to. */
    Given given(Budget budget, Line line) {
        return null;
    }

    Optional<Given> handedOver(Budget budget, Line line) {
        return Optional.ofNullable(given(budget, line));
    }

    /** The value as people type it. */
    String typed() {
        return typed;
    }

    static boolean isNumber(Line line) {
        return line.kind() == Kind.NUMBER;
    }

    private static boolean isChoice(Entry entry) {
        return List.of(TextForm.Kind.WORD, TextForm.Kind.KEYS)
                .contains(entry.form().kind());
    }

    /** The unit that a bare number is in: that of what stands in the cell. */
    static Unit unitOf(Budget budget, Line line) {
        Given now = budget.given(line).get(0);
        return now.filled() ? now.typedIn() : line.unit();
    }
}
