package org.benchmetre.farm.feed;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * The content of a salt as a bag declares it, in per cent of its mass: columns of {@code salts.csv}. Nitrogen is told by form or in total;
 * phosphorus, potassium, calcium, magnesium and sulphur as element or as oxide.
 *
 * <pre>
 * n = p / 100 M a / F
 * n  ions that a mole of the salt brings     p  declared, per cent     M  molar mass of the salt, g/mol
 * a  atoms of the element in what is declared     F  molar mass of what is declared, g/mol
 * </pre>
 *
 * Plain stoichiometry.
 */
final class DeclaredContent {

    private static final String TOTAL_NITROGEN = "n";

    private record Form(String column, Ion ion, String formula, int atoms) {}

    private static final List<Form> FORMS = List.of(
            new Form("no3_n", Ion.NITRATE, "N", 1),
            new Form("nh4_n", Ion.AMMONIUM, "N", 1),
            new Form("p2o5", Ion.PHOSPHORUS, "P2O5", 2),
            new Form("p", Ion.PHOSPHORUS, "P", 1),
            new Form("k2o", Ion.POTASSIUM, "K2O", 2),
            new Form("k", Ion.POTASSIUM, "K", 1),
            new Form("cao", Ion.CALCIUM, "CaO", 1),
            new Form("ca", Ion.CALCIUM, "Ca", 1),
            new Form("mgo", Ion.MAGNESIUM, "MgO", 1),
            new Form("mg", Ion.MAGNESIUM, "Mg", 1),
            new Form("so3", Ion.SULPHUR, "SO3", 1),
            new Form("s", Ion.SULPHUR, "S", 1));

    private DeclaredContent() {}

    /**
     * The ions of which a row declares the content.
     *
     * @param row of the table of salts; a column that it lacks is blank
     * @param molarMass of the salt, g/mol
     * @param byFormula ions of its formula: nitrogen in total splits as they do
     * @return ions that a mole of the salt brings
     * @throws IllegalStateException when nitrogen is declared in total and the formula has none of its forms
     */
    static Map<Ion, Double> ions(ProfileRow row, double molarMass, Map<Ion, Double> byFormula) {
        Map<Ion, Double> ions = new EnumMap<>(Ion.class);
        if (isDeclared(row, TOTAL_NITROGEN)) {
            double nitrogen = moles(row.number(TOTAL_NITROGEN), molarMass, "N", 1);
            double nitrate = byFormula.getOrDefault(Ion.NITRATE, 0.0);
            double ammonium = byFormula.getOrDefault(Ion.AMMONIUM, 0.0);
            if (!(nitrate + ammonium > 0)) {
                throw new IllegalStateException(
                        row.place() + " declares nitrogen in total, and its ions have neither nitrate nor ammonium.");
            }
            byFormula.keySet().stream()
                    .filter(ion -> ion == Ion.NITRATE || ion == Ion.AMMONIUM)
                    .forEach(ion -> ions.put(ion, nitrogen * byFormula.get(ion) / (nitrate + ammonium)));
        }
        FORMS.stream()
                .filter(form -> isDeclared(row, form.column()))
                .forEach(form -> ions.put(
                        form.ion(), moles(row.number(form.column()), molarMass, form.formula(), form.atoms())));
        return ions;
    }

    /** How much of an oxide is its element, by mass; 1 for the element itself. */
    static double elementShare(String column, double elementMass) {
        Form form = FORMS.stream()
                .filter(each -> each.column().equals(column))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No content is declared as '" + column + "'."));
        return form.atoms() * elementMass / ChemicalFormula.molarMass(form.formula());
    }

    /** The forms in which the content of an ion is declared, as columns; oxides first. */
    static List<String> forms(Ion ion) {
        return FORMS.stream()
                .filter(form -> form.ion() == ion)
                .map(Form::column)
                .toList();
    }

    private static boolean isDeclared(ProfileRow row, String column) {
        return row.cells().containsKey(column) && !row.isBlank(column);
    }

    private static double moles(double percent, double molarMass, String formula, int atoms) {
        return percent / 100 * molarMass * atoms / ChemicalFormula.molarMass(formula);
    }
}
