package org.benchmetre.farm.feed;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The ions of a feed, with their charge at pH 5 to 6.5, where phosphate is H2PO4 with one charge. Nitrogen comes as nitrate and as
 * ammonium, and both weigh as nitrogen; phosphate and sulphate weigh as phosphorus and sulphur.
 */
enum Ion {
    /** Nitrogen as nitrate. */
    NITRATE("Nitrate, NO3", -1, Map.of(Atom.N, 1)),
    /** Nitrogen as ammonium. */
    AMMONIUM("Ammonium, NH4", 1, Map.of(Atom.N, 1)),
    /** Phosphorus. */
    PHOSPHORUS("Phosphorus, H2PO4", -1, Map.of(Atom.P, 1)),
    /** Potassium. */
    POTASSIUM("Potassium, K", 1, Map.of(Atom.K, 1)),
    /** Calcium. */
    CALCIUM("Calcium, Ca", 2, Map.of(Atom.CA, 1)),
    /** Magnesium. */
    MAGNESIUM("Magnesium, Mg", 2, Map.of(Atom.MG, 1)),
    /** Sulphur. */
    SULPHUR("Sulphur, SO4", -2, Map.of(Atom.S, 1)),
    /** Sodium, which only raw water brings. */
    SODIUM("Sodium, Na", 1, Map.of(Atom.NA, 1)),
    /** Chloride, which only raw water brings. */
    CHLORIDE("Chloride, Cl", -1, Map.of(Atom.CL, 1)),
    /** Bicarbonate of the raw water that the acid leaves. */
    BICARBONATE("Bicarbonate, HCO3", -1, Map.of(Atom.H, 1, Atom.C, 1, Atom.O, 3));

    /** What a grower reads. */
    final String label;
    /** Charges of one ion, negative for an anion. */
    final int charge;
    /** What one mole of it is reckoned to weigh, in g/mol. */
    final double molarMass;

    Ion(String label, int charge, Map<Atom, Integer> weighed) {
        this.label = label;
        this.charge = charge;
        this.molarMass = Atom.molarMass(weighed);
    }

    static List<String> keys() {
        return Arrays.stream(values()).map(Ion::key).toList();
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
