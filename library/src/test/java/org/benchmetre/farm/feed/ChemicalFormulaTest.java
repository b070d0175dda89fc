package org.benchmetre.farm.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Molar masses as handbooks of chemistry print them, to a hundredth of a gram a mole; from memory. */
class ChemicalFormulaTest {

    /** Handbooks round to hundredths, and weights of atoms have moved in the last digit. */
    private static final Offset<Double> PRINTED = within(0.011);

    @ParameterizedTest
    @CsvSource({
        "H2SO4, 98.08",
        "HNO3, 63.01",
        "H3PO4, 98.00",
        "KNO3, 101.10",
        "KH2PO4, 136.09",
        "K2SO4, 174.26",
        "NH4NO3, 80.04",
        "MgSO4.7H2O, 246.47",
        "Ca(NO3)2.4H2O, 236.15"
    })
    void a_formula_weighs_what_handbooks_print(String formula, double printed) {
        assertThat(ChemicalFormula.molarMass(formula)).isCloseTo(printed, PRINTED);
    }

    @Test
    void parts_and_groups_are_counted() {
        double parts = 5 * ChemicalFormula.molarMass("Ca(NO3)2")
                + ChemicalFormula.molarMass("NH4NO3")
                + 10 * ChemicalFormula.molarMass("H2O");
        assertThat(ChemicalFormula.molarMass("5Ca(NO3)2.NH4NO3.10H2O")).isCloseTo(parts, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "h2o", "Ca(NO3", "H2O.", "2", "Xx"})
    void what_is_no_formula_is_refused(String text) {
        assertThatThrownBy(() -> ChemicalFormula.molarMass(text)).isInstanceOf(IllegalArgumentException.class);
    }
}
