package org.benchmetre.farm.feed;

import org.benchmetre.farm.profile.ProfileRow;

/**
 * An acid that takes out alkalinity.
 *
 * @param key lower snake case
 * @param label what a grower reads
 * @param molarMass g/mol
 * @param protons protons that one molecule gives up at the pH of a feed
 * @param brings what one molecule leaves in the feed, once
 */
record AcidKind(String key, String label, double molarMass, int protons, Ion brings) {

    static AcidKind of(ProfileRow row) {
        return new AcidKind(
                row.text("acid"),
                row.text("label"),
                ChemicalFormula.molarMass(row.text("formula")),
                (int) row.number("protons"),
                Ion.of(row.text("brings")));
    }
}
