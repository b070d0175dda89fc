package org.benchmetre.budget.entry;

import java.io.Serializable;
import org.benchmetre.budget.unit.Unit;

/**
 * The value of one entry cell: as typed, in the unit it was typed in, and as the line takes it. Nobody has looked at it yet: only
 * {@code Budget.with} puts it into a cell, and only if the entry takes it.
 *
 * @param filled false for a blank cell, which counts as 0 or as the empty text
 * @param number the number in the line's unit; 0 for a text
 * @param text the text; empty for a number
 * @param as the number and the unit it was typed in
 * @param credit where the value comes from
 * @param range the usual range that the scenario gives this cell, in the line's unit; unknown where it gives none
 */
public record Given(boolean filled, double number, String text, AsTyped as, Credit credit, Plausible range)
        implements Serializable {

    /**
     * A number as it was typed.
     *
     * @param number finite
     * @param unit the unit it was typed in
     */
    public record AsTyped(double number, Unit unit) implements Serializable {}

    /**
     * Where a value comes from.
     *
     * @param source in words, such as a catalogue; may be empty
     * @param origin the cell it was read from
     */
    public record Credit(String source, Origin origin) implements Serializable {

        static final Credit NONE = new Credit("", Origin.DEFAULT);
    }

    /** Turns minus zero into zero. */
    public Given {
        number = number + 0.0;
        as = new AsTyped(as.number() + 0.0, as.unit());
    }

    private static Given of(boolean filled, double number, String text, AsTyped as) {
        return new Given(filled, number, text, as, Credit.NONE, Plausible.UNKNOWN);
    }

    /**
     * A number in the line's own unit.
     *
     * @param number any number
     * @param unit the line's unit
     * @return the value
     */
    public static Given number(double number, Unit unit) {
        return of(true, number, "", new AsTyped(number, unit));
    }

    /**
     * A number typed in some unit of the line's dimension.
     *
     * @param typed any number
     * @param typedIn the unit it is typed in
     * @param lineUnit the unit of the line
     * @return the value
     * @throws org.benchmetre.budget.unit.UnitException when the dimensions differ
     */
    public static Given typed(double typed, Unit typedIn, Unit lineUnit) {
        return of(true, typedIn.convertLevel(typed, lineUnit), "", new AsTyped(typed, typedIn));
    }

    /**
     * The same number with the unit that was typed behind it, where a column of its own holds that.
     *
     * @param unit what the column may hold
     * @return the value, which a gate still has to take apart
     */
    Given beside(Unit unit) {
        return new Given(filled, number, text, new AsTyped(as.number(), unit), credit, range);
    }

    /**
     * Whether the unit behind the number belongs into a column of its own.
     *
     * @param lineUnit the unit of the line
     * @return true for what {@link #beside} made
     */
    public boolean isBeside(Unit lineUnit) {
        return filled && text.isEmpty() && !typedIn().sameDimension(lineUnit);
    }

    /**
     * A number in the line's own unit, of the same source.
     *
     * @param value any number
     * @param lineUnit the unit of the line
     * @return the value
     */
    public Given bare(double value, Unit lineUnit) {
        return new Given(filled, value, text, new AsTyped(value, lineUnit), credit, range);
    }

    /**
     * A text.
     *
     * @param text any text; an empty one is a blank cell
     * @return the value
     */
    public static Given text(String text) {
        return of(!text.isEmpty(), 0, text, new AsTyped(0, Unit.ONE));
    }

    /**
     * A blank cell.
     *
     * @param unit the line's unit
     * @return the value
     */
    public static Given blank(Unit unit) {
        return of(false, 0, "", new AsTyped(0, unit));
    }

    /**
     * The number as typed.
     *
     * @return in {@link #typedIn}
     */
    public double typed() {
        return as.number();
    }

    /**
     * The unit it was typed in.
     *
     * @return of the line's dimension
     */
    public Unit typedIn() {
        return as.unit();
    }

    /**
     * Where the value comes from, in words.
     *
     * @return may be empty
     */
    public String source() {
        return credit.source();
    }

    /**
     * The cell the value was read from.
     *
     * @return {@link Origin#DEFAULT} for a documented default
     */
    public Origin origin() {
        return credit.origin();
    }

    /**
     * The same value with its source.
     *
     * @param words where it comes from
     * @return the value
     */
    public Given from(String words) {
        return new Given(filled, number, text, as, new Credit(words, origin()), range);
    }

    /**
     * The same value with the cell it was read from.
     *
     * @param place file, setting or sheet
     * @return the value
     */
    public Given at(Origin place) {
        return new Given(filled, number, text, as, new Credit(source(), place), range);
    }

    /**
     * The same value with a usual range of its own.
     *
     * @param own in the line's unit
     * @return the value
     */
    public Given usually(Plausible own) {
        return new Given(filled, number, text, as, credit, own);
    }
}
