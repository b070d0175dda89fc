package org.benchmetre.budget.entry;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/** Words that stand for a unit or for pieces, such as the unit in which a part is sold. */
public final class UnitWord {

    /** Words for pieces of anything, in lower case. */
    static final Set<String> PIECES = Set.of("ea", "each", "pc", "pcs", "piece", "pieces");

    private static final int NEAR = 40;
    /** A number before a unit, which belongs elsewhere. */
    static final Pattern NUMBER = Pattern.compile("^[0-9]+(?:[.,][0-9]+)?\\s*");

    private UnitWord() {}

    /**
     * Whether a word says that pieces are counted.
     *
     * @param word any text
     * @return true for {@code ea}, {@code each}, {@code pcs} and such, in any case
     */
    public static boolean isPieces(String word) {
        return PIECES.contains(word.strip().replace(".", "").toLowerCase(Locale.ROOT));
    }

    /**
     * Whether two words name one unit, however each is written.
     *
     * @param one any text
     * @param other any text
     * @return true for {@code m2} and {@code m²}, {@code each} and {@code pcs}, and for words that readers take for one
     */
    public static boolean isSame(String one, String other) {
        if (Folding.folded(one).equals(Folding.folded(other)) || isPieces(one) && isPieces(other)) {
            return true;
        }
        try {
            return Unit.parse(one).equals(Unit.parse(other));
        } catch (UnitException e) {
            return false;
        }
    }

    /**
     * A number in the unit that another word stands for.
     *
     * @param number any number
     * @param from the unit it is in, any text
     * @param to any text
     * @return empty where one is no unit, or not of the dimension of the other
     */
    public static Optional<Double> converted(double number, String from, String to) {
        try {
            return converted(number, Unit.parse(from), to);
        } catch (UnitException e) {
            return Optional.empty();
        }
    }

    /**
     * A number in the unit that a word stands for.
     *
     * @param number any number
     * @param unit the unit it is in
     * @param word any text
     * @return empty where the word is no unit of the same dimension
     */
    public static Optional<Double> converted(double number, Unit unit, String word) {
        try {
            Unit into = Unit.parse(word);
            return unit.sameDimension(into) ? Optional.of(unit.convertLevel(number, into)) : Optional.empty();
        } catch (UnitException e) {
            return Optional.empty();
        }
    }

    /**
     * A unit as a list has it, however it is written.
     *
     * @param word any text
     * @param units units of a list
     * @return the unit of the list that is the same, else the text itself
     */
    static String kept(String word, List<String> units) {
        if (units.contains(word)) {
            return word;
        }
        try {
            Unit unit = Unit.parse(word);
            return units.stream()
                    .filter(each -> Unit.parse(each).equals(unit))
                    .findFirst()
                    .orElse(word);
        } catch (UnitException e) {
            return word;
        }
    }

    /**
     * The unit of a list that somebody may have meant.
     *
     * @param typed what was typed
     * @param units units of a list
     * @return for example {@code did you mean ft?}; empty where none is near
     */
    static String didYouMean(String typed, List<String> units) {
        String word = NUMBER.matcher(typed).replaceFirst("");
        if (units.contains(kept(word, units))) {
            return "did you mean " + kept(word, units) + "?";
        }
        return OwnCount.isMeasured(word) || Tender.isCode(word)
                ? ""
                : NearNames.nearest(word, Unit.names(), NEAR).stream()
                        .map(name -> kept(name, units))
                        .filter(units::contains)
                        .findFirst()
                        .map(unit -> "did you mean " + unit + "?")
                        .orElse("");
    }
}
