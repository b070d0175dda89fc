package org.benchmetre.scenario;

import java.util.regex.Pattern;

/**
 * Numbers as text: an optional sign, digits, one decimal mark with digits behind it, an optional exponent. No thousands
 * separators, no words, no other scripts' digits.
 */
final class NumberText {

    private static final Pattern FORM = Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");
    private static final Pattern OTHER_MARKS = Pattern.compile("[+-]?[0-9.,'\u2019 \u00a0\u2009\u202f]+");
    private static final Pattern SOMETHING_BESIDE =
            Pattern.compile("[+-]?[0-9][0-9.,]*\\s*\\D+|[^0-9+.-]+[0-9][0-9.,]*");

    private NumberText() {}

    /** The number; NaN when the text is not of the form, an infinity when it is too large. */
    static double parse(String text, boolean decimalComma) {
        String pointed = decimalComma ? withPoint(text) : text;
        return FORM.matcher(pointed).matches() ? Double.parseDouble(pointed) + 0.0 : Double.NaN;
    }

    private static String withPoint(String text) {
        return text.indexOf('.') >= 0 ? "no number" : text.replace(',', '.');
    }

    /** What to say behind the expected range of a text that is not a number, or too large a one; may be empty. */
    static String hint(String text, boolean decimalComma) {
        if (Double.isInfinite(parse(text, decimalComma))) {
            return ", no larger than 1.7E308 in size";
        }
        if (OTHER_MARKS.matcher(text).matches()) {
            return ", with a decimal " + (decimalComma ? "comma" : "point") + " and no thousands separators";
        }
        return SOMETHING_BESIDE.matcher(text).matches() ? ", with nothing beside it in the cell" : "";
    }
}
