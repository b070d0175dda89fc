package org.benchmetre.workbook;

import java.util.Locale;

/**
 * Text in the markup of a workbook. Strings of cells follow ECMA-376 part 1, 22.9.2.19 (ST_Xstring): a character that XML cannot hold
 * is written as {@code _xHHHH_}, and a text that has such letters of its own has its underline escaped.
 */
final class Markup {

    private static final char REPLACEMENT = '\uFFFD';

    private Markup() {}

    /** A text of a cell. */
    static void text(StringBuilder out, String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '_' && looksEscaped(text, i)) {
                escape(out, letter);
            } else if (letter == '\r' || !isAllowed(text, i)) {
                escape(out, letter);
            } else {
                letter(out, letter);
            }
        }
    }

    /** A formula, which knows no such escapes: what XML cannot hold becomes the replacement character. */
    static void formula(StringBuilder out, String formula) {
        for (int i = 0; i < formula.length(); i++) {
            letter(out, isAllowed(formula, i) ? formula.charAt(i) : REPLACEMENT);
        }
    }

    private static void letter(StringBuilder out, char letter) {
        switch (letter) {
            case '&' -> out.append("&amp;");
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            default -> out.append(letter);
        }
    }

    /** An escape has four digits; some readers go by any number of them, and by a large x. */
    private static boolean looksEscaped(String text, int at) {
        int end = at + 2;
        while (end < text.length() && Character.digit(text.charAt(end), 16) >= 0) {
            end++;
        }
        boolean crossed = end > at + 2 && (text.charAt(at + 1) == 'x' || text.charAt(at + 1) == 'X');
        return crossed && end < text.length() && text.charAt(end) == '_';
    }

    /** Whether XML 1.0 can hold a character: not most controls, nor half of a pair. */
    private static boolean isAllowed(String text, int at) {
        char letter = text.charAt(at);
        if (Character.isHighSurrogate(letter)) {
            return at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
        }
        if (Character.isLowSurrogate(letter)) {
            return at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
        }
        return letter >= ' ' && letter < '\uFFFE' || letter == '\n' || letter == '\t';
    }

    private static void escape(StringBuilder out, char letter) {
        out.append("_x")
                .append(String.format(Locale.ROOT, "%04X", (int) letter))
                .append('_');
    }
}
