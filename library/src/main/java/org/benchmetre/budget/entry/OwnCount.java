package org.benchmetre.budget.entry;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/**
 * What somebody counts in a word of their own: each, roll, sack, hanging basket. Any words will do but those that measure something, money,
 * a number with a unit behind it, and what is one letter off a unit, since that is misspelt rather than counted.
 */
final class OwnCount {

    /** So many letters must two words have together for one letter to tell them apart: a choice of this project. */
    private static final int LONG_ENOUGH = 9;
    /** Things that are one letter off a unit. */
    private static final Set<String> NO_SLIPS =
            Set.of("liner", "liners", "card", "cards", "winch", "winches", "round", "rounds", "mound", "mounds");

    private OwnCount() {}

    /** Whether a text can name what is counted, beside units of a list. */
    static boolean isFit(String text, List<String> units) {
        return LabelText.isLookup(text)
                && !Tender.isCode(text)
                && !isMeasured(text)
                && !isMeasured(UnitWord.NUMBER.matcher(text).replaceFirst(""))
                && !isSlip(text.toLowerCase(Locale.ROOT), units);
    }

    /** Whether a text is a unit that measures. */
    static boolean isMeasured(String text) {
        try {
            return !Unit.parse(text).isCount();
        } catch (UnitException e) {
            return false;
        }
    }

    private static boolean isSlip(String word, List<String> units) {
        return !NO_SLIPS.contains(word)
                && Unit.names().stream()
                        .filter(name -> name.length() + word.length() >= LONG_ENOUGH)
                        .filter(name -> NearNames.distance(word, name.toLowerCase(Locale.ROOT), 1) == 1)
                        .anyMatch(name -> units.contains(UnitWord.kept(name, units)));
    }
}
