package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.benchmetre.budget.entry.Accepted;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Refusal;
import org.benchmetre.budget.entry.Subject;
import org.benchmetre.budget.entry.Typed;
import org.benchmetre.budget.entry.UnitWord;

/**
 * The only way of values into the cells of a budget, whoever comes with them: each value is held against its entry, and all together
 * against the rules between cells.
 */
public final class Gate {

    private final Budget budget;

    Gate(Budget budget) {
        this.budget = budget;
    }

    /** The rules of a budget: those that its sections have declared, and that keys are keys of their tables. */
    static List<Rule> rules(BudgetBuilder builder) {
        List<Rule> rules = new ArrayList<>(builder.rules);
        builder.entries.forEach((line, entry) -> {
            if (!entry.form().keysOf().isEmpty()) {
                Line keys = builder.lines.get(entry.form().keysOf());
                rules.add(new KeysKnown(line, keys, builder.entries.containsKey(keys)));
            }
        });
        return List.copyOf(rules);
    }

    /**
     * Takes what somebody typed for a cell, or says why not. Rules between cells are looked at when all is known, by {@link #lay}.
     *
     * @param line an entry
     * @param cell from 0
     * @param typed what was typed
     * @return the value, or the refusal
     * @throws FormulaException when the line is no entry
     */
    public Accepted accept(Line line, int cell, Typed typed) {
        return entry(line, cell).accept(subject(line, cell), line.kind(), typed, budget.usual(line, cell));
    }

    /**
     * The same for a row that the budget may not have, such as one of a price list that several scenarios share.
     *
     * @param line an entry
     * @param address what a refusal calls the cell
     * @param typed what was typed
     * @return the value, or the refusal
     * @throws FormulaException when the line is no entry
     */
    public Accepted accept(Line line, String address, Typed typed) {
        Subject subject = new Subject(line.label(), () -> address, line.unit(), budget.currency(), units(line));
        return entry(line).accept(subject, line.kind(), typed, Given.blank(line.unit()));
    }

    /**
     * Lays values over those of the budget, after a look at each of them and at all together.
     *
     * @param layer values by cell
     * @param unsure entries whose values are not all known, so that no rule is held against them
     * @param told is told each refusal, cells first, then rules that hold for none of the refused ones
     * @return the budget with the layer; empty after a refusal
     * @throws FormulaException when a line is not an entry of the budget, or has no such cell
     */
    public Optional<Budget> lay(Layer layer, Predicate<Line> unsure, Consumer<Refused> told) {
        Layer apart = apart(layer, new Layer());
        Budget laid = budget.laid(apart);
        List<Refused> refused = laid.gate().refused(apart, unsure, budget.isAsDocumented());
        refused.forEach(told);
        return refused.isEmpty() ? Optional.of(laid) : Optional.empty();
    }

    /**
     * Takes units that were typed behind numbers to the columns that hold them. Where a column says another unit already, the number
     * converts to that; where it does not convert, the unit stays behind it, and {@link #lay} refuses it.
     *
     * @param layer values by cell
     * @param below what lies over the budget already
     * @return the same with numbers and units apart
     */
    public Layer apart(Layer layer, Layer below) {
        Layer apart = new Layer().under(layer);
        layer.forEach((line, cells) -> unitOf(entry(line))
                .ifPresent(column -> cells.forEach((cell, given) -> {
                    if (given.isBeside(line.unit())) {
                        Given said = new Layer().under(below).under(layer).over(budget, column, cell);
                        takeApart(apart, new CellRef(line, cell), column, given, said);
                    }
                })));
        return apart;
    }

    private void takeApart(Layer apart, CellRef number, Line column, Given given, Given said) {
        String typed = given.typedIn().toString();
        boolean open = !said.filled()
                || said.text().equals(budget.usual(column, number.cell()).text());
        if (open && entry(column).allowed().contains(typed)) {
            apart.put(
                    column,
                    number.cell(),
                    Given.text(typed).from(given.source()).at(given.origin()));
            apart.put(
                    number.line(),
                    number.cell(),
                    given.bare(given.typed(), number.line().unit()));
        } else if (!open) {
            UnitWord.converted(given.typed(), given.typedIn(), said.text())
                    .ifPresent(value -> apart.put(
                            number.line(),
                            number.cell(),
                            given.bare(value, number.line().unit())));
        }
    }

    /** The entry that holds the unit of a number, where it has a column of its own. */
    private Optional<Line> unitOf(Entry entry) {
        return entry.meaning().unit().isEmpty()
                ? Optional.empty()
                : budget.find(entry.meaning().unit());
    }

    private List<String> units(Line line) {
        return unitOf(entry(line)).map(unit -> entry(unit).allowed()).orElse(List.of());
    }

    /** Over documented defaults all rules are looked at, since nobody has looked at them yet. */
    private List<Refused> refused(Layer layer, Predicate<Line> unsure, boolean all) {
        List<Refused> found = new ArrayList<>();
        Set<Line> wrong = new HashSet<>();
        budget.rules().forEach(rule -> rule.lines().stream().filter(unsure).forEach(wrong::add));
        layer.forEach((line, cells) -> cells.forEach((cell, given) -> {
            Optional<Refusal> refusal = entry(line, cell).refusal(subject(line, cell), line.kind(), given);
            refusal.ifPresent(no -> {
                found.add(new Refused(line, given.origin(), no));
                wrong.add(line);
            });
        }));
        Set<Line> changed = all ? budget.entries() : new HashSet<>(layer.lines());
        found.addAll(broken(changed, wrong));
        return found;
    }

    /** The rules that are broken, of those about changed lines and about no line that is wrong or unsure already. */
    private List<Refused> broken(Set<Line> changed, Set<Line> wrong) {
        Set<Refused> found = new LinkedHashSet<>();
        for (Rule rule : budget.rules()) {
            if (rule.lines().stream().anyMatch(changed::contains)
                    && rule.lines().stream().noneMatch(wrong::contains)) {
                found.addAll(rule.broken(new Entered(budget)));
            }
        }
        return List.copyOf(found);
    }

    private record Entered(Budget budget) implements Rule.Values {
        @Override
        public List<Given> of(Line line) {
            return budget.given(line);
        }

        @Override
        public String currency() {
            return budget.currency();
        }
    }

    private Entry entry(Line line) {
        return budget.entry(line)
                .orElseThrow(() -> new FormulaException("Line " + line + " is no entry and takes no value."));
    }

    /** In a spare row nothing must be filled: a blank cell counts as nothing there. */
    private Entry entry(Line line, int cell) {
        Entry entry = entry(line);
        return entry.blank() == Blank.REFUSED && line.isSpare(cell) ? entry.whenBlank(Blank.NOTHING) : entry;
    }

    private Subject subject(Line line, int cell) {
        return new Subject(line.label(), () -> line.address(cell), line.unit(), budget.currency(), units(line));
    }
}
