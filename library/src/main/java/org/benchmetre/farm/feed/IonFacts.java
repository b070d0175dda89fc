package org.benchmetre.farm.feed;

import org.benchmetre.farm.profile.ProfileRow;

/**
 * What is documented of an ion.
 *
 * @param ion which one
 * @param label what a grower reads
 * @param charge charges of one ion, negative for an anion
 * @param molarMass what one mole of it is reckoned to weigh, g/mol: phosphate may weigh as phosphorus
 * @param tooMuch what to say where the feed has more of it than the recipe; empty for an ion that no recipe asks for
 * @param tooLittle what to say where the feed has less of it; empty for an ion that a salt is set by, which cannot fall short
 */
record IonFacts(Ion ion, String label, int charge, double molarMass, String tooMuch, String tooLittle) {

    static IonFacts of(ProfileRow row) {
        return new IonFacts(
                Ion.of(row.text("ion")),
                row.text("label"),
                (int) row.number("charge"),
                ChemicalFormula.molarMass(row.text("weighed_as")),
                row.text("too_much"),
                row.text("too_little"));
    }
}
