package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A level moves returns as all the entries that it stands for would, each by the same share. */
class LevelOfManyEntriesTest {

    private static final double LEVEL = 1.25;

    static List<Budget> samples() {
        return List.of(Sample.troughHouse(), Sample.containerHouse());
    }

    private static void isTheSame(Budget sample, String level, List<String> entries) {
        Figures f = Figures.of(sample);
        Cells moved = new Cells(sample);
        for (String id : entries) {
            Line line = sample.line(id);
            if (line.axes().isEmpty()) {
                moved.number(id, "", LEVEL * f.number(id));
            } else {
                Seeded.keys(sample, id).forEach(key -> moved.number(id, key, LEVEL * f.number(id, key)));
            }
        }
        Figures each = moved.figures();
        Figures all = new Cells(sample).number(level, "", LEVEL).figures();
        double size = f.number("receipts_total");
        for (String figure :
                List.of("returns_above_total", "yearly_cost_total", "net_present_value", "first_cost_total")) {
            assertThat(all.number(figure)).as(figure).isCloseTo(each.number(figure), within(1e-11 * 10 * size));
        }
        assertThat(all.number("returns_above_total")).isLessThan(f.number("returns_above_total"));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void wages(Budget sample) {
        isTheSame(
                sample,
                "wage_level",
                List.of("wage_general", "wage_skilled", "wage_family", "install_wage", "pre_grow_wage"));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void parts(Budget sample) {
        isTheSame(sample, "parts_price_level", List.of("material_price"));
    }

    @Test
    void plants() {
        isTheSame(Sample.containerHouse(), "plant_price_level", List.of("stock_price"));
    }

    /** Warmer set points cost as those typed warmer do, and nothing where the house is not heated. */
    @Test
    void setPointsAndHeating() {
        Budget sample = Sample.troughHouse();
        Cells warmer = new Cells(sample);
        for (String month : sample.line("day_set").axes().get(0).keys()) {
            for (String id : List.of("day_set", "night_set")) {
                warmer.number(id, month, Figures.of(sample).number(id, month) + 2);
            }
        }
        Figures shifted = Figures.of(Sample.with(sample, "set_point_shift=2 K"));
        assertThat(shifted.number("heating_cost_total"))
                .isGreaterThan(Figures.of(sample).number("heating_cost_total"))
                .isCloseTo(warmer.figures().number("heating_cost_total"), within(1e-9));
        Figures cold = Figures.of(Sample.with(sample, "heating_use=no", "set_point_shift=2 K"));
        assertThat(cold.number("heating_cost_total")).isZero();
        assertThat(cold.number("fuel_use_total")).isZero();
        assertThat(cold.number("months_without_climate")).isZero();
    }
}
