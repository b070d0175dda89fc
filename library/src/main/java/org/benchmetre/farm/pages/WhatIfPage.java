package org.benchmetre.farm.pages;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.levers.LeverList;
import org.benchmetre.page.CaseTable;
import org.benchmetre.page.Chart;
import org.benchmetre.page.ChartLook;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.Tone;

/** What moves the plan: returns over two entries at once, and each entry alone at the ends of its usual range. */
final class WhatIfPage {

    private static final List<Integer> LEFT = List.of(25, 10, 10, 10, 10, 10);
    private static final List<Integer> RIGHT = List.of(22, 27, 11, 11);
    private static final int CHART_ROWS = 16;

    private WhatIfPage() {}

    static Page of(Budget budget) {
        return Page.answer("What if", "What moves returns?")
                .head(new Sentences(List.of(new Sentence(budget.line("doubt_sentence"), Tone.LEAD))))
                .left(
                        LEFT,
                        fruitAndPrice(budget),
                        second(budget),
                        new FixedWords(
                                "",
                                "Two entries move at once, all others stay. farm.csv names those of the second table.",
                                Tone.FAINT),
                        stock(budget),
                        new Sentences(List.of(new Sentence(budget.line("compared_sentence"), Tone.FAINT))),
                        mulch(budget),
                        mulchBoxes(budget))
                .right(RIGHT, chart(budget), swings(budget));
    }

    private static CaseTable fruitAndPrice(Budget budget) {
        return new CaseTable(
                "Returns, by fruit per plant (down) and price of fruit (across)",
                budget.line("whatif_returns"),
                budget.line("whatif_grams"),
                budget.line("whatif_price"),
                budget.line("grams_planned"),
                budget.line("price_average"));
    }

    private static CaseTable second(Budget budget) {
        Line down = budget.line("second_down_value");
        Line across = budget.line("second_across_value");
        return new CaseTable(
                "Returns, by " + within(down) + " (down) and " + within(across) + " (across)",
                budget.line("second_returns"),
                down,
                across,
                budget.line(budget.structure().choices().getOrDefault(LeverList.DOWN, LeverList.USUAL_DOWN)),
                budget.line(budget.structure().choices().getOrDefault(LeverList.ACROSS, LeverList.USUAL_ACROSS)));
    }

    private static String within(Line line) {
        return line.label().substring(0, 1).toLowerCase(Locale.ROOT)
                + line.label().substring(1);
    }

    /** The kinds of plant stock side by side, each as if it were the one chosen. */
    private static Table stock(Budget budget) {
        Line label = budget.line("stock_label");
        return Table.of(
                        "Plant stock side by side",
                        label.axes().get(0),
                        Column.of("Plant stock", label),
                        Column.of("Cost a plant", budget.line("compared_established_cost")),
                        Column.of("First fruit", budget.line("compared_first_fruit")),
                        Column.of("Fruit", budget.line("compared_fruit")),
                        Column.of("Returns", budget.line("compared_returns_per_metre")))
                .note(
                        "Each as if it were chosen: what an established plant costs, weeks until it fruits, and returns above plants and above what moves with fruit.");
    }

    private static Sentences mulch(Budget budget) {
        return new Sentences(List.of(
                new Sentence(budget.line("mulch_sentence"), Tone.PLAIN),
                new Sentence(budget.line("mulch_doubt"), Tone.FAINT)));
    }

    private static FigureList mulchBoxes(Budget budget) {
        return new FigureList(
                "Partial budget: mulch film against none",
                List.of(
                        FigureRow.of("Added returns", budget.line("mulch_added_returns")),
                        FigureRow.of("Reduced costs", budget.line("mulch_reduced_costs")),
                        FigureRow.of("Reduced returns", budget.line("mulch_reduced_returns")),
                        FigureRow.of("Added costs", budget.line("mulch_added_costs")),
                        FigureRow.total("Gain of film", budget.line("mulch_net"))));
    }

    private static Chart chart(Budget budget) {
        Line low = budget.line("swing_at_low");
        return new Chart(
                budget.line("swing_sentence"),
                Chart.Shape.SWINGS,
                List.of(low, budget.line("swing_at_high")),
                low.axes().get(0),
                new ChartLook(
                        CHART_ROWS,
                        "A bar for each entry: how far returns of a square metre change when it alone stands at the low or the high end of its "
                                + "usual range. The longest bar is on top.",
                        Optional.of(budget.line("swing_size"))));
    }

    private static Table swings(Budget budget) {
        Line label = budget.line("swing_label");
        Axis swings = label.axes().get(0);
        return Table.of(
                        "Each entry alone",
                        swings,
                        Column.of("Entry", label),
                        Column.of("Usual range", budget.line("swing_range")),
                        Column.of("At low", budget.line("swing_at_low")),
                        Column.of("At high", budget.line("swing_at_high")))
                .largestFirst(budget.line("swing_size"))
                .note("Change against the plan. The order is that of the figures as written; the figures are live.");
    }
}
