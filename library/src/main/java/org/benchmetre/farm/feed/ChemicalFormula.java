package org.benchmetre.farm.feed;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A chemical formula as people write it, such as {@code 5Ca(NO3)2.NH4NO3.10H2O}: parts joined by points, each with a count before it;
 * elements and groups in brackets with a count after them. Brackets hold no brackets.
 */
final class ChemicalFormula {

    private static final Pattern PART = Pattern.compile("(\\d*)((?:[A-Z][a-z]?\\d*|\\((?:[A-Z][a-z]?\\d*)+\\)\\d*)+)");
    private static final Pattern PIECE = Pattern.compile("([A-Z][a-z]?)(\\d*)|\\(([^)]*)\\)(\\d*)");

    private ChemicalFormula() {}

    /**
     * The molar mass, g/mol, added in whole milligrams.
     *
     * @throws IllegalArgumentException when the text is no formula, or names an element that {@link ChemicalElement} does not know
     */
    static double molarMass(String formula) {
        long milligrams = 0;
        for (String each : formula.split("\\.", -1)) {
            Matcher part = PART.matcher(each);
            if (!part.matches()) {
                throw new IllegalArgumentException("'" + formula + "' is no chemical formula.");
            }
            milligrams += count(part.group(1)) * milligrams(part.group(2));
        }
        return milligrams / 1000.0;
    }

    private static long milligrams(String pieces) {
        long sum = 0;
        Matcher piece = PIECE.matcher(pieces);
        while (piece.find()) {
            sum += piece.group(1) != null
                    ? ChemicalElement.of(piece.group(1)).milligrams() * count(piece.group(2))
                    : milligrams(piece.group(3)) * count(piece.group(4));
        }
        return sum;
    }

    private static int count(String digits) {
        return digits.isEmpty() ? 1 : Integer.parseInt(digits);
    }
}
