package org.benchmetre.scenario;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.rule.AtMost;
import org.benchmetre.budget.unit.Unit;

/** A farm of three single values and a table of parts: enough for whatever reading can meet. */
final class SmallFarm {

    private static final Bounds NOT_NEGATIVE = new Bounds(0, true, Double.POSITIVE_INFINITY, false);
    private static final Bounds POSITIVE = new Bounds(0, false, Double.POSITIVE_INFINITY, false);

    /** How its table is kept. */
    static final List<TableForm> FORMS = List.of(TableForm.of("materials.csv", "item", List.of("item", "price"), 50));

    /** Reads it. */
    static final ScenarioReader READER =
            new ScenarioReader(FORMS, SmallFarm::of, "materials.csv", "any", "any"::equals, Deciding.NONE);

    private SmallFarm() {}

    static Budget of(Structure structure) {
        BudgetBuilder b = new BudgetBuilder(structure);
        ScheduleBuilder s = b.schedule("Farm", "Farm");
        Line length = s.entry("bench_length", "Length", Unit.METRE)
                .above(0, 500)
                .keptAt(Home.single("bench_length", "value"))
                .whenBlank(Blank.REFUSED)
                .given(Given.number(20, Unit.METRE));
        s.entry("bench_count", "Benches", Unit.ONE)
                .from(1, 100)
                .whole()
                .keptAt(Home.single("bench_count", "value"))
                .whenBlank(Blank.REFUSED)
                .given(Given.number(4, Unit.ONE));
        s.line("bench_twice", "Twice", Unit.METRE, length.plus(length));
        Axis axis =
                Axis.rows("material", "Part", structure.keys("materials.csv").keys(), 2);
        ScheduleBuilder t = b.schedule("Parts", "Parts");
        t.textEntry("material_item", "Key", axis)
                .words(TextForm.OWN_KEY)
                .keptAt(Home.of("materials.csv", "material", "item"))
                .given(axis.keys().subList(0, axis.filled()).stream()
                        .map(Given::text)
                        .toList());
        column(t, axis, "pack", "Pack", POSITIVE, Blank.DEFAULT, Meaning.PLAIN);
        Line price = column(
                t, axis, "price", "Price", NOT_NEGATIVE, Blank.REFUSED, Meaning.price("material_price_year", ""));
        column(t, axis, "price_year", "Price year", new Bounds(1990, true, 2100, true), Blank.NOTHING, Meaning.PLAIN);
        b.rule(new AtMost(column(t, axis, "salvage", "Salvage", Bounds.ANY, Blank.NOTHING, Meaning.PLAIN), price));
        t.textEntry("material_unit", "Unit", axis)
                .keptAt(Home.of("materials.csv", "material", "unit"))
                .given(List.of());
        t.textEntry("material_source", "Source", axis)
                .keptAt(Home.of("materials.csv", "material", "source"))
                .given(List.of());
        return b.build();
    }

    private static Line column(
            ScheduleBuilder s, Axis axis, String column, String label, Bounds bounds, Blank blank, Meaning meaning) {
        return s.entry("material_" + column, label, Unit.ONE, axis)
                .within(bounds)
                .keptAt(Home.of("materials.csv", "material", column))
                .whenBlank(blank)
                .meaning(meaning)
                .given(List.of());
    }
}
