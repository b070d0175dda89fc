package org.benchmetre.workbook;

import java.util.Optional;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Ends;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.page.shown.ShownCells;

/** What a page says of a line beside its value: its unit, and of an entry its usual range and what is to be thought of it. */
final class BesideValue {

    private final Budget budget;
    private final Homes homes;

    BesideValue(Budget budget, Homes homes) {
        this.budget = budget;
        this.homes = homes;
    }

    Entry entry(Line line) {
        return budget.entry(line).orElseThrow();
    }

    Given given(Line line) {
        return budget.given(line).get(0);
    }

    boolean isConverted(Line line) {
        return homes.isConverted(line);
    }

    String unit(Line line) {
        return unit(line, line.unit());
    }

    private String unit(Line line, Unit unit) {
        boolean none = line.kind() == Kind.TEXT || line.kind() == Kind.TRUTH;
        return none ? "" : ShownCells.written(unit, budget.currency());
    }

    String typedUnit(Line line) {
        return unit(line, isConverted(line) ? given(line).typedIn() : line.unit());
    }

    /** The entries that hold the ends of an entry's usual range. */
    Optional<Ends> ends(Line line) {
        return budget.ends(line);
    }

    /** The usual range in the unit of the cell that is typed in. */
    Plausible usualAsTyped(Line line) {
        Plausible usual = budget.range(line, 0).range();
        if (!isConverted(line)) {
            return usual;
        }
        Unit typedIn = given(line).typedIn();
        return new Plausible(
                line.unit().convertLevel(usual.low(), typedIn),
                Double.NaN,
                line.unit().convertLevel(usual.high(), typedIn));
    }

    /** What is to be said of a value beside its source, as written. */
    String mark(Line line, Given given) {
        boolean outside = given.filled()
                && line.kind() != Kind.TEXT
                && budget.range(line, 0).range().isUnusual(given.number());
        String source = given.source().isEmpty() ? entry(line).source() : given.source();
        boolean invented = source.contains("invented");
        return Stream.of(outside ? "unusual" : "", invented ? "invented" : "")
                .filter(word -> !word.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    }
}
