package org.benchmetre;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
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
    BELOW_ITS_BOUNDS("-5", ImpossibleValue::boundsRefuse, ImpossibleValue::minusFive),
    A_TEXT_IN_A_NUMBER("many", ImpossibleValue::isNumber, (budget, line) -> Given.text("many")),
    NOT_A_NUMBER("NaN", ImpossibleValue::isNumber, (budget, line) -> Given.number(Double.NaN, line.unit())),
    INFINITY(
            "Infinity",
            ImpossibleValue::isNumber,
            (budget, line) -> Given.number(Double.POSITIVE_INFINITY, line.unit())),
    /** A program has no such number: it has infinity. */
    LARGER_THAN_ANY_NUMBER("1e999", ImpossibleValue::isNumber, (budget, line) -> null),
    OF_ANOTHER_DIMENSION("3 kg⁴", ImpossibleValue::isNumber, (budget, line) -> ofAnotherDimension(line)),
    AN_UNKNOWN_KEY("no_such_key", ImpossibleValue::isChoice, (budget, line) -> Given.text("no_such_key")),
    /** Free text may be a number. */
    A_NUMBER_FOR_A_WORD("5", ImpossibleValue::isWord, (budget, line) -> Given.number(5, Unit.ONE)),
    TOO_LONG("x".repeat(40_000), (budget, line, entry) -> true, (budget, line) -> Given.text("x".repeat(40_000))),
    NOTHING_WHERE_THERE_MUST_BE_SOMETHING("", ImpossibleValue::isNeeded, (budget, line) -> Given.blank(line.unit()));

    private final String typed;
    private final Where where;
    private final BiFunction<Budget, Line, Given> given;

    ImpossibleValue(String typed, Where where, BiFunction<Budget, Line, Given> given) {
        this.typed = typed;
        this.where = where;
        this.given = given;
    }

    /** Which entries a value is impossible for. */
    @FunctionalInterface
    private interface Where {
        boolean has(Budget budget, Line line, Entry entry);
    }

    /** Whether the first cell of an entry cannot be this. */
    boolean isFor(Budget budget, Line line, Entry entry) {
        return where.has(budget, line, entry);
    }

    /** The value as a program makes it; empty where it has no way to. */
    Optional<Given> handedOver(Budget budget, Line line) {
        return Optional.ofNullable(given.apply(budget, line));
    }

    /** The value as people type it. */
    String typed() {
        return typed;
    }

    private static boolean isNumber(Budget budget, Line line, Entry entry) {
        return isNumber(line);
    }

    private static boolean boundsRefuse(Budget budget, Line line, Entry entry) {
        return isNumber(line) && !entry.bounds().takes(unitOf(budget, line).convertLevel(-5, line.unit()));
    }

    private static boolean isChoice(Budget budget, Line line, Entry entry) {
        return !isNumber(line)
                && List.of(TextForm.Kind.WORD, TextForm.Kind.KEYS)
                        .contains(entry.form().kind());
    }

    private static boolean isWord(Budget budget, Line line, Entry entry) {
        return isChoice(budget, line, entry) || !isNumber(line) && entry.form().kind() == TextForm.Kind.OWN_KEY;
    }

    private static boolean isNeeded(Budget budget, Line line, Entry entry) {
        boolean spare = line.axes().stream().anyMatch(axis -> axis.isSpare(0));
        return entry.blank() == Blank.REFUSED && !spare;
    }

    private static Given minusFive(Budget budget, Line line) {
        return Given.typed(-5, unitOf(budget, line), line.unit());
    }

    private static Given ofAnotherDimension(Line line) {
        Given.AsTyped three = new Given.AsTyped(3, Unit.parse("kg4"));
        Given plain = Given.number(3, line.unit());
        return new Given(true, 3, "", three, plain.credit(), plain.range());
    }

    static boolean isNumber(Line line) {
        return line.kind() == Kind.NUMBER;
    }

    /** The unit that a bare number is in: that of what stands in the cell. */
    static Unit unitOf(Budget budget, Line line) {
        Given now = budget.given(line).get(0);
        return now.filled() ? now.typedIn() : line.unit();
    }
}
