package org.benchmetre.budget.entry;

import java.util.regex.Pattern;

/** Which text a workbook can hold, and which its formulas can look up. Lengths are in UTF-16 units. */
final class LabelText {

    /** A spreadsheet cell holds 32,767; the rest is left to the words that stand around a text in messages and explanations. */
    private static final int LONGEST_FREE = 2000;

    /** Names stand in formulas, of which spreadsheet programs read 8,192 characters, and in the columns of a page. */
    private static final int LONGEST_NAME = 250;

    /** The longest text that lookups accept. */
    private static final int LONGEST_LOOKUP = 255;

    /** Keys are parts of the names of lines, which are defined names of at most 255 characters. */
    private static final int LONGEST_KEY = 60;

    private static final String PATTERN_SIGNS = "*?~<>=\"";
    private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9_]*");

    static final String KEY_FORM =
            "a letter a to z, then letters, digits and underscores, at most " + LONGEST_KEY + " together";
    static final String FREE_FORM = "text of at most " + LONGEST_FREE + " characters without control characters";
    static final String NAME_FORM = "text of at most " + LONGEST_NAME + " characters on one line";
    static final String LOOKUP_FORM =
            "text of at most " + LONGEST_LOOKUP + " characters on one line, without any of * ? ~ < > = \"";

    private LabelText() {}

    static boolean isFree(String text) {
        return text.length() <= LONGEST_FREE
                && text.codePoints().allMatch(point -> point == '\n' || point == '\t' || isSeen(point));
    }

    static boolean isName(String text) {
        return text.length() <= LONGEST_NAME && text.codePoints().allMatch(LabelText::isSeen);
    }

    static boolean isLookup(String text) {
        return text.length() <= LONGEST_LOOKUP
                && text.codePoints().allMatch(point -> isSeen(point) && PATTERN_SIGNS.indexOf(point) < 0);
    }

    static boolean isKey(String text) {
        return text.length() <= LONGEST_KEY && KEY.matcher(text).matches();
    }

    private static boolean isSeen(int point) {
        boolean noCharacter = (point & 0xFFFE) == 0xFFFE || Character.getType(point) == Character.SURROGATE;
        return !Character.isISOControl(point) && !noCharacter;
    }
}
