package org.benchmetre.farm.feed;

import java.util.Locale;

/**
 * Chemical elements of feed salts with their molar masses in g/mol: standard atomic weights, abridged to five figures, of the IUPAC
 * table of 2021 (from memory; recipes need four figures).
 */
enum ChemicalElement {
    /** Hydrogen. */
    H(1.008),
    /** Carbon. */
    C(12.011),
    /** Nitrogen. */
    N(14.007),
    /** Oxygen. */
    O(15.999),
    /** Sodium. */
    NA(22.990),
    /** Magnesium. */
    MG(24.305),
    /** Phosphorus. */
    P(30.974),
    /** Sulphur. */
    S(32.06),
    /** Chlorine. */
    CL(35.45),
    /** Potassium. */
    K(39.098),
    /** Calcium. */
    CA(40.078);

    /** Where molar masses come from, as a note of a line. */
    static final String SOURCE = "standard atomic weights abridged to five figures, IUPAC table of 2021, from memory";

    /** In g/mol. */
    private final double molarMass;

    ChemicalElement(double molarMass) {
        this.molarMass = molarMass;
    }

    /** The element of a symbol such as {@code Ca}; throws {@link IllegalArgumentException} for a symbol of none. */
    static ChemicalElement of(String symbol) {
        return valueOf(symbol.toUpperCase(Locale.ROOT));
    }

    /** Molar mass in whole milligrams a mole. */
    long milligrams() {
        return Math.round(molarMass * 1000);
    }
}
