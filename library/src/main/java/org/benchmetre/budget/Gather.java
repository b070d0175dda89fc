package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/**
 * The one table of folds. A row says all there is to say: which lines it takes and what stands beside them, the unit of the result,
 * the spelling over ranges, and how it is computed, as functions over the values of its rows.
 */
public enum Gather {
    /** Sum of all rows. */
    SUM(
            List.of(Kind.NUMBER),
            Beside.NOTHING,
            lines -> lines.get(0).unit(),
            (ranges, beside) -> "SUM(" + ranges.get(0) + ")",
            (to, rows, beside) -> to.apply(Function.SUM, rows[0])),
    /** Sum of the products of two lines. */
    SUM_PRODUCT(
            List.of(Kind.NUMBER, Kind.NUMBER),
            Beside.NOTHING,
            lines -> lines.get(0).unit().times(lines.get(1).unit()),
            (ranges, beside) -> "SUMPRODUCT(" + ranges.get(0) + "," + ranges.get(1) + ")",
            (to, rows, beside) -> to.apply(Function.SUM_PRODUCT, Gather.pairs(rows[0], rows[1]))),
    /** Sum of the rows whose text, in the last line, is the one wanted. */
    SUM_WHERE(
            List.of(Kind.NUMBER, Kind.TEXT),
            Beside.TEXT,
            lines -> lines.get(0).unit(),
            (ranges, beside) -> "SUMIF(" + ranges.get(1) + "," + beside + "," + ranges.get(0) + ")",
            (to, rows, beside) ->
                    to.apply(Function.SUM_WHERE, Gather.pairs(Gather.same(to, rows[1], beside), rows[0]))),
    /** Number of rows whose text is the one wanted. */
    COUNT_WHERE(
            List.of(Kind.TEXT),
            Beside.TEXT,
            lines -> Unit.ONE,
            (ranges, beside) -> "COUNTIF(" + ranges.get(0) + "," + beside + ")",
            (to, rows, beside) -> to.apply(Function.SUM, Gather.same(to, rows[0], beside))),
    /** Number of rows above zero. */
    COUNT_POSITIVE(
            List.of(Kind.NUMBER),
            Beside.NOTHING,
            lines -> Unit.ONE,
            (ranges, beside) -> "COUNTIF(" + ranges.get(0) + ",\">0\")",
            (to, rows, beside) -> to.apply(Function.SUM, Gather.positive(to, rows[0]))),
    /** Least of all rows. */
    LEAST(
            List.of(Kind.NUMBER),
            Beside.NOTHING,
            lines -> lines.get(0).unit(),
            (ranges, beside) -> "MIN(" + ranges.get(0) + ")",
            (to, rows, beside) -> Gather.chained(to, Function.MIN, rows[0])),
    /** Greatest of all rows. */
    GREATEST(
            List.of(Kind.NUMBER),
            Beside.NOTHING,
            lines -> lines.get(0).unit(),
            (ranges, beside) -> "MAX(" + ranges.get(0) + ")",
            (to, rows, beside) -> Gather.chained(to, Function.MAX, rows[0])),
    /** Present value of flows at a rate, the first of them at once. */
    PRESENT_VALUE(
            List.of(Kind.NUMBER),
            Beside.RATE,
            lines -> lines.get(0).unit(),
            (ranges, beside) -> "(NPV(" + beside + "," + ranges.get(0) + ")*(1+" + beside + "))",
            (to, rows, beside) -> Gather.discounted(to, rows[0], beside)),
    /** The rate at which flows, the first of them at once, have no present value; beside them a first guess. */
    RATE_OF_RETURN(
            List.of(Kind.NUMBER),
            Beside.RATE,
            lines -> Interest.rateOn(lines.get(0).unit()),
            (ranges, beside) -> "IRR(" + ranges.get(0) + "," + beside + ")",
            (to, rows, beside) -> to.apply(Function.RATE_OF_RETURN, rows[0]));

    /** What stands beside the lines. */
    private enum Beside {
        NOTHING(null),
        TEXT(Kind.TEXT),
        /** A rate on the money of the first line. */
        RATE(Kind.NUMBER);

        private final Kind kind;

        Beside(Kind kind) {
            this.kind = kind;
        }
    }

    @FunctionalInterface
    private interface UnitRule {
        Unit of(List<Line> lines);
    }

    @FunctionalInterface
    private interface Spelled {
        String of(List<String> ranges, String beside);
    }

    @FunctionalInterface
    private interface Written {
        int to(Instructions instructions, int[][] rows, int beside);
    }

    private final List<Kind> takes;
    private final Beside beside;
    private final transient UnitRule unit;
    private final transient Spelled spelled;
    private final transient Written written;

    Gather(List<Kind> takes, Beside beside, UnitRule unit, Spelled spelled, Written written) {
        this.takes = takes;
        this.beside = beside;
        this.unit = unit;
        this.spelled = spelled;
        this.written = written;
    }

    void check(List<Line> lines, Formula found) {
        if (lines.size() != takes.size()) {
            throw new FormulaException(this + " takes " + takes.size() + " lines, but found " + lines + ".");
        }
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).kind() != takes.get(i)) {
                throw new FormulaException(this + " wants a " + takes.get(i) + ", but line " + lines.get(i) + " is a "
                        + lines.get(i).kind() + ".");
            }
        }
        if ((found == null ? null : found.kind()) != beside.kind) {
            throw new FormulaException(this + " is given " + (found == null ? "nothing" : "a " + found.kind())
                    + " beside its lines, but takes " + (beside.kind == null ? "nothing" : "a " + beside.kind) + ".");
        }
        if (beside == Beside.RATE) {
            checkRate(lines.get(0).unit(), found.unit());
        }
    }

    private static void checkRate(Unit money, Unit found) {
        Unit rate = Interest.rateOn(money);
        if (!found.equals(rate)) {
            throw new FormulaException("A rate on " + money + " is in " + rate + ", but found " + found + ".");
        }
    }

    Unit unit(List<Line> lines) {
        return unit.of(lines);
    }

    String spelled(List<String> ranges, String tag) {
        return spelled.of(ranges, tag);
    }

    /**
     * Writes what is computed.
     *
     * @param to where it is written
     * @param rows for each line the operand of each of its rows
     * @param tag operand of what stands beside the lines; 0 when nothing does
     * @return operand of the result
     */
    public int write(Instructions to, int[][] rows, int tag) {
        return written.to(to, rows, tag);
    }

    private static int[] pairs(int[] left, int[] right) {
        int[] pairs = new int[2 * left.length];
        for (int row = 0; row < left.length; row++) {
            pairs[2 * row] = left[row];
            pairs[2 * row + 1] = right[row];
        }
        return pairs;
    }

    private static int[] same(Instructions to, int[] tags, int wanted) {
        int[] same = new int[tags.length];
        for (int row = 0; row < same.length; row++) {
            same[row] = to.apply(Function.SAME_TEXT, tags[row], wanted);
        }
        return same;
    }

    private static int[] positive(Instructions to, int[] values) {
        int[] positive = new int[values.length];
        for (int row = 0; row < positive.length; row++) {
            positive[row] = to.apply(Function.POSITIVE, values[row]);
        }
        return positive;
    }

    private static int chained(Instructions to, Function function, int[] values) {
        int result = values[0];
        for (int row = 1; row < values.length; row++) {
            result = to.apply(function, result, values[row]);
        }
        return result;
    }

    private static int discounted(Instructions to, int[] flows, int rate) {
        int growth = to.apply(Function.ADD, to.constant(1), rate);
        int value = flows[flows.length - 1];
        for (int year = flows.length - 2; year >= 0; year--) {
            value = to.apply(Function.ADD, to.apply(Function.DIVIDE, value, growth), flows[year]);
        }
        return value;
    }
}
