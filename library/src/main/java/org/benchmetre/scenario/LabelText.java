package org.benchmetre.scenario;

/** Which text a workbook can hold, and which its formulas can look up. */
final class LabelText {

    /** The longest text of a spreadsheet cell, in UTF-16 units. */
    private static final int LONGEST = 32_767;

    /** The longest text that lookups accept. */
    private static final int LONGEST_LOOKUP = 255;

    private static final String PATTERN_SIGNS = "*?~<>=\"";

    private LabelText() {}

    static boolean isFit(String text, boolean lookup) {
        return text.length() <= (lookup ? LONGEST_LOOKUP : LONGEST)
                && text.codePoints().allMatch(point -> isFit(point, lookup));
    }

    private static boolean isFit(int point, boolean lookup) {
        boolean control = Character.isISOControl(point);
        boolean noCharacter = (point & 0xFFFE) == 0xFFFE;
        if (lookup) {
            return !control && !noCharacter && PATTERN_SIGNS.indexOf(point) < 0;
        }
        return (!control || point == '\n' || point == '\t') && !noCharacter;
    }

    static String form(boolean lookup) {
        return lookup
                ? "text of at most 255 characters on one line, without any of * ? ~ < > = \""
                : "text of at most 32767 characters without control characters";
    }
}
