package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each cost of the year belongs to one row of the enterprise budget and to one group of yearly cost. */
class OneOwnerTest {

    static Stream<Budget> samples() {
        return Stream.of(Sample.troughHouse(), Sample.containerHouse());
    }

    /** Amounts of the way chosen that are worked out without the others, each with its line by way. */
    private static final Map<String, String> ALSO_BY_WAY = Map.of(
            "parts_charges_total", "way_charges_yearly",
            "contingency_recovery", "way_contingency_recovery",
            "operating_interest", "way_operating_interest");

    @ParameterizedTest
    @MethodSource("samples")
    void noCostReachesTwoRowsOfTheBudgetOrOneTwice(Budget sample) {
        Figures figures = Figures.of(sample);
        Line amount = sample.line("budget_value");
        Map<String, Set<String>> rowsOf = new TreeMap<>();
        for (int row = 0; row < amount.size(); row++) {
            String at = amount.address(row);
            boolean receipt = figures.text(sample.line("budget_kind"), row).equals("receipt");
            new AmountPaths(figures, amount, row).paths().forEach((cost, paths) -> {
                assertThat(paths).as("%s in %s", cost, at).isEqualTo(1);
                if (!receipt) {
                    rowsOf.computeIfAbsent(cost, any -> new TreeSet<>()).add(at);
                }
            });
        }
        assertThat(rowsOf).hasSizeGreaterThan(100);
        rowsOf.values().removeIf(rows -> rows.size() < 2);
        assertThat(rowsOf).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void bothTotalsAreMadeOfTheSameAmountsEachOnce(Budget sample) {
        Figures figures = Figures.of(sample);
        AmountPaths budget = new AmountPaths(figures, sample.line("total_cost"), 0);
        AmountPaths groups = new AmountPaths(figures, sample.line("yearly_cost_total"), 0);
        assertThat(budget.ends().values()).hasSizeGreaterThan(25).containsOnly(1);
        assertThat(groups.ends().values()).containsOnly(1);
        String way = "[" + figures.text("irrigation_choice") + "]";
        ALSO_BY_WAY.forEach((chosen, byWay) -> assertThat(figures.number(chosen))
                .as(chosen)
                .isCloseTo(
                        figures.number(byWay, figures.text("irrigation_choice")),
                        within(1e-12 * figures.number("total_cost"))));
        assertThat(withoutParts(groups, way)).hasSizeGreaterThan(20).isEqualTo(withoutParts(budget, way));
        List<String> parts = Seeded.keys(sample, "material_price");
        assertThat(parts).hasSizeGreaterThan(15).allSatisfy(part -> {
            String chosen = figures.text("irrigation_choice");
            assertThat(groups.ends()).containsEntry("material_way_yearly_cost[" + part + ";" + chosen + "]", 1);
        });
        String key = figures.text("irrigation_choice");
        assertThat(figures.number("parts_labour_total") + figures.number("parts_used_up_labour"))
                .as("installing and taking out, of what lasts and of what is used up")
                .isCloseTo(figures.number("way_labour_yearly", key), within(1e-12 * figures.number("total_cost")));
        assertThat(budget.ends())
                .containsEntry("parts_labour_total", 1)
                .containsEntry("parts_used_up_labour", 1)
                .containsEntry("parts_recovery_total", 1)
                .containsEntry("parts_used_up_total", 1)
                .containsEntry("parts_repairs_total", 1);
        double ofParts = parts.stream()
                .mapToDouble(
                        part -> figures.number("material_way_yearly_cost", part, figures.text("irrigation_choice")))
                .sum();
        assertThat(figures.number("parts_recovery_total")
                        + figures.number("parts_used_up_total")
                        + figures.number("parts_repairs_total"))
                .isCloseTo(ofParts, within(1e-12 * figures.number("total_cost")));
    }

    private static final Set<String> OF_PARTS = Set.of(
            "parts_recovery_total",
            "parts_used_up_total",
            "parts_repairs_total",
            "parts_labour_total",
            "parts_used_up_labour");

    /** What parts and their labour cost is one amount in the groups, and several on the page; a group may be empty. */
    private static Set<String> withoutParts(AmountPaths paths, String way) {
        Set<String> ends = new TreeSet<>();
        paths.ends().keySet().stream()
                .filter(end -> !end.startsWith("material_") && !end.contains("other_parts"))
                .filter(end -> !OF_PARTS.contains(end) && !end.startsWith("way_labour_yearly"))
                .map(end -> ALSO_BY_WAY.containsKey(end) ? ALSO_BY_WAY.get(end) + way : end)
                .forEach(ends::add);
        return ends;
    }

    /** Hired at what the family would earn, so that nothing but cash moves when the family does it. */
    @ParameterizedTest
    @MethodSource("samples")
    void familyWorkCostsNoCash(Budget sample) {
        Budget level = Sample.with(
                sample,
                "on_cost_share=0 1",
                "wage_general=17 money/h",
                "wage_skilled=17 money/h",
                "wage_family=17 money/h",
                "picking_wage_class=general",
                "packing_wage_class=general");
        Figures hired = Figures.of(level);
        for (String turned :
                List.of("picking_wage_class=family", "packing_wage_class=family", "task_wage_class[planting]=family")) {
            Figures family = Figures.of(Sample.with(level, turned));
            double cash = hired.number("running_cash") - family.number("running_cash");
            double wages = family.number("family_wage_total") - hired.number("family_wage_total");
            assertThat(wages).as(turned).isGreaterThan(10);
            assertThat(cash).as(turned).isCloseTo(wages, within(1e-9 * hired.number("running_cash")));
            for (String economic :
                    List.of("labour_cost_total", "total_cost", "returns_above_total", "yearly_cost_total")) {
                assertThat(family.number(economic))
                        .as(turned + ": " + economic)
                        .isCloseTo(hired.number(economic), within(1e-9 * hired.number("total_cost")));
            }
        }
    }

    /** Work of the family turned over to hands that cost another wage moves cash by all of theirs. */
    @ParameterizedTest
    @MethodSource("samples")
    void cashFallsByWhatHiredHandsCost(Budget sample) {
        Figures hired = Figures.of(Sample.with(sample, "picking_wage_class=skilled"));
        Figures family = Figures.of(Sample.with(sample, "picking_wage_class=family"));
        double wages = hired.number("picking_hours") * hired.number("hired_skilled_rate");
        assertThat(wages).isGreaterThan(10);
        assertThat(hired.number("running_cash") - family.number("running_cash"))
                .isCloseTo(wages, within(1e-9 * hired.number("running_cash")));
    }
}
