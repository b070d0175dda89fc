package org.benchmetre.batch;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.text;

import java.util.Arrays;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/** A budget of a few lines with every kind of cell that a page can place. */
final class SmallFarm {

    static final Unit METRE = Unit.METRE;
    static final Unit PER_METRE = Unit.parse("money/m");
    static final Unit INCH = Unit.parse("in");

    final Axis parts = Axis.rows("part", "Part", List.of("pump", "clip", "film"), 2);
    final Axis steps = Axis.rows("step", "Step", List.of("low", "now", "high"), 0);
    final Axis shares = Axis.rows("share", "Share", List.of("less", "same"), 0);
    final Line partLabel;
    final Line partCost;
    final Line partPrice;
    final Line length;
    final Line spacing;
    final Line title;
    final Line part;
    final Line sum;
    final Line lost;
    final Line sentence;
    final Line silence;
    final Line down;
    final Line across;
    final Line cases;
    final Budget budget;

    SmallFarm() {
        BudgetBuilder b = new BudgetBuilder("A small farm", "USD");
        b.caution("Loads", "Have benches confirmed.");
        b.caution("Money", "Replace what is invented.");
        ScheduleBuilder s = b.schedule("Parts", "Parts");
        Line keys = s.textEntry("part_key", "Key", parts)
                .given(List.of(
                        Given.text("pump"), Given.text("clip"), Given.text("film"), Given.text(""), Given.text("")));
        partLabel = s.textEntry("part_label", "Part", parts)
                .given(List.of(
                        Given.text("Pump"), Given.text("Clip"), Given.text("Film"), Given.text(""), Given.text("")));
        b.nameRows(parts, partLabel);
        partPrice = s.entry("part_price", "Price", PER_METRE, parts)
                .given(List.of(
                        price(1.5).from("quotation of May"),
                        price(0.085).from("invented for the demo"),
                        price(0),
                        Given.blank(PER_METRE),
                        Given.blank(PER_METRE)));
        ScheduleBuilder single = b.schedule("House", "House");
        length = single.entry("bench_length", "Length of a bench", METRE)
                .usually(new Plausible(5, 10, 20), "common practice, no source")
                .given(List.of(Given.number(1200, METRE).from("measured")));
        spacing = single.entry("plant_spacing", "Spacing", METRE)
                .usually(new Plausible(0.1, 0.2, 0.4), "common practice, no source")
                .given(List.of(Given.typed(6, INCH, METRE)));
        title = single.textEntry("house_title", "Title", new Axis[0]).given(List.of(Given.text("Own house")));
        part = single.textEntry("main_part", "Main part", new Axis[0])
                .keyOf(keys)
                .given(List.of(Given.text("clip")));
        partCost = s.line("part_cost", "Cost", Unit.MONEY, partPrice.times(length));
        sum = single.line("cost_sum", "All parts", Unit.MONEY, sum(partCost, parts));
        lost = single.line("cost_lost", "Lost", Unit.MONEY, onlyWhen(spacing.exceeds(length), sum, "nothing lost"));
        sentence = single.textLine("cost_told", "Told", joined(text("All parts cost "), shown(sum, 0), text(" USD.")));
        silence = single.textLine("cost_untold", "Untold", text(""));
        down = b.schedule("Steps", "Down").line("length_step", "Length", METRE, step(steps, 0.5, 1, 1.5));
        across = b.schedule("Steps", "Across")
                .line(
                        "spacing_step",
                        "Spacing",
                        METRE,
                        new Rows(
                                shares,
                                List.of(spacing.times(number(0.5, Unit.ONE)), spacing.times(number(1, Unit.ONE)))));
        cases = b.schedule("Steps", "Cases")
                .line("length_over", "Over", METRE, down.minus(across.times(number(6000, Unit.ONE))));
        budget = b.build();
    }

    private Rows step(Axis axis, double... by) {
        return new Rows(
                axis,
                Arrays.stream(by)
                        .<Formula>mapToObj(share -> length.times(number(share, Unit.ONE)))
                        .toList());
    }

    private static Given price(double money) {
        return Given.number(money, PER_METRE);
    }

    Figures figures() {
        return Figures.of(budget);
    }

    static CellRef cell(Line line) {
        return new CellRef(line, 0);
    }
}
