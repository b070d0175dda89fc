package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each swing is the change of the plan with that entry alone at an end of its usual range. */
class SwingsTest {

    static Stream<Budget> samples() {
        Budget full =
                Sample.with(Sample.troughHouse(), "channel_most[wholesale]=60 kg/mo", "channel_most[direct]=150 kg/mo");
        return Stream.of(Sample.troughHouse(), Sample.containerHouse(), full)
                .flatMap(sample -> Stream.of(sample, Seeded.budget(sample, 7), Seeded.budget(sample, 8)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void eachIsAPlanWithThatEntrySet(Budget budget) {
        Figures f = Figures.of(budget);
        double now = f.number("returns_above_total_per_area");
        List<String> levers = levers(budget);
        for (int row = 0; row < levers.size(); row++) {
            String lever = levers.get(row);
            double most = 0;
            for (String end : List.of("low", "high")) {
                double value = f.number(budget.line("swing_" + end), row);
                Figures typed = new Cells(budget).number(lever, "", value).figures();
                double change = typed.number("returns_above_total_per_area") - now;
                double size =
                        Math.max(typed.number("receipts_total"), typed.number("total_cost")) / f.number("house_area");
                Near.near(f.number(budget.line("swing_at_" + end), row), change, size, lever + " " + end);
                most = Math.max(most, Math.abs(f.number(budget.line("swing_at_" + end), row)));
            }
            assertThat(f.number(budget.line("swing_now"), row)).isEqualTo(f.number(lever));
            assertThat(f.number(budget.line("swing_size"), row)).isEqualTo(most);
        }
    }

    /** The sentence names the three largest, in order. */
    @ParameterizedTest
    @MethodSource("samples")
    void theLargestThreeAreToldFirst(Budget budget) {
        Figures f = Figures.of(budget);
        Line size = budget.line("swing_size");
        List<String> order = IntStream.range(0, size.size())
                .boxed()
                .sorted(Comparator.comparingDouble(row -> -f.number(size, row)))
                .map(row -> f.text(budget.line("swing_words"), row))
                .toList();
        String sentence = f.text("doubt_sentence");
        assertThat(sentence)
                .startsWith("Doubt first: " + order.get(0) + " (")
                .contains(" USD/m\u00b2/yr)")
                .endsWith(", then " + order.get(1) + " and " + order.get(2) + ".");
        assertThat(f.text("swing_sentence")).contains(order.get(0));
    }

    /** A range in farm.csv goes before the documented one, and the ends are live. */
    @Test
    void theEndsAreEntries() {
        Figures f = Figures.of(
                Sample.with(Sample.troughHouse(), "picking_rate_low=15 kg/h", "fuel_price_high=1 money/fuel_unit"));
        Budget budget = f.budget();
        int picking = levers(budget).indexOf("picking_rate");
        int fuel = levers(budget).indexOf("fuel_price");
        assertThat(f.number(budget.line("swing_low"), picking)).isEqualTo(15);
        assertThat(f.number(budget.line("swing_high"), fuel)).isEqualTo(1);
        assertThat(f.number(budget.line("swing_low"), fuel)).isEqualTo(0.7 * f.number("fuel_price"));
    }

    /** Where nothing is picked and nothing is heated the sentence still tells the truth. */
    @Test
    void withoutFruitPriceAndRateDoNotCount() {
        Figures f = Figures.of(Sample.with(Sample.troughHouse(), "yield_per_plant=0 g/(plant crop)", "heating_use=no"));
        Line size = f.budget().line("swing_size");
        for (String lever : List.of("price_level", "picking_rate", "fuel_price", "set_point_shift")) {
            assertThat(f.number(size, levers(f.budget()).indexOf(lever)))
                    .as(lever)
                    .isZero();
        }
        assertThat(f.text("doubt_sentence")).startsWith("Doubt first: fruit per plant (");
    }

    /** The levers that a plan has, in the order of their rows. */
    private static List<String> levers(Budget budget) {
        return budget.line("swing_size").axes().get(0).keys();
    }
}
