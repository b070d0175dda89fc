package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** The kinds of plant stock side by side, the chosen one marked. */
final class StockTable {

    private static final List<String> COMPARED = List.of(
            "compared_plants",
            "compared_established_cost",
            "compared_plants_per_metre",
            "compared_fruit",
            "compared_net_per_kg",
            "compared_returns_per_metre",
            "compared_returns_per_metre_week",
            "compared_first_fruit");

    private final Figures figures;
    private final Budget budget;

    StockTable(Figures figures) {
        this.figures = figures;
        this.budget = figures.budget();
    }

    @Override
    public String toString() {
        Line keys = budget.line("stock_key");
        List<Integer> kinds = IntStream.range(0, keys.size())
                .filter(kind -> !figures.text(keys, kind).isEmpty())
                .boxed()
                .toList();
        List<String> header = new ArrayList<>(List.of("Figure"));
        kinds.forEach(kind -> header.add(heading(keys, kind)));
        TextTable table = new TextTable(header, 1);
        IntStream.range(1, header.size()).forEach(table::right);
        for (String id : COMPARED) {
            Line line = budget.line(id);
            List<String> row =
                    new ArrayList<>(List.of(line.label() + ", " + line.unit().display(budget.currency())));
            kinds.forEach(kind -> row.add(shown(line, kind)));
            table.row(row);
        }
        return table.toString();
    }

    private String heading(Line keys, int kind) {
        boolean chosen = figures.text(keys, kind).equalsIgnoreCase(figures.text("stock_choice"));
        return figures.text(budget.line("stock_label"), kind) + (chosen ? " (chosen)" : "");
    }

    private String shown(Line line, int kind) {
        return Shown.cell(figures, line, kind);
    }
}
