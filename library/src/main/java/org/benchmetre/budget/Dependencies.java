package org.benchmetre.budget;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Which cells a formula reads when it stands at a position. */
public final class Dependencies extends CellWalk {

    private Dependencies(Position position) {
        super(position);
    }

    /**
     * The cells one cell's formula reads.
     *
     * @param line the line that is defined
     * @param formula its formula
     * @param cell which of its cells, from 0
     * @return every cell once, in the order of the formula
     */
    public static Set<CellRef> of(Line line, Formula formula, int cell) {
        Dependencies walk = new Dependencies(line.positionOf(cell));
        formula.walk(walk);
        return walk.cells();
    }

    /** The lines a formula names, wherever it stands. */
    static Set<Line> linesOf(Formula formula) {
        List<Line> lines = new ArrayList<>();
        formula.walk(new LineNames(lines));
        return new LinkedHashSet<>(lines);
    }

    @Override
    public Void fold(Fold fold) {
        fold.lines().forEach(line -> readAll(line, fold.axis()));
        return fold.tag() == null ? null : fold.tag().walk(this);
    }

    @Override
    public Void lookup(Lookup lookup) {
        readAll(lookup.keys(), lookup.axis());
        readAll(lookup.values(), lookup.axis());
        return lookup.key().walk(this);
    }

    private void readAll(Line line, Axis axis) {
        IntStream.range(0, axis.size()).forEach(i -> read(line, position.with(axis, i)));
    }

    /** Collects the lines named, without positions. */
    private record LineNames(List<Line> found) implements Walk<Void> {

        @Override
        public Void line(Line line) {
            found.add(line);
            return null;
        }

        @Override
        public Void constant(Constant constant) {
            return null;
        }

        @Override
        public Void call(Call call) {
            call.arguments().forEach(argument -> argument.walk(this));
            return null;
        }

        @Override
        public Void fold(Fold fold) {
            found.addAll(fold.lines());
            return fold.tag() == null ? null : fold.tag().walk(this);
        }

        @Override
        public Void lookup(Lookup lookup) {
            found.add(lookup.keys());
            found.add(lookup.values());
            return lookup.key().walk(this);
        }

        @Override
        public Void element(Element element) {
            found.add(element.line());
            return null;
        }

        @Override
        public Void previous(Previous previous) {
            found.add(previous.line());
            return previous.initial().walk(this);
        }

        @Override
        public Void rows(Rows rows) {
            rows.formulas().forEach(formula -> formula.walk(this));
            return null;
        }
    }
}
