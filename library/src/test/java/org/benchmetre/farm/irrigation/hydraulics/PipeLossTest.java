package org.benchmetre.farm.irrigation.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;
import org.junit.jupiter.api.Test;

/** Friction in a full pipe against worked examples. */
class PipeLossTest {

    private static final double HEAD = 9.80665;

    /** Flow in L/h, diameter in mm, length in m, viscosity in m2/s; the answer in metres of water. */
    private static double head(double flow, double diameter, double length, double viscosity) {
        return figures(flow, diameter, length, viscosity).number("the_loss") / HEAD;
    }

    private static Figures figures(double flow, double diameter, double length, double viscosity) {
        BudgetBuilder b = new BudgetBuilder("A pipe", "EUR");
        ScheduleBuilder s = b.schedule("Pipe", "Pipe");
        Formula wide = Formulas.number(diameter, Unit.parse("mm"));
        Line speed = s.line(
                "the_speed",
                "Speed",
                Unit.parse("m/s"),
                PipeLoss.velocity(Formulas.number(flow, Unit.parse("L/h")), wide));
        Line reynolds = s.line(
                "the_reynolds",
                "Reynolds number",
                Unit.ONE,
                PipeLoss.reynolds(speed, wide, Formulas.number(viscosity, Unit.parse("m2/s"))));
        Line factor = s.line("the_factor", "Factor", Unit.ONE, PipeLoss.factor(reynolds));
        s.line(
                "the_loss",
                "Loss",
                Unit.parse("kPa"),
                PipeLoss.pressure(factor, Formulas.number(length, Unit.METRE), wide, speed));
        Budget budget = b.build();
        return Figures.of(budget);
    }

    /** GATE 2017 civil engineering examination, official range 65.0 to 69.0 m: 10 L/s, 100 mm, Reynolds 800, 1000 m. */
    @Test
    void slowFlowIsLaminar() {
        double viscosity = 0.01 / (Math.PI / 4 * 0.01) * 0.1 / 800;
        assertThat(figures(36_000, 100, 1000, viscosity).number("the_reynolds")).isCloseTo(800, within(1e-9));
        assertThat(head(36_000, 100, 1000, viscosity)).isCloseTo(66.1, within(1.1));
    }

    /** Own reference solution with the constant 0.316 is 1.0211648 m; the constant in use is 0.3164. */
    @Test
    void fastFlowFollowsBlasius() {
        Figures f = figures(200, 13.6, 50, 1.004e-6);
        assertThat(f.number("the_reynolds")).isCloseTo(5180.42, within(0.01));
        assertThat(f.number("the_loss") / HEAD).isCloseTo(1.0211648 * 0.3164 / 0.316, within(2e-6));
    }

    @Test
    void aPipeWithoutFlowLosesNothingAndMoreFlowLosesMore() {
        assertThat(figures(0, 26, 50, 1.004e-6).troubles()).isEmpty();
        assertThat(head(0, 26, 50, 1.004e-6)).isZero();
        double before = 0;
        for (double flow = 10; flow < 3000; flow *= 1.1) {
            double loss = head(flow, 26, 50, 1.004e-6);
            assertThat(loss).isGreaterThan(before);
            before = loss;
        }
    }
}
