package org.benchmetre.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URISyntaxException;
import java.nio.file.Path;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.Test;

/**
 * A published materials table run as a scenario: a low-tunnel row of 100 ft with 200 plants, University of Minnesota, Economics of
 * growing low-tunnel strawberries (2013 costs). Its rows and its total are printed; the plants are what is wanting between them, so
 * that this is a check of the take-off, not of their price. No code knows a low tunnel.
 */
class LowTunnelTest {

    /** Half a cent of the printed total. */
    private static final double PRINTED = 0.005;

    @Test
    void theMaterialsTableTotalsWhatIsPrinted() throws URISyntaxException {
        Faults faults = new Faults();
        Path folder = Path.of(
                        LowTunnelTest.class.getResource("low-tunnel/farm.csv").toURI())
                .getParent();
        Budget budget = Sample.read(folder, faults);
        assertThat(faults.faults()).isEmpty();
        Figures figures = Figures.of(budget);
        assertThat(figures.number("plant_count")).isEqualTo(200);
        assertThat(figures.number("plants_first_cost")).isCloseTo(25.00, within(1e-9));
        assertThat(figures.number("exact_cost")).isCloseTo(380.17 - 25.00, within(PRINTED));
        assertThat(figures.number("first_cost_total")).isCloseTo(380.17, within(PRINTED));
    }
}
