package org.benchmetre.farm.feed;

import static org.benchmetre.farm.feed.Atom.H;
import static org.benchmetre.farm.feed.Atom.N;
import static org.benchmetre.farm.feed.Atom.O;
import static org.benchmetre.farm.feed.Atom.P;
import static org.benchmetre.farm.feed.Atom.S;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Acids that take out alkalinity, and what each gives up below pH 6.5: nitric one proton, phosphoric one (it stays as H2PO4),
 * sulphuric two. Usual strengths and their densities are from memory; the label of the drum decides.
 */
enum AcidKind {
    /** Brings nitrate. */
    NITRIC("Nitric acid", Map.of(H, 1, N, 1, O, 3), 1, Ion.NITRATE, 0.60, 1.37, 1.6),
    /** Brings phosphorus. */
    PHOSPHORIC("Phosphoric acid", Map.of(H, 3, P, 1, O, 4), 1, Ion.PHOSPHORUS, 0.75, 1.58, 2.8),
    /** Brings sulphate. */
    SULPHURIC("Sulphuric acid", Map.of(H, 2, S, 1, O, 4), 2, Ion.SULPHUR, 0.37, 1.28, 1.2);

    /** What a grower reads. */
    final String label;
    /** In g/mol. */
    final double molarMass;
    /** Protons that one molecule gives up. */
    final int protons;
    /** What one molecule leaves in the feed, once. */
    final Ion brings;
    /** Usual strength, share by mass. */
    final double strength;
    /** Density at that strength, kg/L. */
    final double density;
    /** Price of the demonstration, money/L. */
    final double price;

    AcidKind(
            String label,
            Map<Atom, Integer> atoms,
            int protons,
            Ion brings,
            double strength,
            double density,
            double price) {
        this.label = label;
        this.molarMass = Atom.molarMass(atoms);
        this.protons = protons;
        this.brings = brings;
        this.strength = strength;
        this.density = density;
        this.price = price;
    }

    static List<String> keys() {
        return Arrays.stream(values()).map(AcidKind::key).toList();
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
