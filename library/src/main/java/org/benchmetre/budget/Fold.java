package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * A line, or two lines row by row, gathered along one axis into one value.
 *
 * @param gather how
 * @param axis along which axis
 * @param lines the line gathered; for a sum of products the two factors; for a filtered fold the tags come last
 * @param tag the tag wanted; for a present value the rate, for a rate of return a first guess; null when there is none
 */
public record Fold(Gather gather, Axis axis, List<Line> lines, Formula tag) implements Formula {

    /** How the rows are gathered, with its spelling in a spreadsheet. */
    public enum Gather {
        /** Sum of all rows: {@code SUM}. */
        SUM,
        /** Sum of the products of two lines: {@code SUMPRODUCT}. */
        SUM_PRODUCT,
        /** Sum of the rows whose tag matches: {@code SUMIF}. */
        SUM_WHERE,
        /** Number of rows whose tag matches: {@code COUNTIF}. */
        COUNT_WHERE,
        /** Least of all rows: {@code MIN}. */
        LEAST,
        /** Greatest of all rows: {@code MAX}. */
        GREATEST,
        /** Present value of flows, the first of them at once: {@code NPV(rate,flows)*(1+rate)}. */
        PRESENT_VALUE,
        /** The rate at which flows, the first of them at once, have no present value: {@code IRR}. */
        RATE_OF_RETURN;

        boolean isOverTime() {
            return this == PRESENT_VALUE || this == RATE_OF_RETURN;
        }
    }

    /** Refuses lines that do not run along the axis, and anything but numbers and texts in their places. */
    public Fold {
        lines = List.copyOf(lines);
        for (Line line : lines) {
            if (!line.axes().contains(axis)) {
                throw new FormulaException(
                        "Line " + line + " does not run along " + axis + " and cannot be gathered there.");
            }
        }
        boolean filtered = gather == Gather.SUM_WHERE || gather == Gather.COUNT_WHERE;
        int numbers = lines.size() - (filtered ? 1 : 0);
        for (int i = 0; i < lines.size(); i++) {
            Kind wanted = i < numbers ? Kind.NUMBER : Kind.TEXT;
            if (lines.get(i).kind() != wanted) {
                throw new FormulaException(gather + " wants a " + wanted + ", but line " + lines.get(i) + " is a "
                        + lines.get(i).kind() + ".");
            }
        }
        Kind wanted = filtered ? Kind.TEXT : Kind.NUMBER;
        if ((filtered || gather.isOverTime()) != (tag != null) || tag != null && tag.kind() != wanted) {
            throw new FormulaException(gather + " is given a " + wanted + " where it needs one, others have none.");
        }
        if (gather.isOverTime() && !tag.unit().equals(rateOn(lines.get(0).unit()))) {
            throw new FormulaException("A rate on " + lines.get(0).unit() + " is in "
                    + rateOn(lines.get(0).unit()) + ", but found " + tag.unit() + ".");
        }
    }

    /** Rates carry the tag of their money: real on money of today, nominal on money of its year. */
    static Unit rateOn(Unit money) {
        return Unit.parse(money.isNominal() ? "nominal/a" : "real/a");
    }

    /**
     * The line whose texts are compared with the tag.
     *
     * @return the last line
     */
    public Line tags() {
        return lines.get(lines.size() - 1);
    }

    @Override
    public Unit unit() {
        return switch (gather) {
            case SUM_PRODUCT -> lines.get(0).unit().times(lines.get(1).unit());
            case COUNT_WHERE -> Unit.ONE;
            case RATE_OF_RETURN -> rateOn(lines.get(0).unit());
            default -> lines.get(0).unit();
        };
    }

    @Override
    public Kind kind() {
        return Kind.NUMBER;
    }

    @Override
    public List<Axis> axes() {
        List<Axis> kept =
                Formula.axesOf(lines).stream().filter(other -> other != axis).toList();
        return tag == null ? kept : Axis.union(List.of(kept, tag.axes()));
    }

    @Override
    public <R> R walk(Walk<R> walk) {
        return walk.fold(this);
    }
}
