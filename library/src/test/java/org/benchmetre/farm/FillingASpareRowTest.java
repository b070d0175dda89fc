package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;

class FillingASpareRowTest {

    private final Budget sample = Sample.troughHouse();
    private final Map<Line, Map<Integer, Given>> changes = new HashMap<>();

    private void fill(String id, String row, Given value) {
        Line line = sample.line(id);
        changes.computeIfAbsent(line, any -> new HashMap<>())
                .put(line.axes().get(0).indexOf(row), value);
    }

    private void fillNumber(String id, String row, double value) {
        fill(id, row, Given.number(value, sample.line(id).unit()));
    }

    private Figures filledPart(String group, String option) {
        fill("material_label", "spare_1", Given.text("Shade cloth"));
        fill("material_group", "spare_1", Given.text(group));
        fill("material_driver", "spare_1", Given.text("house_area"));
        fill("material_option", "spare_1", Given.text(option));
        fillNumber("material_rate", "spare_1", 1);
        fillNumber("material_price", "spare_1", 2);
        return Figures.of(Sample.typedOver(sample, changes));
    }

    @Test
    void aPartInASpareRowCountsInItsGroupAndInTheTotal() {
        Figures before = Figures.of(sample);
        Figures after = filledPart("mulch", "");
        double added = 24 * 9.6 * 2;
        assertThat(after.number("first_cost_total") - before.number("first_cost_total"))
                .isCloseTo(added, within(1e-8));
        assertThat(after.number("group_first_cost", "mulch") - before.number("group_first_cost", "mulch"))
                .isCloseTo(added, within(1e-8));
    }

    @Test
    void aPartOfAnUnknownGroupCountsAsOtherParts() {
        Figures after = filledPart("Shading", "");
        assertThat(after.number("group_first_cost", "other_parts")).isCloseTo(24 * 9.6 * 2, within(1e-8));
    }

    @Test
    void aPartOfAnotherWayIsPricedThereAndNotCounted() {
        Figures before = Figures.of(sample);
        Figures after = filledPart("mulch", "tape dripline");
        assertThat(after.number("first_cost_total")).isEqualTo(before.number("first_cost_total"));
        assertThat(after.number("way_first_cost", "tape") - before.number("way_first_cost", "tape"))
                .isCloseTo(24 * 9.6 * 2, within(1e-8));
    }

    @Test
    void aFourthWayIsARowAndItsParts() {
        fill("way_key", "spare_1", Given.text("spray_stake"));
        fill("way_label", "spare_1", Given.text("Spray stakes"));
        fillNumber("way_lines", "spare_1", 1);
        fillNumber("way_outlets_per_plant", "spare_1", 0.5);
        fill("irrigation_choice", Given.text("spray_stake"));
        Figures after = filledPart("mulch", "spray_stake");
        Figures tape = Figures.of(Sample.with(sample, "irrigation_choice=tape"));
        double shared = tape.number("exact_cost")
                - tape.number("material_exact_cost", "tape")
                - tape.number("material_exact_cost", "tape_fitting");
        assertThat(after.number("exact_cost")).isCloseTo(shared + 24 * 9.6 * 2, within(1e-8));
        assertThat(after.number("way_outlet_count", "spare_1")).isEqualTo(650);
    }

    private void fill(String id, Given value) {
        changes.put(sample.line(id), Map.of(0, value));
    }
}
