package org.benchmetre.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.junit.jupiter.api.Test;

/** The price of drip tape at which it costs as much a year as emitters do, in the sample of troughs. */
class TapePriceTest {

    private static final double SAME = 1e-9;

    @Test
    void fed_back_the_two_ways_cost_the_same() {
        Budget budget = Sample.troughHouse();
        Line cost = budget.line("way_yearly_cost_per_metre");
        CellRef tape = new CellRef(cost, cost.axes().get(0).indexOf("tape"));
        CellRef emitter = new CellRef(cost, cost.axes().get(0).indexOf("emitter"));
        Line price = budget.line("material_price");
        CellRef tapePrice = new CellRef(price, price.axes().get(0).indexOf("tape"));

        Found found = BreakEven.of(budget, tapePrice, Difference.between(tape, emitter))
                .between(0, 10_000);

        assertThat(found.leftOut()).isZero();
        assertThat(found.answer()).isInstanceOf(Crossing.Root.class);
        Crossing.Root root = (Crossing.Root) found.answer();
        assertThat(root.lesserBelow()).isEqualTo(Lesser.LEFT);
        assertThat(root.lesserAbove()).isEqualTo(Lesser.RIGHT);
        Figures back = Figures.of(budget.with(
                Map.of(price, Map.of(tapePrice.cell(), Given.number(root.value(), price.unit())))));
        double tapeCost = back.number(cost, tape.cell());
        assertThat(tapeCost).isEqualTo(root.left()).isPositive();
        assertThat(tapeCost).isCloseTo(back.number(cost, emitter.cell()), within(SAME * tapeCost));
        assertThat(root.value())
                .isNotCloseTo(budget.given(price).get(tapePrice.cell()).number(), within(1.0));
    }
}
