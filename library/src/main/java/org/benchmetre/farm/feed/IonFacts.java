package org.benchmetre.farm.feed;

import org.benchmetre.farm.profile.ProfileRow;

/**
 * What is documented of an ion.
 *
 * @param ion which one
 * @param label what a grower reads
 * @param charge charges of one ion, negative for an anion
 * @param molarMass what one mole of it is reckoned to weigh, g/mol: phosphate may weigh as phosphorus
 * @param conductance how it conducts
 * @param advice what to say where the feed misses its recipe
 */
record IonFacts(Ion ion, String label, int charge, double molarMass, Conductance conductance, Advice advice) {

    /**
     * What to say where the feed misses its recipe.
     *
     * @param tooMuch where it has more of the ion; empty for an ion that no recipe asks for
     * @param tooLittle where it has less of it; empty for an ion that a salt is set by, which cannot fall short
     */
    record Advice(String tooMuch, String tooLittle) {}

    /**
     * How an ion conducts at 25 degrees Celsius; see {@link Conductivity}.
     *
     * @param free k0, mS/cm for each mol/kg
     * @param fall A, the same for the root of ionic strength
     * @param curve B
     */
    record Conductance(double free, double fall, double curve) {

        private static final double CELSIUS = 25;

        static Conductance of(ProfileRow row) {
            return new Conductance(at25(row, "k"), at25(row, "a"), row.number("b"));
        }

        /** A square function of temperature, by its three columns. */
        private static double at25(ProfileRow row, String name) {
            return row.number(name + "_t2") * CELSIUS * CELSIUS
                    + row.number(name + "_t1") * CELSIUS
                    + row.number(name + "_t0");
        }
    }

    static IonFacts of(ProfileRow row) {
        return new IonFacts(
                Ion.of(row.text("ion")),
                row.text("label"),
                (int) row.number("charge"),
                ChemicalFormula.molarMass(row.text("weighed_as")),
                Conductance.of(row),
                new Advice(row.text("too_much"), row.text("too_little")));
    }
}
