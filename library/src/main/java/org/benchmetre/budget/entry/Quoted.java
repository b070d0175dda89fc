package org.benchmetre.budget.entry;

import java.util.Locale;

/** Text of the input as messages show it. */
public final class Quoted {

    private static final int SHOWN = 60;
    private static final String JOINERS = "\u200C\u200D";

    private Quoted() {}

    /**
     * A text in quotation marks, what cannot be seen escaped, cut after 60 characters.
     *
     * @param text any text
     * @return {@code nothing} when it is empty
     */
    public static String text(String text) {
        return text.isEmpty() ? "nothing" : always(text);
    }

    /**
     * The same for a text that may be empty.
     *
     * @param text any text
     * @return in quotation marks
     */
    public static String always(String text) {
        StringBuilder shown = new StringBuilder("\"");
        text.codePoints().limit(SHOWN).forEach(point -> append(shown, point, isInvisible(point)));
        return shown.append(text.codePointCount(0, text.length()) > SHOWN ? "...\"" : "\"")
                .toString();
    }

    /**
     * A text as it may stand in a sentence or a table on a console: control characters, marks that turn the direction of
     * writing, separators of lines and paragraphs and halves of a pair are escaped.
     *
     * @param text any text
     * @return the same text where it has none of them
     */
    public static String visible(String text) {
        if (text.codePoints().noneMatch(Quoted::isUnsafe)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(point -> append(shown, point, isUnsafe(point)));
        return shown.toString();
    }

    private static void append(StringBuilder shown, int point, boolean escaped) {
        switch (point) {
            case '\n' -> shown.append("\\n");
            case '\r' -> shown.append("\\r");
            case '\t' -> shown.append("\\t");
            default -> {
                if (escaped) {
                    shown.append(String.format(Locale.ROOT, "\\u%04X", point));
                } else {
                    shown.appendCodePoint(point);
                }
            }
        }
    }

    private static boolean isInvisible(int point) {
        return isUnsafe(point) || JOINERS.indexOf(point) >= 0 || point != ' ' && Character.isSpaceChar(point);
    }

    /**
     * Control characters of both ranges, marks that turn the direction of writing and other format characters, separators of lines and
     * paragraphs, halves of a pair (Unicode general categories Cc, Cf, Zl, Zp, Cs). The two joiners, without which some
     * scripts cannot be written, are safe.
     */
    private static boolean isUnsafe(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            case Character.FORMAT -> JOINERS.indexOf(point) < 0;
            default -> false;
        };
    }
}
