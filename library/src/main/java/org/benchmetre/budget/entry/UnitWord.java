package org.benchmetre.budget.entry;

import java.util.Locale;
import java.util.Set;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.budget.unit.UnitException;

/** Words that stand for a unit or for pieces, such as the unit in which a part is sold. */
public final class UnitWord {

    private static final Set<String> PIECES = Set.of("ea", "each", "pc", "pcs", "piece", "pieces");

    private UnitWord() {}

    /**
     * Whether a word says that pieces are counted.
     *
     * @param word any text
     * @return true for {@code ea}, {@code each}, {@code pcs} and such, in any case
     */
    public static boolean isPieces(String word) {
        return PIECES.contains(word.strip().toLowerCase(Locale.ROOT));
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
}
