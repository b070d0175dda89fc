package org.benchmetre.farm.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/**
 * Film against none, by hand: 200 m of bench, three strips from a width, 1,300 kg at one price, no interest, no charges, film of one
 * crop without salvage.
 */
class MulchFilmTest {

    /** Sums of some products, up to a few thousands. */
    private static final Offset<Double> NEAR = within(1e-9);

    private static final Budget PLAN = Sample.with(
            Sample.troughHouse(),
            "killed_fruit_lost=0 1",
            "set_back_fruit_lost=0 1",
            "harvest_losses=0 1",
            "marketable_share=1 1",
            "yield_per_plant=1000 g/(plant crop)",
            "receipts_by=one_price",
            "fruit_price=8 money/kg",
            "commission_share=0.1 1",
            "cost_per_kg=0.5 money/kg",
            "recovery_rate=0 real/a",
            "insurance_rate=0 1/a",
            "property_tax_rate=0 1/a",
            "material_salvage[mulch_film]=0 money/pack",
            "mulch_soiled_share=0.03 1",
            "mulch_early_share=0.01 1",
            "mulch_weeding_hours=0.01 h/(m crop)",
            "mulch_algae_hours=0.02 h/(m crop)");

    /** A roll of 300 m at 66 with 11 % freight and tax; 5 % waste; laid at 0.033 and taken up at 0.02 h/m for 18 an hour. */
    private static final double FILM = 200.0 / 3 * (66 * 1.11 / 300 * 1.05 + (0.033 + 0.02) * 18);

    private static final double HOUR = 16 * 1.15;

    private static final double SELLING = 8 * 0.1 + 0.5;

    @Test
    void theBoxesAreThoseOfPlainArithmetic() {
        Figures f = Figures.of(PLAN);
        double soiled = 0.03 * 1300;
        double early = 0.01 * 1300;
        assertThat(f.number("mulch_film_cost")).isCloseTo(FILM, NEAR);
        assertThat(f.number("mulch_added_returns")).isCloseTo((soiled + early) * 8 / 200, NEAR);
        assertThat(f.number("mulch_reduced_costs")).isCloseTo(0.03 * HOUR, NEAR);
        assertThat(f.number("mulch_reduced_returns")).isZero();
        double packing = HOUR / 40;
        double picking = HOUR / 18;
        double added = FILM + soiled * (SELLING + packing) + early * (SELLING + packing + picking);
        assertThat(f.number("mulch_added_costs")).isCloseTo(added / 200, NEAR);
        double gain = (soiled + early) * 8 / 200 + 0.03 * HOUR - added / 200;
        assertThat(f.number("mulch_net")).isCloseTo(gain, NEAR);
        assertThat(f.text("mulch_sentence")).startsWith("Mulch film earns 1.");
    }

    /** At the share it says, film neither earns nor costs. */
    @Test
    void theShareThatJustPaysDoes() {
        String dear = "material_price[mulch_film]=300 money/pack";
        Figures f = Figures.of(Sample.with(PLAN, dear, "mulch_early_share=0 1"));
        double even = f.number("mulch_soiled_even");
        assertThat(even).isPositive();
        Figures at = Figures.of(Sample.with(PLAN, dear, "mulch_early_share=0 1", "mulch_soiled_share=" + even + " 1"));
        assertThat(at.number("mulch_net")).isCloseTo(0, NEAR);
        assertThat(f.text("mulch_sentence")).contains("; with less than ", " % of the fruit soiled or rotted");
    }

    /** Tasks that metres of film count are a cost of the film too. */
    @Test
    void aTaskCountedByFilmIsFilm() {
        Figures f = Figures.of(Sample.with(
                PLAN,
                "task_driver[scouting]=mulch_metres",
                "task_hours_per_driver[scouting]=0.1 h/driver",
                "task_times_unit[scouting]=a",
                "task_times[scouting]=1 1",
                "task_wage_class[scouting]=general"));
        assertThat(f.number("mulch_film_cost")).isCloseTo(FILM + 200.0 / 3 * 0.1 * HOUR, NEAR);
    }

    @Test
    void withoutAPartThereIsNothingToCompare() {
        Figures f = Figures.of(Sample.containerHouse());
        assertThat(f.text("mulch_sentence")).isEqualTo("No part is counted by metres of mulch film: none is laid.");
        for (String box : new String[] {"added_returns", "reduced_costs", "reduced_returns", "added_costs", "net"}) {
            assertThat(f.number("mulch_" + box)).isZero();
        }
    }

    @Test
    void itMovesNoFigureOfThePlan() {
        Figures f = Figures.of(PLAN);
        Figures other = Figures.of(Sample.with(PLAN, "mulch_soiled_share=0.5 1", "mulch_weeding_hours=1 h/(m crop)"));
        for (String id : new String[] {"returns_above_total", "first_cost_total", "labour_hours_total"}) {
            assertThat(other.number(id)).isEqualTo(f.number(id));
        }
    }

    @Test
    void withoutFruitItIsTheFilmAndTheHours() {
        Figures f = Figures.of(Sample.with(PLAN, "yield_per_plant=0 g/(plant crop)"));
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("mulch_net")).isCloseTo(0.03 * HOUR - FILM / 200, NEAR);
        assertThat(f.text("mulch_sentence")).endsWith(" USD, by metre and year.");
    }
}
