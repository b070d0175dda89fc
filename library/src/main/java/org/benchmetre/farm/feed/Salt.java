package org.benchmetre.farm.feed;

import static org.benchmetre.farm.feed.Atom.CA;
import static org.benchmetre.farm.feed.Atom.H;
import static org.benchmetre.farm.feed.Atom.K;
import static org.benchmetre.farm.feed.Atom.MG;
import static org.benchmetre.farm.feed.Atom.N;
import static org.benchmetre.farm.feed.Atom.O;
import static org.benchmetre.farm.feed.Atom.P;
import static org.benchmetre.farm.feed.Atom.S;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The salts in the order in which they are set, as pure substances with their water of crystallisation. Calcium and ammonium
 * nitrate go to tank A; whatever brings sulphate or phosphate goes to tank B, since calcium and those two make a sludge.
 */
enum Salt {
    /** Set by calcium. */
    CALCIUM_NITRATE(
            "Calcium nitrate, tetrahydrate",
            "Ca(NO3)2.4H2O",
            Map.of(CA, 1, N, 2, O, 10, H, 8),
            Map.of(Ion.CALCIUM, 1, Ion.NITRATE, 2),
            "A",
            1100,
            0.9),
    /** Set by calcium where this grade is bought instead. */
    CALCIUM_AMMONIUM_NITRATE(
            "Calcium nitrate, greenhouse grade (double salt)",
            "5Ca(NO3)2.NH4NO3.10H2O",
            Map.of(CA, 5, N, 12, O, 43, H, 24),
            Map.of(Ion.CALCIUM, 5, Ion.NITRATE, 11, Ion.AMMONIUM, 1),
            "A",
            1100,
            0.7),
    /** Set by magnesium. */
    MAGNESIUM_SULPHATE(
            "Magnesium sulphate, heptahydrate",
            "MgSO4.7H2O",
            Map.of(MG, 1, S, 1, O, 11, H, 14),
            Map.of(Ion.MAGNESIUM, 1, Ion.SULPHUR, 1),
            "B",
            600,
            0.6),
    /** Set by phosphorus. */
    MONOPOTASSIUM_PHOSPHATE(
            "Monopotassium phosphate",
            "KH2PO4",
            Map.of(K, 1, H, 2, P, 1, O, 4),
            Map.of(Ion.POTASSIUM, 1, Ion.PHOSPHORUS, 1),
            "B",
            180,
            2.4),
    /** Set by ammonium. */
    AMMONIUM_NITRATE(
            "Ammonium nitrate",
            "NH4NO3",
            Map.of(N, 2, H, 4, O, 3),
            Map.of(Ion.AMMONIUM, 1, Ion.NITRATE, 1),
            "A",
            1500,
            0.8),
    /** Set by the nitrate still wanted. */
    POTASSIUM_NITRATE(
            "Potassium nitrate",
            "KNO3",
            Map.of(K, 1, N, 1, O, 3),
            Map.of(Ion.POTASSIUM, 1, Ion.NITRATE, 1),
            "A",
            210,
            1.7),
    /** Set by the potassium still wanted. */
    POTASSIUM_SULPHATE(
            "Potassium sulphate",
            "K2SO4",
            Map.of(K, 2, S, 1, O, 4),
            Map.of(Ion.POTASSIUM, 2, Ion.SULPHUR, 1),
            "B",
            92,
            1.5);

    /** What a grower reads. */
    final String label;
    /** Chemical formula. */
    final String formula;
    /** In g/mol, water of crystallisation included. */
    final double molarMass;
    /** Ions that one formula unit brings. */
    final Map<Ion, Integer> ions;
    /** The stock tank it belongs in. */
    final String tank;
    /** What dissolves in cold water of about 10 degrees Celsius, alone, g/L; from memory. */
    final double solubility;
    /** Price of the demonstration, money/kg. */
    final double price;

    Salt(
            String label,
            String formula,
            Map<Atom, Integer> atoms,
            Map<Ion, Integer> ions,
            String tank,
            double solubility,
            double price) {
        this.label = label;
        this.formula = formula;
        this.molarMass = Atom.molarMass(atoms);
        this.ions = ions;
        this.tank = tank;
        this.solubility = solubility;
        this.price = price;
    }

    static List<String> keys() {
        return Arrays.stream(values()).map(Salt::key).toList();
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
