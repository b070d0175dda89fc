package org.benchmetre.budget.run;

import java.util.Optional;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellWalk;
import org.benchmetre.budget.Constant;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Fold;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Lookup;
import org.benchmetre.budget.Position;

/**
 * The cells that make up the value of one cell, in the order of its formula: of a fold only the rows that are not zero, of a lookup
 * only the row found. Counts the rows of folds that are zero.
 */
final class Contributors extends CellWalk {

    private final Figures figures;
    private int zeros;

    private Contributors(Figures figures, Position position) {
        super(position);
        this.figures = figures;
    }

    static Contributors of(Figures figures, Line line, Formula formula, int cell) {
        Contributors walk = new Contributors(figures, line.positionOf(cell));
        formula.walk(walk);
        return walk;
    }

    /** Rows of folds that add nothing and are not among the cells. */
    int zeros() {
        return zeros;
    }

    @Override
    public Void fold(Fold fold) {
        if (fold.tag() != null) {
            fold.tag().walk(this);
        }
        Optional<String> tag = Optional.ofNullable(fold.tag())
                .filter(formula -> formula.kind() == Kind.TEXT)
                .flatMap(this::textOf);
        for (int row = 0; row < fold.axis().size(); row++) {
            Position at = position.with(fold.axis(), row);
            if (adds(fold, at, tag)) {
                fold.lines().stream().filter(line -> line.kind() == Kind.NUMBER).forEach(line -> read(line, at));
            } else {
                zeros++;
            }
        }
        return null;
    }

    private boolean adds(Fold fold, Position at, Optional<String> tag) {
        boolean matches = tag.isEmpty()
                || figures.text(fold.tags(), fold.tags().cellAt(at)).equalsIgnoreCase(tag.get());
        return matches
                && fold.lines().stream()
                        .filter(line -> line.kind() == Kind.NUMBER)
                        .allMatch(line -> figures.number(line, line.cellAt(at)) != 0);
    }

    @Override
    public Void lookup(Lookup lookup) {
        lookup.key().walk(this);
        Optional<String> key = textOf(lookup.key());
        Axis axis = lookup.axis();
        for (int row = 0; row < axis.size(); row++) {
            Position at = position.with(axis, row);
            String found = figures.text(lookup.keys(), lookup.keys().cellAt(at));
            if (key.isEmpty() || found.equalsIgnoreCase(key.get())) {
                read(lookup.values(), at);
                if (key.isPresent()) {
                    break;
                }
            }
        }
        return null;
    }

    /** The text a formula stands for, when it is a constant, a line or one row of a line; others are not worked out here. */
    private Optional<String> textOf(Formula formula) {
        if (formula instanceof Constant constant) {
            return Optional.of(constant.text());
        }
        if (formula instanceof Element element) {
            Position row = position.with(element.axis(), element.index());
            return Optional.of(figures.text(element.line(), element.line().cellAt(row)));
        }
        return formula instanceof Line line ? Optional.of(figures.text(line, line.cellAt(position))) : Optional.empty();
    }
}
