package org.benchmetre.farm.feed;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * A salt as a pure substance with its water of crystallisation.
 *
 * @param key lower snake case
 * @param label what a grower reads
 * @param formula chemical formula
 * @param molarMass g/mol, water of crystallisation included
 * @param ions ions that one formula unit brings
 * @param setBy the ion that sets its amount
 * @param tank the stock tank it belongs in, A or B
 * @param solubility what dissolves in cold water, alone, g/L
 * @param grade where several salts are set by one ion, the word that chooses this one; else empty
 * @param choice label of that choice, with the first of them; else empty
 */
record Salt(
        String key,
        String label,
        String formula,
        double molarMass,
        Map<Ion, Integer> ions,
        Ion setBy,
        String tank,
        double solubility,
        String grade,
        String choice) {

    static Salt of(ProfileRow row) {
        Map<Ion, Integer> ions = ions(row.text("ions"));
        Ion setBy = Ion.of(row.text("set_by"));
        if (!ions.containsKey(setBy)) {
            throw new IllegalStateException(row.place() + " is set by " + setBy.key() + ", which it does not bring.");
        }
        return new Salt(
                row.text("salt"),
                row.text("label"),
                row.text("formula"),
                ChemicalFormula.molarMass(row.text("formula")),
                ions,
                setBy,
                row.text("tank"),
                row.number("solubility"),
                row.text("grade"),
                row.text("choice"));
    }

    /** Names and counts by turns, such as {@code calcium 1 nitrate 2}. */
    private static Map<Ion, Integer> ions(String text) {
        String[] words = text.split(" ");
        Map<Ion, Integer> ions = new EnumMap<>(Ion.class);
        for (int i = 0; i < words.length; i += 2) {
            ions.put(Ion.of(words[i]), Integer.valueOf(words[i + 1]));
        }
        return Collections.unmodifiableMap(ions);
    }
}
