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
 * @param substance what chemistry says of it
 * @param setBy the ion that sets its amount
 * @param tank the stock tank it belongs in, A or B
 * @param grade how it is chosen where several salts are set by one ion
 */
record Salt(String key, String label, Substance substance, Ion setBy, String tank, Grade grade) {

    /**
     * What chemistry says of it.
     *
     * @param formula chemical formula
     * @param molarMass g/mol, water of crystallisation included
     * @param ions ions that one formula unit brings
     * @param solubility what dissolves in cold water, alone, g/L
     */
    record Substance(String formula, double molarMass, Map<Ion, Integer> ions, double solubility) {

        static Substance of(ProfileRow row) {
            String formula = row.text("formula");
            return new Substance(
                    formula, ChemicalFormula.molarMass(formula), brought(row.text("ions")), row.number("solubility"));
        }
    }

    /**
     * How one of several salts that are set by one ion is chosen.
     *
     * @param word the word that chooses this one; empty where there is no choice
     * @param choice label of that choice, with the first of them; else empty
     */
    record Grade(String word, String choice) {}

    static Salt of(ProfileRow row) {
        Substance substance = Substance.of(row);
        Ion setBy = Ion.of(row.text("set_by"));
        if (!substance.ions().containsKey(setBy)) {
            throw new IllegalStateException(row.place() + " is set by " + setBy.key() + ", which it does not bring.");
        }
        return new Salt(
                row.text("salt"),
                row.text("label"),
                substance,
                setBy,
                row.text("tank"),
                new Grade(row.text("grade"), row.text("choice")));
    }

    /** Names and counts by turns, such as {@code calcium 1 nitrate 2}. */
    private static Map<Ion, Integer> brought(String text) {
        String[] words = text.split(" ");
        Map<Ion, Integer> ions = new EnumMap<>(Ion.class);
        for (int i = 0; i < words.length; i += 2) {
            ions.put(Ion.of(words[i]), Integer.valueOf(words[i + 1]));
        }
        return Collections.unmodifiableMap(ions);
    }
}
