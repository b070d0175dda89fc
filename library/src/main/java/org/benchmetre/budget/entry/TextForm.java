package org.benchmetre.budget.entry;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which texts an entry takes.
 *
 * @param kind free text, a word of a list, a unit, a date, a key, or several keys
 * @param words the words, units or keys it takes; empty when only their form is known here
 * @param names what files hold in place of each word, in the same order; empty when the words stand for themselves
 * @param labels what people read in place of each word, in the same order; empty for keys and free text
 * @param keysOf identifier of the line whose filled keys it takes; empty when there is none
 */
public record TextForm(Kind kind, List<String> words, List<String> names, List<String> labels, String keysOf)
        implements Serializable {

    /** Kinds of text. */
    public enum Kind {
        /** Any text that a cell holds. */
        FREE,
        /** The name of a row, on one line. */
        NAME,
        /** The name of a group, on one line, that formulas may look up. */
        LABEL,
        /** The key of a row: letters a to z, digits and underscores. */
        OWN_KEY,
        /** One word of a list, or one key of a table. */
        WORD,
        /** Any number of keys of a table, apart by spaces. */
        KEYS,
        /** A day of the calendar as year, month and day, such as 2026-03-31. */
        DATE,
        /** A unit of a list, in any spelling. */
        UNIT,
        /** A unit of a list, in any spelling, or a word for what is counted. */
        UNIT_OR_COUNT
    }

    private static final int LISTED = 20;

    /** Any text. */
    public static final TextForm FREE = new TextForm(Kind.FREE, List.of(), List.of(), List.of(), "");

    /** The name of a row. */
    public static final TextForm NAME = new TextForm(Kind.NAME, List.of(), List.of(), List.of(), "");

    /** The name of a group. */
    public static final TextForm GROUP = new TextForm(Kind.LABEL, List.of(), List.of(), List.of(), "");

    /** The key of a row. */
    public static final TextForm OWN_KEY = new TextForm(Kind.OWN_KEY, List.of(), List.of(), List.of(), "");

    /** A day of the calendar, which sorts as a text as it does in time. */
    public static final TextForm DATE = new TextForm(Kind.DATE, List.of(), List.of(), List.of(), "");

    /** Keeps its own copies of the lists. */
    public TextForm {
        words = List.copyOf(words);
        names = List.copyOf(names);
        labels = List.copyOf(labels);
    }

    /**
     * One word of a list.
     *
     * @param words all of them
     * @return the form
     */
    public static TextForm oneOf(List<String> words) {
        return new TextForm(
                Kind.WORD, words, List.of(), words.stream().map(TextForm::plain).toList(), "");
    }

    /**
     * One word of a list, which people know by a name.
     *
     * @param words all of them
     * @param names their names, in the same order
     * @return the form
     */
    public static TextForm oneOf(List<String> words, List<String> names) {
        return new TextForm(Kind.WORD, words, names, names, "");
    }

    /**
     * The same with other labels for some of its words.
     *
     * @param others labels by word; words that the form does not know are passed over
     * @return the form
     */
    public TextForm labelled(Map<String, String> others) {
        List<String> all = words.stream()
                .map(word -> others.getOrDefault(word, label(word)))
                .toList();
        return new TextForm(kind, words, names, all, keysOf);
    }

    /** Underscores to spaces, the first letter upper case; yes and no as they are. */
    private static String plain(String word) {
        String spaced = word.replace('_', ' ');
        return word.equals("yes") || word.equals("no")
                ? word
                : spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
    }

    /**
     * A unit of a list, in any spelling. The list's own is kept.
     *
     * @param units as files keep them
     * @return the form
     */
    public static TextForm unitOf(List<String> units) {
        return new TextForm(Kind.UNIT, units, List.of(), List.of(), "");
    }

    /**
     * A unit of a list, in any spelling, or a word for what is counted.
     *
     * @param units as files keep them
     * @return the form
     */
    public static TextForm unitOrCount(List<String> units) {
        return new TextForm(Kind.UNIT_OR_COUNT, units, List.of(), List.of(), "");
    }

    /**
     * A key of a table.
     *
     * @param keys identifier of the line of its keys
     * @return the form
     */
    public static TextForm keyOf(String keys) {
        return new TextForm(Kind.WORD, List.of(), List.of(), List.of(), keys);
    }

    /**
     * Any number of keys of a table, apart by spaces.
     *
     * @param keys identifier of the line of its keys
     * @return the form
     */
    public static TextForm keysOf(String keys) {
        return new TextForm(Kind.KEYS, List.of(), List.of(), List.of(), keys);
    }

    /**
     * Whether a text is of the form, as far as the form alone says.
     *
     * @param text not empty; words and keys in lower case
     * @return false for what cannot be written into a workbook, or is no word of the list
     */
    public boolean isFit(String text) {
        return switch (kind) {
            case FREE -> LabelText.isFree(text);
            case NAME -> LabelText.isName(text);
            case LABEL -> LabelText.isLookup(text);
            case OWN_KEY -> LabelText.isKey(text);
            case WORD -> words.isEmpty() ? LabelText.isKey(text) : words.contains(text);
            case KEYS -> Arrays.stream(text.split(" ")).allMatch(LabelText::isKey);
            case DATE -> DateText.isFit(text);
            case UNIT -> words.contains(text);
            case UNIT_OR_COUNT -> words.contains(text) || OwnCount.isFit(text, words);
        };
    }

    /**
     * What is expected, in words.
     *
     * @return for example {@code one of a, crop}
     */
    public String expected() {
        return switch (kind) {
            case FREE -> LabelText.FREE_FORM;
            case NAME -> LabelText.NAME_FORM;
            case LABEL -> LabelText.LOOKUP_FORM;
            case OWN_KEY -> "a key: " + LabelText.KEY_FORM;
            case WORD -> words.isEmpty() ? "a key: " + LabelText.KEY_FORM : listed();
            case KEYS -> "keys separated by spaces, each " + LabelText.KEY_FORM;
            case DATE -> DateText.FORM;
            case UNIT -> "one of " + String.join(", ", words);
            case UNIT_OR_COUNT ->
                "a unit such as m, ft, m2, L, ft3 or kg, or a word for what is counted, such as each or roll,";
        };
    }

    private String listed() {
        List<String> known = shown();
        return known.size() <= LISTED
                ? "one of " + String.join(", ", known)
                : "one of " + known.size() + " known words";
    }

    /**
     * What a reader may choose from.
     *
     * @return names where there are any, else words; empty when they are keys of a table
     */
    public List<String> shown() {
        return names.isEmpty() ? words : names;
    }

    /**
     * What a reader writes for a word.
     *
     * @param word a word or any other text
     * @return its name where it has one, else the text itself
     */
    public String shown(String word) {
        int named = names.isEmpty() ? -1 : words.indexOf(word);
        return named < 0 ? word : names.get(named);
    }

    /**
     * What people read in place of a word.
     *
     * @param word a word or any other text
     * @return its label where it has one, else the text itself
     */
    public String label(String word) {
        int labelled = labels.isEmpty() ? -1 : words.indexOf(word);
        return labelled < 0 ? word : labels.get(labelled);
    }

    /**
     * Whether the text is compared without regard to case and kept in lower case.
     *
     * @return true for words and keys
     */
    public boolean isFolded() {
        return kind == Kind.OWN_KEY || kind == Kind.WORD || kind == Kind.KEYS;
    }

    /**
     * Whether the text is a unit.
     *
     * @return true where every spelling of a unit is taken
     */
    public boolean isUnit() {
        return kind == Kind.UNIT || kind == Kind.UNIT_OR_COUNT;
    }
}
