package org.benchmetre.farm.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.benchmetre.budget.Formulas.number;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** The relation of Fisher, The Theory of Interest, 1930. */
class FisherTest {

    /** Double arithmetic on numbers of about one. */
    private static final double DOUBLES = 1e-15;

    private static Formula rate(double value, String unit) {
        return number(value, Unit.parse(unit));
    }

    private static double value(Formula formula) {
        BudgetBuilder b = new BudgetBuilder("Rates", "USD");
        b.schedule("Sheet", "Rates").line("the_rate", "Rate", formula.unit(), formula);
        return Figures.of(b.build()).number("the_rate");
    }

    @Test
    void threeAndAHalfPerCentAtTwoPerCentInflationAreFivePointFiveSeven() {
        assertThat(value(Fisher.nominal(rate(0.035, "real/a"), rate(0.02, "1/a"))))
                .isCloseTo(0.0557, within(DOUBLES));
    }

    /** General finance reference; subtracting would give 5 %. */
    @Test
    void eightPerCentAtThreePerCentInflationAreFourPointEightFiveOfToday() {
        assertThat(value(Fisher.real(rate(0.08, "nominal/a"), rate(0.03, "1/a"))))
                .isCloseTo(0.04854368932038833, within(DOUBLES));
    }

    @Test
    void thereAndBackIsTheSame() {
        Formula inflation = rate(0.025, "1/a");
        Formula real = rate(0.04, "real/a");
        assertThat(value(Fisher.real(Fisher.nominal(real, inflation), inflation)))
                .isCloseTo(0.04, within(DOUBLES));
    }

    @Test
    void aRateOfTheOtherMoneyIsRefused() {
        assertThatThrownBy(() -> Fisher.nominal(rate(0.04, "nominal/a"), rate(0.02, "1/a")))
                .isInstanceOf(FormulaException.class)
                .hasMessage("The relation of Fisher takes a rate in real/a, but found one in nominal/a.");
    }
}
