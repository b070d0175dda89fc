package org.benchmetre.scenario;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.benchmetre.budget.entry.Quoted;

/** Small pieces of the sentences in faults; the same in every locale. */
final class Phrases {

    private Phrases() {}

    static String sentence(String text) {
        return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }

    /** A text cut after so many characters. */
    static String cut(String text, int most) {
        return text.codePointCount(0, text.length()) > most
                ? text.substring(0, text.offsetByCodePoints(0, most)) + "..."
                : text;
    }

    /** The texts quoted and joined: {@code "a", "b" and "c"}. */
    static String quotedList(List<String> texts) {
        return joined(texts.stream().map(Quoted::always).collect(Collectors.toList()), "and");
    }

    /** The texts joined as a sentence does it: {@code a, b or c}. */
    static String joined(List<String> texts, String lastWord) {
        int last = texts.size() - 1;
        return last < 1
                ? String.join("", texts)
                : String.join(", ", texts.subList(0, last)) + " " + lastWord + " " + texts.get(last);
    }

    /** Cut of spaces at both ends, no-break spaces and the like included. */
    static String trimmed(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isSpace(text.charAt(from))) {
            from++;
        }
        while (to > from && isSpace(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** A name as files compare it: trimmed, in lower case whatever the locale. */
    static String folded(String text) {
        return trimmed(text).toLowerCase(Locale.ROOT);
    }
}
