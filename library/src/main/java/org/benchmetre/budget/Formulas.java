package org.benchmetre.budget;

import java.util.List;
import org.benchmetre.budget.unit.Unit;

/** Words to write formulas with, meant for a static import: conditions, choices between alternatives, sums along an axis. */
public final class Formulas {

    private static final int MONTHS_OF_A_YEAR = 12;
    private static final Unit MONTH_COUNTED = Unit.parse("mo/a");
    private static final Unit YEAR_COUNTED = Unit.parse("a/mo");

    private Formulas() {}

    /**
     * A number written in a formula.
     *
     * @param value finite
     * @param unit its unit
     * @return the constant
     */
    public static Formula number(double value, Unit unit) {
        return Constant.number(value, unit);
    }

    /**
     * The plain number one, for {@code one().plus(waste)}.
     *
     * @return 1
     */
    public static Formula one() {
        return Constant.number(1, Unit.ONE);
    }

    /**
     * Nothing of a unit.
     *
     * @param unit the unit
     * @return 0
     */
    public static Formula none(Unit unit) {
        return Constant.number(0, unit);
    }

    /**
     * A text written in a formula.
     *
     * @param value any text
     * @return the constant
     */
    public static Formula text(String value) {
        return Constant.text(value);
    }

    /**
     * One of two alternatives of the same unit and kind: {@code IF(condition, yes, no)}. The one not chosen is not evaluated.
     *
     * @param condition a truth
     * @param yes the value where it holds
     * @param no the value where it does not
     * @return the chosen value
     */
    public static Formula when(Formula condition, Formula yes, Formula no) {
        return Call.of(Function.IF, condition, yes, no);
    }

    /**
     * A number where the condition holds, else a reason why there is none.
     *
     * @param condition a truth
     * @param value a number
     * @param reason a few words, as shown in the cell
     * @return an optional number
     */
    public static Formula onlyWhen(Formula condition, Formula value, String reason) {
        return onlyWhen(condition, value, text(reason));
    }

    /**
     * A number where the condition holds, else a reason that is itself a figure.
     *
     * @param condition a truth
     * @param value a number
     * @param reason a text, as shown in the cell
     * @return an optional number
     */
    public static Formula onlyWhen(Formula condition, Formula value, Formula reason) {
        return Call.of(Function.ONLY_IF, condition, value, reason);
    }

    /**
     * Whether all hold.
     *
     * @param conditions at least one truth
     * @return a truth
     */
    public static Formula and(Formula... conditions) {
        return Call.of(Function.AND, conditions);
    }

    /**
     * Whether any holds.
     *
     * @param conditions at least one truth
     * @return a truth
     */
    public static Formula or(Formula... conditions) {
        return Call.of(Function.OR, conditions);
    }

    /**
     * Whether it does not hold.
     *
     * @param condition a truth
     * @return a truth
     */
    public static Formula not(Formula condition) {
        return Call.of(Function.NOT, condition);
    }

    /**
     * Texts one after the other, as one text: {@code a&b}. So a sentence can carry a label or a key.
     *
     * @param texts at least one text
     * @return a text
     */
    public static Formula joined(Formula... texts) {
        return Call.of(Function.JOIN, texts);
    }

    /**
     * A number as part of a sentence: {@code FIXED(x,decimals,FALSE)}, with commas between thousands.
     *
     * @param number a number of any unit; the sentence says the unit
     * @param decimals how many, from 0 to 9
     * @return a text
     */
    public static Formula shown(Formula number, int decimals) {
        return Call.of(Function.SHOWN, number, Constant.number(decimals, Unit.ONE));
    }

    /**
     * The lesser of two.
     *
     * @param left a number
     * @param right a number of the same unit
     * @return the lesser
     */
    public static Formula lesser(Formula left, Formula right) {
        return Call.of(Function.MIN, left, right);
    }

    /**
     * The greater of two.
     *
     * @param left a number
     * @param right a number of the same unit
     * @return the greater
     */
    public static Formula greater(Formula left, Formula right) {
        return Call.of(Function.MAX, left, right);
    }

    /**
     * Natural exponential: {@code EXP(x)}. Of what may be large hand in the negative, which no program takes for an error.
     *
     * @param exponent a plain number
     * @return e to that power
     */
    public static Formula exponential(Formula exponent) {
        return Call.of(Function.EXP, exponent);
    }

    /**
     * Yearly amount that recovers a cost over its life with interest, less what its salvage is worth then: cost r/(1-q) less
     * salvage r q/(1-q) with q = (1+r)^-n. American Agricultural Economics Association, Commodity Costs and Returns Estimation
     * Handbook, 2000, chapter on capital recovery; any text of engineering economy.
     *
     * @param rate real on money of today, nominal on money of its year, in {@code real/a} or {@code nominal/a}
     * @param life in {@code a}, above zero; guard it
     * @param cost money
     * @param salvage money of the same unit; negative when disposal costs
     * @return money a year
     */
    public static Formula recovery(Formula rate, Formula life, Formula cost, Formula salvage) {
        return Call.of(Function.RECOVERY, rate, life, cost, salvage);
    }

    /**
     * Sum along an axis.
     *
     * @param line what is summed
     * @param axis along which axis
     * @return the sum, in the line's unit
     */
    public static Formula sum(Line line, Axis axis) {
        return new Fold(Gather.SUM, axis, List.of(line), null);
    }

    /**
     * The yearly total of a figure that is told by month: the sum over the twelve months, with {@code /mo} turned into {@code /a}. The
     * number is that of the sum, since each month counts once; only the unit changes.
     *
     * @param monthly what is summed, in a unit with {@code /mo}, such as {@code kg/mo}
     * @param months twelve periods
     * @return the total, in the same unit with {@code /a} in place of {@code /mo}
     * @throws FormulaException when the unit has no {@code mo} to the power -1, or there are not twelve periods
     */
    public static Formula yearOf(Line monthly, Axis months) {
        if (monthly.unit().exponentOf("mo") != -1) {
            throw new FormulaException("A yearly total is made of figures by month, in a unit with /mo, but " + monthly
                    + " is in " + monthly.unit() + ".");
        }
        if (!months.isOrdered() || months.size() != MONTHS_OF_A_YEAR) {
            throw new FormulaException("A yearly total is made of twelve months, but " + months + " has "
                    + months.size() + (months.isOrdered() ? " periods." : " rows."));
        }
        return sum(monthly, months).times(number(1, MONTH_COUNTED));
    }

    /**
     * What falls in a month of a yearly amount: the amount times the month's share, with {@code /a} turned into {@code /mo}. The
     * number stays; only the unit changes.
     *
     * @param ofMonth a yearly amount times the share that falls in the month, in a unit with {@code /a}
     * @return the same number with {@code /mo} in place of {@code /a}
     * @throws FormulaException when the unit has no {@code a} to the power -1
     */
    public static Formula monthOf(Formula ofMonth) {
        if (ofMonth.unit().exponentOf("a") != -1) {
            throw new FormulaException("What falls in a month is a share of a yearly amount, in a unit with /a, but "
                    + Words.of(ofMonth) + " is in " + ofMonth.unit() + ".");
        }
        return ofMonth.times(number(1, YEAR_COUNTED));
    }

    /**
     * Sum of the products of two lines along an axis.
     *
     * @param left one factor
     * @param right the other factor
     * @param axis along which axis
     * @return the sum
     */
    public static Formula sumProduct(Line left, Line right, Axis axis) {
        return new Fold(Gather.SUM_PRODUCT, axis, List.of(left, right), null);
    }

    /**
     * Sum of the rows with a tag.
     *
     * @param line what is summed
     * @param tags the text line of tags, along the axis
     * @param tag the tag wanted, without {@code * ? ~}; guard an empty one
     * @param axis along which axis
     * @return the sum, in the line's unit
     */
    public static Formula sumWhere(Line line, Line tags, Formula tag, Axis axis) {
        return new Fold(Gather.SUM_WHERE, axis, List.of(line, tags), tag);
    }

    /**
     * Number of rows with a tag.
     *
     * @param tags the text line of tags, along the axis
     * @param tag the tag wanted, without {@code * ? ~}; guard an empty one
     * @param axis along which axis
     * @return the count, a plain number
     */
    public static Formula countWhere(Line tags, Formula tag, Axis axis) {
        return new Fold(Gather.COUNT_WHERE, axis, List.of(tags), tag);
    }

    /**
     * Number of rows above zero.
     *
     * @param line what is counted
     * @param axis along which axis
     * @return the count, a plain number
     */
    public static Formula countPositive(Line line, Axis axis) {
        return new Fold(Gather.COUNT_POSITIVE, axis, List.of(line), null);
    }

    /**
     * Least along an axis.
     *
     * @param line a number line
     * @param axis along which axis
     * @return the least row
     */
    public static Formula least(Line line, Axis axis) {
        return new Fold(Gather.LEAST, axis, List.of(line), null);
    }

    /**
     * Greatest along an axis.
     *
     * @param line a number line
     * @param axis along which axis
     * @return the greatest row
     */
    public static Formula greatest(Line line, Axis axis) {
        return new Fold(Gather.GREATEST, axis, List.of(line), null);
    }

    /**
     * Present value of yearly flows, the first of them at once and undiscounted.
     *
     * @param rate a year, above -1, real on money of today and nominal on money of its year
     * @param flows money along the years
     * @param years the axis
     * @return money of today
     */
    public static Formula presentValue(Formula rate, Line flows, Axis years) {
        return new Fold(Gather.PRESENT_VALUE, years, List.of(flows), rate);
    }

    /**
     * The yearly rate at which flows have no present value. Guard it: there is a single one only where the flows change sign once.
     *
     * @param flows money along the years, the first of them at once
     * @param years the axis
     * @param guess where a spreadsheet program begins to search; the value does not depend on it
     * @return a rate of the kind of the money
     */
    public static Formula rateOfReturn(Line flows, Axis years, Formula guess) {
        return new Fold(Gather.RATE_OF_RETURN, years, List.of(flows), guess);
    }

    /**
     * The value of the row whose key is asked for.
     *
     * @param values the line to take from
     * @param keys the text line of keys, along one axis of the values
     * @param key the key asked for
     * @return the value
     */
    public static Formula lookup(Line values, Line keys, Formula key) {
        return new Lookup(values, keys, key);
    }

    /**
     * The value one period back.
     *
     * @param line a line along periods
     * @param initial what stands before the first period
     * @return the value of the period before
     */
    public static Formula previous(Line line, Formula initial) {
        return new Previous(line, initial);
    }
}
