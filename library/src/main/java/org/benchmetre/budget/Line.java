package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * A named figure: identifier, label, unit, kind and the axes it repeats along. As a formula it stands for its own value, row by
 * row. What it is (an entry or a formula) is kept by the {@link Budget}. Made only by a {@link BudgetBuilder}.
 */
public final class Line implements Formula {

    private static final long serialVersionUID = 1L;

    private final String id;
    private final String label;
    private final Unit unit;
    private final Kind kind;
    private final List<Axis> axes;
    private final String note;
    private final int size;

    Line(String id, String label, Unit unit, Kind kind, List<Axis> axes, String note) {
        this.id = id;
        this.label = label;
        this.unit = unit;
        this.kind = kind;
        this.axes = List.copyOf(axes);
        this.note = note;
        this.size = axes.stream().mapToInt(Axis::size).reduce(1, (a, b) -> a * b);
    }

    /**
     * The identifier, which is also the defined name in a workbook.
     *
     * @return lower snake case with at least one underscore
     */
    public String id() {
        return id;
    }

    /**
     * What a reader sees beside the number.
     *
     * @return words, without the unit
     */
    public String label() {
        return label;
    }

    /**
     * Where the formula comes from, or what the figure leaves out.
     *
     * @return a sentence, or the empty text
     */
    public String note() {
        return note;
    }

    @Override
    public Unit unit() {
        return unit;
    }

    @Override
    public Kind kind() {
        return kind;
    }

    @Override
    public List<Axis> axes() {
        return axes;
    }

    /**
     * How many cells the line has.
     *
     * @return 1 for a single value, else the product of the lengths of its axes
     */
    public int size() {
        return size;
    }

    /**
     * The place of a cell among the line's cells, row by row.
     *
     * @param position where each axis stands
     * @return from 0
     */
    public int cellAt(Position position) {
        int cell = 0;
        for (Axis axis : axes) {
            cell = cell * axis.size() + position.on(axis);
        }
        return cell;
    }

    /**
     * Where each axis stands for a cell.
     *
     * @param cell from 0
     * @return the position
     */
    public Position positionOf(int cell) {
        if (axes.isEmpty()) {
            return Position.NONE;
        }
        if (axes.size() == 1) {
            return Position.NONE.with(axes.get(0), cell);
        }
        int across = axes.get(1).size();
        return Position.NONE.with(axes.get(0), cell / across).with(axes.get(1), cell % across);
    }

    /**
     * Whether a cell stands in a spare row.
     *
     * @param cell from 0
     * @return true where the row along one of its axes is empty until a reader fills it
     */
    public boolean isSpare(int cell) {
        return switch (axes.size()) {
            case 0 -> false;
            case 1 -> axes.get(0).isSpare(cell);
            default -> {
                int across = axes.get(1).size();
                yield axes.get(0).isSpare(cell / across) || axes.get(1).isSpare(cell % across);
            }
        };
    }

    /**
     * The address of a cell as people write it.
     *
     * @param cell from 0
     * @return {@code line}, {@code line[key]} or {@code line[key;key]}
     */
    public String address(int cell) {
        return axes.isEmpty() ? id : id + "[" + index(cell) + "]";
    }

    /**
     * The keys of a cell.
     *
     * @param cell from 0
     * @return empty for a single value, else {@code key} or {@code key;key}
     */
    public String index(int cell) {
        Position position = positionOf(cell);
        return String.join(
                ";",
                axes.stream().map(axis -> axis.keys().get(position.on(axis))).toList());
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.line(this);
    }

    @Override
    public String toString() {
        return id;
    }
}
