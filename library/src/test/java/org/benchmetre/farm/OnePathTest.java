package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walks the graph down from each total: every amount reaches it along exactly one path. */
class OnePathTest {

    private static Budget sample;

    @BeforeAll
    static void read() {
        sample = Sample.troughHouse();
    }

    @ParameterizedTest
    @CsvSource({
        "first_cost_total, material_way_cost", "first_cost_total, way_install_cost",
        "first_cost_total, way_contingency_cost", "yearly_cost_total, way_contingency_recovery",
        "yearly_cost_total, material_way_yearly_cost", "yearly_cost_total, way_labour_yearly",
        "yearly_cost_total, way_charges_yearly"
    })
    void eachAmountOfEachWayReachesTheTotalOnce(String total, String owner) {
        Map<CellRef, Integer> paths = new Paths(Figures.of(sample)).from(sample.line(total));
        Line line = sample.line(owner);
        for (int cell = 0; cell < line.size(); cell++) {
            assertThat(paths.getOrDefault(new CellRef(line, cell), 0))
                    .as(line.address(cell))
                    .isEqualTo(isEmptyPart(line, cell) ? 0 : 1);
        }
    }

    /** An empty spare row of the parts has no group and no amount. */
    private static boolean isEmptyPart(Line line, int cell) {
        Line driver = sample.line("material_driver");
        return line.axes().contains(driver.axes().get(0))
                && !sample.given(driver)
                        .get(driver.cellAt(line.positionOf(cell)))
                        .filled();
    }

    /** What every irrigation system shares is reached once for each way, of which one is counted. */
    @ParameterizedTest
    @CsvSource({
        "first_cost_total, plants_first_cost",
        "yearly_cost_total, plants_yearly_cost",
        "first_cost_total, house_by_area_cost",
        "yearly_cost_total, house_by_area_recovery",
        "yearly_cost_total, house_by_area_charges"
    })
    void plantsAndTheHouseReachTheTotalOnceForEachWay(String total, String owner) {
        Map<CellRef, Integer> paths = new Paths(Figures.of(sample)).from(sample.line(total));
        assertThat(paths.get(new CellRef(sample.line(owner), 0)))
                .isEqualTo(sample.line("way_key").size());
    }

    /** Counts paths over cells of the total's unit. A filtered sum is followed only where the tag matches. */
    private record Paths(Figures figures) {

        Map<CellRef, Integer> from(Line total) {
            Map<CellRef, Integer> paths = new HashMap<>();
            descend(new CellRef(total, 0), paths);
            return paths;
        }

        private void descend(CellRef cell, Map<CellRef, Integer> paths) {
            paths.merge(cell, 1, Integer::sum);
            Line line = cell.line();
            figures.budget()
                    .formula(line)
                    .ifPresent(formula -> Dependencies.of(line, formula, cell.cell()).stream()
                            .filter(read -> read.line().unit().equals(line.unit()) && belongs(cell, read))
                            .forEach(read -> descend(read, paths)));
        }

        private boolean belongs(CellRef group, CellRef read) {
            if (read.line().id().equals("way_parts_cost")) {
                return false; // read for the share of it that is set aside, not as an amount that is added
            }
            if (!group.line().id().startsWith("group_way_") || !read.line().id().startsWith("material_way_")) {
                return true;
            }
            Line label = figures.budget().line("group_key");
            Line counted = figures.budget().line("material_group_counted");
            int row = group.line().positionOf(group.cell()).on(label.axes().get(0));
            int part = read.line().positionOf(read.cell()).on(counted.axes().get(0));
            return figures.text(label, row).equals(figures.text(counted, part));
        }
    }
}
