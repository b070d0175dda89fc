package org.benchmetre.scenario;

import java.util.List;
import java.util.Map;
import org.benchmetre.budget.entry.NearNames;

/**
 * A row of single values that is no entry, but a word that decides which lines there are.
 *
 * @param line its name
 * @param words those that may stand there
 * @param usual the word where it is not given
 * @param apartFrom another choice that may not have the same word; empty for none
 */
public record WordChoice(String line, List<String> words, String usual, String apartFrom) {

    /** Keeps its own copy. */
    public WordChoice {
        words = List.copyOf(words);
    }

    /** The usual word, or the first other one where that is taken. */
    String otherwise(Map<String, String> chosen) {
        String taken = chosen.getOrDefault(apartFrom, "");
        return usual.equals(taken)
                ? words.stream().filter(word -> !word.equals(taken)).findFirst().orElse(usual)
                : usual;
    }

    /** What is expected in place of a word; empty where the word will do. */
    String expected(String word, Map<String, String> chosen) {
        if (!words.contains(word)) {
            String near = NearNames.didYouMean(word, words);
            return "one of " + String.join(", ", words) + " for " + line + (near.isEmpty() ? "" : "; " + near);
        }
        boolean taken = word.equals(chosen.getOrDefault(apartFrom, ""));
        return taken ? "another word than that of " + apartFrom + " for " + line : "";
    }
}
