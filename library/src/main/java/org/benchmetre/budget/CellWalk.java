package org.benchmetre.budget;

import java.util.LinkedHashSet;
import java.util.Set;

/** A walk that gathers cells a formula reads when it stands at a position; folds and lookups are for those who extend it. */
public abstract class CellWalk implements Walk<Void> {

    /** Where each axis stands. */
    protected final Position position;

    private final Set<CellRef> cells = new LinkedHashSet<>();

    /**
     * Starts with no cell.
     *
     * @param position where each axis stands
     */
    protected CellWalk(Position position) {
        this.position = position;
    }

    /**
     * The cells gathered.
     *
     * @return every cell once, in the order of the formula
     */
    public Set<CellRef> cells() {
        return cells;
    }

    /**
     * Gathers one cell.
     *
     * @param line the line
     * @param at where each axis stands
     * @return nothing
     */
    protected Void read(Line line, Position at) {
        cells.add(new CellRef(line, line.cellAt(at)));
        return null;
    }

    @Override
    public Void line(Line line) {
        return read(line, position);
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
    public Void element(Element element) {
        return read(element.line(), position.with(element.axis(), element.index()));
    }

    @Override
    public Void previous(Previous previous) {
        int period = position.on(previous.axis());
        return period == 0
                ? previous.initial().walk(this)
                : read(previous.line(), position.with(previous.axis(), period - 1));
    }

    @Override
    public Void rows(Rows rows) {
        return rows.formulas().get(position.on(rows.axis())).walk(this);
    }
}
