package org.benchmetre.bench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;

/** Which entry cells differ from case to case. */
public enum Varying {
    /** Every number of the scenario, also those the outputs do not read. */
    EVERY_NUMBER,
    /** Every number the outputs read. */
    EVERY_NUMBER_READ,
    /** Measures of house, planting, trough and blend, the wage and the price of a plant. */
    TWENTY_TWO,
    /** Bench length and plant spacing. */
    TWO;

    private static final List<String> MEASURES = List.of(
            "bench_length",
            "plant_spacing",
            "bench_count",
            "house_length",
            "house_width",
            "zone_count",
            "end_margin",
            "trough_top_width",
            "trough_bottom_width",
            "trough_depth",
            "trough_freeboard",
            "air_gap",
            "mulch_lap",
            "mulch_stock_width",
            "coir_parts",
            "peat_parts",
            "perlite_parts",
            "other_parts",
            "mixing_shrinkage",
            "substrate_settlement",
            "install_wage");

    List<CellRef> cells(Budget budget) {
        return switch (this) {
            case EVERY_NUMBER -> numbers(budget);
            case EVERY_NUMBER_READ -> read(budget);
            case TWENTY_TWO ->
                Stream.concat(
                                MEASURES.stream().map(id -> new CellRef(budget.line(id), 0)),
                                Stream.of(priceOfChosenPlant(budget)))
                        .toList();
            case TWO ->
                MEASURES.subList(0, 2).stream()
                        .map(id -> new CellRef(budget.line(id), 0))
                        .toList();
        };
    }

    private static List<CellRef> numbers(Budget budget) {
        List<CellRef> cells = new ArrayList<>();
        for (Line line : budget.lines()) {
            if (budget.entry(line).isPresent() && line.kind() == Kind.NUMBER) {
                int filled = line.axes().isEmpty() ? 1 : line.axes().get(0).filled();
                for (int cell = 0; cell < filled; cell++) {
                    cells.add(new CellRef(line, cell));
                }
            }
        }
        return cells;
    }

    private static List<CellRef> read(Budget budget) {
        Set<CellRef> needed = new HashSet<>(HandWritten.outputCells(budget));
        Deque<CellRef> open = new ArrayDeque<>(needed);
        while (!open.isEmpty()) {
            CellRef cell = open.pop();
            budget.formula(cell.line())
                    .ifPresent(formula -> Dependencies.of(cell.line(), formula, cell.cell()).stream()
                            .filter(needed::add)
                            .forEach(open::push));
        }
        return numbers(budget).stream().filter(needed::contains).toList();
    }

    private static CellRef priceOfChosenPlant(Budget budget) {
        Line price = budget.line("stock_price");
        String chosen = budget.given(budget.line("stock_choice")).get(0).text();
        return new CellRef(price, price.axes().get(0).indexOf(chosen));
    }
}
