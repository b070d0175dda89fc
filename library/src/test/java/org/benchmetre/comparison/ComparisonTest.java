package org.benchmetre.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.benchmetre.Benchmetre;
import org.benchmetre.ScenarioException;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Column;
import org.benchmetre.page.Page;
import org.benchmetre.page.Table;
import org.benchmetre.scenario.Faults;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ComparisonTest {

    /** A sum of a few dozen amounts of some tens differs by rounding alone. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final List<String> KEYS = List.of("trough_house", "container_house", "trough_house_2");

    private static final Map<Measure, Comparison> COMPARED = new EnumMap<>(Measure.class);
    private static final Map<String, Figures> ALONE = new HashMap<>();

    @BeforeAll
    static void read() throws ScenarioException {
        for (Measure per : Measure.values()) {
            COMPARED.put(per, Sampled.three(per));
        }
        ALONE.put("trough_house", Benchmetre.read(Sampled.TROUGHS).figures());
        ALONE.put("container_house", Benchmetre.read(Sampled.CONTAINERS).figures());
        ALONE.put("trough_house_2", ALONE.get("trough_house"));
    }

    private static Figures figures(Measure per) {
        return COMPARED.get(per).figures();
    }

    private static List<String> keys(Figures figures, String id) {
        return figures.budget().line(id).axes().get(0).keys();
    }

    private static double sum(Figures figures, String id, String scenario) {
        return keys(figures, id).stream()
                .mapToDouble(row -> figures.number(id, row, scenario))
                .sum();
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void rows_and_sections_add_up_to_the_difference_in_what_is_left(Measure per) {
        Figures figures = figures(per);
        double more = figures.number("left_value", "container_house") - figures.number("left_value", "trough_house");

        assertThat(keys(figures, "cause_value")).hasSizeGreaterThan(30);
        assertThat(Math.abs(more)).isGreaterThan(1e-6); // the two do differ
        assertThat(figures.number("left_difference", "container_house")).isCloseTo(more, ROUNDING);
        assertThat(figures.number("cause_sum_difference", "container_house")).isCloseTo(more, ROUNDING);
        assertThat(sum(figures, "cause_difference", "container_house")).isCloseTo(more, ROUNDING);
        assertThat(sum(figures, "section_difference", "container_house")).isCloseTo(more, ROUNDING);
        assertThat(COMPARED.get(per).disagreements()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void what_is_left_are_the_returns_of_each_scenario_alone(Measure per) {
        for (String key : KEYS) {
            assertThat(figures(per).number("left_value", key))
                    .isCloseTo(ALONE.get(key).number("returns_above_total_per_" + per), ROUNDING);
        }
    }

    /** The budget page of each scenario has the same columns; those by area, metre, plant and kilogram are its own. */
    @ParameterizedTest
    @EnumSource(Measure.class)
    void every_row_is_that_of_the_scenarios_own_budget(Measure per) {
        Figures figures = figures(per);
        for (String key : KEYS) {
            Figures alone = ALONE.get(key);
            for (String row : keys(alone, "budget_kind")) {
                double own = alone.number("budget_per_" + per, row);
                String kind = alone.text(
                        alone.budget().line("budget_kind"),
                        keys(alone, "budget_kind").indexOf(row));
                if (!kind.equals("total")) {
                    assertThat(figures.number("cause_value", row, key))
                            .as(key + " " + row)
                            .isCloseTo(kind.equals("receipt") ? own : -own, ROUNDING);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void causes_add_up_to_the_difference_in_receipts(Measure per) {
        Figures figures = figures(per);
        double more = figures.number("section_difference", "receipts", "container_house");

        assertThat(COMPARED.get(per).factors()).hasSize(per == Measure.KG ? 1 : per == Measure.PLANT ? 2 : 3);
        assertThat(Math.abs(more)).isGreaterThan(0.01);
        assertThat(sum(figures, "receipts_step", "container_house")).isCloseTo(more, ROUNDING);
        assertThat(figures.number("receipts_step_sum", "container_house")).isCloseTo(more, ROUNDING);
    }

    @Test
    void factors_of_receipts_are_changed_in_the_order_plants_fruit_price() {
        Figures first = ALONE.get("trough_house");
        Figures other = ALONE.get("container_house");
        double plants = first.number("plant_count") / first.number("house_area");
        double otherPlants = other.number("plant_count") / other.number("house_area");
        double fruit = first.number("yield_total") / first.number("plant_count");
        double otherFruit = other.number("yield_total") / other.number("plant_count");
        double price = first.number("receipts_total") / first.number("yield_total");
        double otherPrice = other.number("receipts_total") / other.number("yield_total");
        Figures figures = figures(Measure.AREA);

        assertThat(figures.number("receipts_step", "plant_density", "container_house"))
                .isCloseTo((otherPlants - plants) * fruit * price, ROUNDING);
        assertThat(figures.number("receipts_step", "fruit_per_plant", "container_house"))
                .isCloseTo(otherPlants * (otherFruit - fruit) * price, ROUNDING);
        assertThat(figures.number("receipts_step", "price", "container_house"))
                .isCloseTo(otherPlants * otherFruit * (otherPrice - price), ROUNDING);
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void the_costs_named_are_the_largest_in_size(Measure per) {
        Figures figures = figures(per);
        List<String> costs = new ArrayList<>(keys(figures, "cause_difference"));
        costs.removeAll(List.of("first_grade", "second_grade"));
        costs.sort(Comparator.comparingDouble(
                row -> -Math.abs(figures.number("cause_difference", row, "container_house"))));
        Line found = figures.budget().line("largest_key_2");

        assertThat(IntStream.range(0, 4).mapToObj(place -> figures.text(found, place)))
                .isEqualTo(costs.subList(0, 4));
        for (String place : List.of("place_1", "place_4")) {
            int at = Integer.parseInt(place.substring(6)) - 1;
            assertThat(figures.number("largest_difference_2", place))
                    .isEqualTo(figures.number("cause_difference", costs.get(at), "container_house"));
        }
    }

    @Test
    void the_answer_says_who_leaves_less_and_by_which_costs() {
        Figures figures = figures(Measure.AREA);

        String amount = String.format(Locale.ROOT, "%.2f", figures.number("left_apart", "container_house"));
        String unit = Measure.AREA.money().display("USD");
        assertThat(figures.text("answer_2"))
                .isEqualTo("In container-house, returns above total cost are " + amount + " " + unit
                        + " less than in trough-house, per m² of floor.");
        assertThat(figures.text("answer_costs_2"))
                .matches("Largest differences in cost: .*Crop care labour -[0-9.]+; Containers -[0-9.]+; .*[0-9]\\.");
        assertThat(figures.text("answer_receipts_2"))
                .matches("Causes of the difference in receipts: Plants per m² of floor \\+[0-9.]+; Marketable fruit per"
                        + " plant -[0-9.]+; Price per kg \\+[0-9.]+\\.");
        assertThat(figures.text("answer_3"))
                .isEqualTo("In trough-house (2), returns above total cost are as much as in trough-house, per m² of"
                        + " floor.");
        assertThat(figures.text("answer_costs_3")).isEmpty();
        assertThat(figures.text("answer_receipts_3")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void pages_show_every_scenario_and_place_lines_that_are_there(Measure per) {
        List<Page> pages = COMPARED.get(per).pages();

        assertThat(pages).extracting(Page::name).containsExactly("Comparison", "Causes");
        for (Page page : pages) {
            List<Table> tables = page.blocks().stream()
                    .filter(Table.class::isInstance)
                    .map(Table.class::cast)
                    .toList();
            assertThat(tables)
                    .isNotEmpty()
                    .allSatisfy(table -> assertThat(table.columns())
                            .extracting(Column::heading)
                            .contains("trough-house", "container-house", "trough-house (2)")
                            .hasSize(1 + 3 + 2));
            assertThat(tables)
                    .flatExtracting(Table::rows)
                    .allSatisfy(row -> assertThat(row.cells())
                            .satisfiesAnyOf(
                                    cells -> assertThat(cells).isEmpty(),
                                    cells -> assertThat(cells).hasSize(1 + 3 + 2)));
        }
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void a_scenario_against_itself_differs_nowhere(Measure per) {
        Figures figures = figures(per);
        List<Line> differences = figures.budget().lines().stream()
                .filter(line -> line.kind() == Kind.NUMBER || line.kind() == Kind.OPTIONAL)
                .filter(line -> line.id().endsWith("_difference") || line.id().startsWith("receipts_step"))
                .toList();

        assertThat(differences).hasSizeGreaterThan(20);
        for (Line line : differences) {
            for (int cell = 0; cell < line.size(); cell++) {
                if (line.index(cell).endsWith("trough_house_2")) {
                    assertThat(figures.number(line, cell))
                            .as(line.address(cell))
                            .isZero();
                }
            }
        }
    }

    @Test
    void every_entry_names_its_scenario_and_its_line() {
        Figures figures = figures(Measure.AREA);
        Line amount = figures.budget().line("cause_amount");
        int row = amount.axes().get(0).indexOf("own_mulch");

        List<Given> given = figures.budget().given(amount).subList(3 * row, 3 * row + 3);
        assertThat(given)
                .extracting(each -> each.origin().toString())
                .containsExactly(
                        "trough-house, budget_value[own_mulch]",
                        "container-house, no such row",
                        "trough-house (2), budget_value[own_mulch]");
        assertThat(given.get(1).filled()).isFalse();
        for (Line line : figures.budget().lines()) {
            if (figures.budget().entry(line).isPresent() && !line.id().equals("cause_source")) {
                assertThat(figures.budget().given(line))
                        .as(line.id())
                        .noneMatch(value -> value.origin().toString().isEmpty());
            }
        }
    }

    @Test
    void rows_that_do_not_add_up_to_what_is_left_are_told() {
        Figures sound = figures(Measure.AREA);
        Line left = sound.budget().line("left_amount");
        Given more = Given.number(sound.number(left, 1) + 1, left.unit());
        Figures wrong = Figures.of(sound.budget().with(Map.of(left, Map.of(1, more))));
        Line check = sound.budget().line("left_gap_check");

        assertThat(sound.text(check, 1)).isEmpty();
        assertThat(wrong.text(check, 0)).isEmpty();
        assertThat(wrong.text(check, 1))
                .isEqualTo("The sum of receipts and costs in container-house is not their whole.");
    }

    @Test
    void equal_names_are_told_apart_and_one_scenario_is_not_compared() {
        Figures figures = figures(Measure.AREA);
        Line name = figures.budget().line("scenario_name");

        assertThat(name.axes().get(0).keys()).isEqualTo(KEYS);
        assertThat(IntStream.range(0, 3).mapToObj(i -> figures.text(name, i)))
                .containsExactly("trough-house", "container-house", "trough-house (2)");
        Compared one = new Compared("one", ALONE.get("trough_house"));
        assertThatThrownBy(() -> Comparison.of(List.of(one, one), Measure.AREA, new Faults()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("different names");
    }
}
