package org.benchmetre.farm.feed;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * A salt as its row of the profile has it: by its formula, with its water of crystallisation, or by what is declared on its bag.
 *
 * @param key lower snake case
 * @param label what a grower reads
 * @param substance what is known of it
 * @param setBy the ion that sets its amount
 * @param tank the stock tank it belongs in, A or B
 * @param grade how it is chosen where several salts are set by one ion
 */
record Salt(String key, String label, Substance substance, Ion setBy, String tank, Grade grade) {

    /**
     * What is known of it.
     *
     * @param formula chemical formula; may be empty where its content is declared
     * @param molarMass g/mol, water of crystallisation included; 100 where there is no formula, so that a mole of it is 100 g
     * @param ions ions that a mole of it brings
     * @param solubility what dissolves in cold water, alone, g/L
     */
    record Substance(String formula, double molarMass, Map<Ion, Double> ions, double solubility) {

        private static final double WITHOUT_FORMULA = 100;

        static Substance of(ProfileRow row) {
            String formula = row.text("formula");
            double molarMass = formula.isEmpty() ? WITHOUT_FORMULA : ChemicalFormula.molarMass(formula);
            Map<Ion, Double> ions = new EnumMap<>(Ion.class);
            ions.putAll(brought(row.text("ions")));
            ions.putAll(DeclaredContent.ions(row, molarMass, ions));
            return new Substance(formula, molarMass, Collections.unmodifiableMap(ions), row.number("solubility"));
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
    private static Map<Ion, Double> brought(String text) {
        Map<Ion, Double> ions = new EnumMap<>(Ion.class);
        String[] words = text.isEmpty() ? new String[0] : text.split(" ");
        for (int i = 0; i < words.length; i += 2) {
            ions.put(Ion.of(words[i]), Double.valueOf(words[i + 1]));
        }
        return ions;
    }
}
