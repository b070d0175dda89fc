package org.benchmetre.budget.entry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How far the value of an entry can be trusted, by the words of its source. A source that says several things is taken by the weakest of
 * them; what it says of the range alone does not count.
 */
public enum EvidenceKind {
    /** A price or figure that somebody was asked for. */
    QUOTED("Quoted", "\\b(quotation|quoted|quote)\\b"),
    /** A published source: a year of our time, or a word that such sources go by. */
    PUBLISHED(
            "Published",
            "\\b(19|20)\\d\\d\\b|\\b(published|handbook|course|proceedings|extension|usda|nrcs|sare|fact sheet|catalogue)\\b"
                    + "|et al|horticultur|uf/ifas|greenhouse grower"),
    /** What growers do, without a source. */
    COMMON_PRACTICE("Common practice, no source", "common practice"),
    /** Remembered, not looked up. */
    FROM_MEMORY("From memory", "from memory"),
    /** Made up for a demonstration. */
    INVENTED("Invented for the demo", "\\binvented\\b"),
    /** A source in words that fit none of these. */
    OTHER("Other words", ""),
    /** An entry of one's own that says nothing of where it comes from. */
    UNSAID("Own entry without source", "");

    /** From the weakest to the strongest. */
    private static final List<EvidenceKind> BY_WEAKNESS =
            List.of(INVENTED, FROM_MEMORY, COMMON_PRACTICE, QUOTED, PUBLISHED);

    /** The same among those that say less or nothing. */
    private static final List<EvidenceKind> FROM_WEAKEST =
            List.of(UNSAID, INVENTED, FROM_MEMORY, OTHER, COMMON_PRACTICE, QUOTED, PUBLISHED);

    /** Parts of a source that speak of the range and not of the value. */
    private static final Pattern OF_RANGE = Pattern.compile("^(range|low end|high end|no source for the range)\\b.*");

    private final String label;
    private final Pattern words;

    EvidenceKind(String label, String words) {
        this.label = label;
        this.words = Pattern.compile(words);
    }

    /**
     * What a reader sees.
     *
     * @return for example {@code From memory}
     */
    public String label() {
        return label;
    }

    /**
     * The kind of a source.
     *
     * @param source as written
     * @return {@link #UNSAID} for an empty one
     */
    public static EvidenceKind of(String source) {
        if (source.isBlank()) {
            return UNSAID;
        }
        List<String> parts = partsOfValue(source.toLowerCase(Locale.ROOT));
        return BY_WEAKNESS.stream()
                .filter(kind ->
                        parts.stream().anyMatch(part -> kind.words.matcher(part).find()))
                .findFirst()
                .orElse(OTHER);
    }

    /**
     * What a source says of the value, without what it says of the range.
     *
     * @param source as written
     * @return the same words, or all of them where they speak of the range alone
     */
    public static String ofValue(String source) {
        String found = String.join("; ", partsOfValue(source));
        return found.isEmpty() ? source : found;
    }

    private static List<String> partsOfValue(String source) {
        return Arrays.stream(source.split(";"))
                .map(String::strip)
                .filter(part -> !part.isEmpty() && !OF_RANGE.matcher(part).matches())
                .toList();
    }

    /**
     * The weakest of several kinds.
     *
     * @param kinds any
     * @return empty where there are none
     */
    public static Optional<EvidenceKind> weakest(Stream<EvidenceKind> kinds) {
        return kinds.min(Comparator.comparingInt(kind -> FROM_WEAKEST.indexOf(kind)));
    }
}
