package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;

/** Care of lines, installing and taking out are work of the year and its months; what they cost stays where it is. */
class AllWorkTest {

    /** Sums of some dozen products, up to a thousand hours. */
    private static final Offset<Double> NEAR = within(1e-9);

    private final Budget sample = Sample.troughHouse();
    private final Figures f = Figures.of(sample);

    @Test
    void careIsThatOfTheChosenSystemAndSpreadEvenly() {
        double replanted = f.number("way_plants_killed", f.text("irrigation_choice")) * f.number("replant_hours");
        double care = f.number("way_care_hours", f.text("irrigation_choice")) + replanted;
        assertThat(f.number("care_hours_total")).isPositive().isCloseTo(care, NEAR);
        assertThat(f.number("care_hours_a_month")).isCloseTo(care / 12, NEAR);
    }

    /** Hours over the life of each part, all in September, when the house is planted. */
    @Test
    void installingIsSpreadOverTheLifeOfPartsAndFallsInTheMonthOfPlanting() {
        Line amount = sample.line("material_amount");
        double hours = 0;
        for (int part = 0; part < amount.size(); part++) {
            double each = f.number(sample.line("material_install_hours"), part)
                    + f.number(sample.line("material_remove_hours"), part);
            double life = f.number(sample.line("material_life_years"), part);
            hours +=
                    each == 0 ? 0 : f.number(amount, part) * f.number(sample.line("material_rate"), part) * each / life;
        }
        assertThat(f.number("installing_hours_total")).isPositive().isCloseTo(hours, NEAR);
        assertThat(f.number("installing_hours_in_month", "sep")).isCloseTo(hours, NEAR);
        assertThat(f.number("installing_hours_in_month", "oct")).isZero();
    }

    @Test
    void bothCountInTheMonthWithMostWorkAndCostNothingMore() {
        double planting = f.number("general_hours", "sep")
                + f.number("skilled_hours", "sep")
                + f.number("family_hours", "sep")
                + f.number("care_hours_total") / 12
                + f.number("installing_hours_total");
        assertThat(f.number("hours_in_month", "sep")).isCloseTo(planting, NEAR);
        Figures slow = Figures.of(Sample.with(sample, "flush_hours=1 h/line"));
        assertThat(slow.number("labour_hours_total")).isGreaterThan(f.number("labour_hours_total"));
        assertThat(slow.number("people_at_peak")).isGreaterThan(f.number("people_at_peak"));
        assertThat(slow.number("labour_cost_total")).isEqualTo(f.number("labour_cost_total"));
    }
}
