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
 * @param barred a word that another choice rules out
 */
public record WordChoice(String line, List<String> words, String usual, String apartFrom, Barred barred) {

    /**
     * A word that is not to be had while another choice has a certain word.
     *
     * @param word the word; empty for none
     * @param choice the other choice
     * @param being its word that rules this one out
     */
    public record Barred(String word, String choice, String being) {

        /** No word. */
        public static final Barred NONE = new Barred("", "", "");

        boolean bars(String other, Map<String, String> chosen) {
            return other.equals(word) && being.equals(chosen.get(choice));
        }
    }

    /**
     * A choice of which no word is ruled out.
     *
     * @param line its name
     * @param words those that may stand there
     * @param usual the word where it is not given
     * @param apartFrom another choice that may not have the same word; empty for none
     */
    public WordChoice(String line, List<String> words, String usual, String apartFrom) {
        this(line, words, usual, apartFrom, Barred.NONE);
    }

    /** Keeps its own copy. */
    public WordChoice {
        words = List.copyOf(words);
    }

    /**
     * The same choice, of which another one rules out a word.
     *
     * @param other the word and what rules it out; a choice that is read before this one
     * @return the choice
     */
    public WordChoice without(Barred other) {
        return new WordChoice(line, words, usual, apartFrom, other);
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
        if (barred.bars(word, chosen)) {
            return "another word for " + line + ", since " + barred.choice() + " is " + barred.being();
        }
        boolean taken = word.equals(chosen.getOrDefault(apartFrom, ""));
        return taken ? "another word than that of " + apartFrom + " for " + line : "";
    }
}
