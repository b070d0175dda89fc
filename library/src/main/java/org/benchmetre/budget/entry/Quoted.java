package org.benchmetre.budget.entry;

import java.util.Locale;

/** Text of the input as messages show it. */
public final class Quoted {

    private static final int SHOWN = 60;

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
        text.codePoints().limit(SHOWN).forEach(point -> appendVisibly(shown, point));
        return shown.append(text.codePointCount(0, text.length()) > SHOWN ? "...\"" : "\"")
                .toString();
    }

    private static void appendVisibly(StringBuilder shown, int point) {
        switch (point) {
            case '\n' -> shown.append("\\n");
            case '\r' -> shown.append("\\r");
            case '\t' -> shown.append("\\t");
            default -> {
                if (isInvisible(point)) {
                    shown.append(String.format(Locale.ROOT, "\\u%04X", point));
                } else {
                    shown.appendCodePoint(point);
                }
            }
        }
    }

    private static boolean isInvisible(int point) {
        return Character.isISOControl(point)
                || Character.getType(point) == Character.FORMAT
                || (point != ' ' && Character.isSpaceChar(point));
    }
}
