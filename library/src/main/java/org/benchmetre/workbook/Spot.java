package org.benchmetre.workbook;

import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;

/**
 * One cell of a workbook.
 *
 * @param sheet name of its sheet
 * @param row from 0
 * @param column from 0
 */
record Spot(String sheet, int row, int column) {

    private static final Pattern NEEDS_NO_QUOTES = Pattern.compile("[A-Za-z]{4,}");

    /** The absolute reference with its sheet, quoted where a formula needs it. */
    String reference() {
        return shortName() + "!" + local();
    }

    /** The absolute reference with its sheet always quoted, as a defined name wants it. */
    String quoted() {
        return quotedName() + "!" + local();
    }

    /** The absolute reference to the rectangle between this cell and another of the same sheet. */
    String to(Spot last) {
        return reference() + (equals(last) ? "" : ":" + last.local());
    }

    /** The reference with its sheet always quoted and without dollar signs, as a link wants it. */
    String quotedRelative() {
        return quotedName() + "!" + relative();
    }

    /** The reference without its sheet and without dollar signs. */
    String relative() {
        return CellReference.convertNumToColString(column) + (row + 1);
    }

    /** The absolute reference from a formula of a sheet: with its sheet only where that is another one. */
    String seenFrom(String here) {
        return sheet.equals(here) ? local() : reference();
    }

    /** The absolute reference without its sheet. */
    String local() {
        return "$" + CellReference.convertNumToColString(column) + "$" + (row + 1);
    }

    private String shortName() {
        return NEEDS_NO_QUOTES.matcher(sheet).matches() ? sheet : quotedName();
    }

    private String quotedName() {
        return "'" + sheet.replace("'", "''") + "'";
    }
}
