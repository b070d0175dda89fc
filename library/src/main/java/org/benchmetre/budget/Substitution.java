package org.benchmetre.budget;

import java.util.Map;

/** The same formula over other lines: each line that has a stand-in is replaced by it. */
final class Substitution implements Walk<Formula> {

    private final Map<Line, Line> standIns;

    Substitution(Map<Line, Line> standIns) {
        this.standIns = standIns;
    }

    private Line of(Line line) {
        return standIns.getOrDefault(line, line);
    }

    @Override
    public Formula line(Line line) {
        return of(line);
    }

    @Override
    public Formula constant(Constant constant) {
        return constant;
    }

    @Override
    public Formula call(Call call) {
        return Call.of(
                call.function(),
                call.arguments().stream().map(argument -> argument.walk(this)).toArray(Formula[]::new));
    }

    @Override
    public Formula fold(Fold fold) {
        return new Fold(
                fold.gather(),
                fold.axis(),
                fold.lines().stream().map(this::of).toList(),
                fold.tag() == null ? null : fold.tag().walk(this));
    }

    @Override
    public Formula lookup(Lookup lookup) {
        return new Lookup(of(lookup.values()), of(lookup.keys()), lookup.key().walk(this));
    }

    @Override
    public Formula element(Element element) {
        return new Element(of(element.line()), element.axis(), element.index());
    }

    @Override
    public Formula previous(Previous previous) {
        return new Previous(of(previous.line()), previous.initial().walk(this));
    }

    @Override
    public Formula rows(Rows rows) {
        return new Rows(
                rows.axis(),
                rows.formulas().stream().map(formula -> formula.walk(this)).toList());
    }
}
