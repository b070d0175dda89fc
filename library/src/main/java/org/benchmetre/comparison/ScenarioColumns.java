package org.benchmetre.comparison;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.unit.Unit;

/** The scenarios side by side, the first of them being what the others are held against: what they are and how large. */
final class ScenarioColumns {

    /** What is divided by is more than nothing. */
    private static final Bounds SIZE = new Bounds(0, false, 1e12, false);

    private static final Bounds FRUIT = new Bounds(0, true, 1e12, false);

    /** One place for each scenario. */
    final Axis axis;
    /** What a reader knows each by. */
    final Line name;
    /** Plants that stand at one time. */
    final Line plants;
    /** Floor of the house, m2. */
    final Line area;
    /** Marketable fruit, kg/a. */
    final Line fruit;
    /** What the comparison divides by, in the unit of the measure. */
    final Line size;
    /** Plants on a square metre of floor. */
    final Line plantsPerArea;

    private final TakenFigures taken;

    ScenarioColumns(BudgetBuilder b, TakenFigures taken, Measure per) {
        this.taken = taken;
        this.axis = Axis.rows("scenario", "Scenario", keys(taken.scenarios()), 0);
        ScheduleBuilder s = b.schedule(ComparisonSheets.SCENARIOS, "What they are");
        s.note(
                "Figures of the scenarios as they were read. Each is the line of the same name there, where it is explained.");
        name = s.textEntry("scenario_name", "Name", axis).given(taken.names());
        b.nameRows(axis, name);
        s.textEntry("scenario_title", "Title", axis).given(taken.titles());
        Line metres = entry(s, "bench_metres", "Bench metres", SIZE);
        plants = entry(s, "plant_count", "Plants", SIZE);
        area = entry(s, "house_area", "Floor of the house", SIZE);
        fruit = entry(s, "yield_total", "Marketable fruit", per == Measure.KG ? SIZE : FRUIT);
        plantsPerArea = s.line("plants_per_area", "Plants per m² of floor", Unit.parse("plant/m2"), plants.over(area));
        text(s, "irrigation_label", "Irrigation system");
        text(s, "stock_label_chosen", "Plant stock");
        entry(s, "plan_year", "Year of the plan", Bounds.ANY);
        size = List.of(metres, plants, area, fruit).stream()
                .filter(line -> line.id().equals(per.line()))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> keys(List<Compared> scenarios) {
        UniqueKeys keys = new UniqueKeys();
        return scenarios.stream().map(each -> keys.ofName(each.name())).toList();
    }

    /** A number taken over from the line of the same name. */
    Line entry(ScheduleBuilder s, String id, String label, Bounds bounds) {
        return s.entry(id, label, taken.like(id).unit(), axis).within(bounds).given(taken.figures(id));
    }

    private void text(ScheduleBuilder s, String id, String label) {
        s.textEntry(id, label, axis).given(taken.figures(id));
    }

    /** What a reader knows a scenario by, numbered from 0. */
    String called(int scenario) {
        return taken.scenarios().get(scenario).name();
    }

    /** A figure of the first scenario. */
    Formula ofFirst(Line line) {
        return new Element(line, axis, 0);
    }

    /** What a scenario has more than the first. */
    Formula difference(Line line) {
        return line.minus(ofFirst(line));
    }

    /** A number without its sign. */
    static Formula withoutSign(Formula number) {
        return greater(number, none(number.unit()).minus(number));
    }
}
