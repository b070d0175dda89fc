package org.benchmetre.bench;

import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;

/**
 * First cost of a trough house as plain Java over an array of numbers: what somebody would write who needed only these six figures
 * and never a new row, formula or explanation. Texts are read once from the budget; only the numbers vary. Not for several threads.
 */
final class HandWritten {

    /** The figures, in the order in which they are answered. */
    static final List<String> OUTPUTS = List.of(
            "first_cost_total",
            "first_cost_per_metre",
            "first_cost_per_plant",
            "first_cost_per_area",
            "purchase_cost",
            "leftover_value");

    /** Drivers in the order of their array; the last two depend on the irrigation system. */
    static final List<String> DRIVERS = List.of(
            "one",
            "bench_metres",
            "bench_count",
            "plant_count",
            "house_area",
            "substrate_volume",
            "loose_volume",
            "coir_volume",
            "peat_volume",
            "perlite_volume",
            "other_volume",
            "mulch_metres",
            "zone_count",
            "header_length",
            "outlet_count",
            "line_metres");

    /** The place in the array of drivers where a zero stands. */
    static final int NO_DRIVER = DRIVERS.size();

    private final HandWrittenLayout layout;
    private final HandWrittenParts parts;
    private final HandWrittenWays ways;
    private final HandWrittenStock stock;
    private final int wage;
    private final int wageLevel;
    private final double[] costByWay;
    private final double[] costByStock;

    /**
     * Finds each number's place.
     *
     * @param budget a trough house, for its texts
     * @param cells what stands in the arrays of numbers: every number the outputs read
     */
    HandWritten(Budget budget, List<CellRef> cells) {
        Cells at = new Cells(budget, cells);
        layout = new HandWrittenLayout(at);
        ways = new HandWrittenWays(at);
        parts = new HandWrittenParts(at, ways.keys());
        stock = new HandWrittenStock(at);
        wage = at.first("install_wage");
        wageLevel = at.first("wage_level");
        costByWay = new double[ways.keys().size()];
        costByStock = new double[stock.keys().size()];
    }

    static List<Line> outputs(Budget budget) {
        return OUTPUTS.stream().map(budget::line).toList();
    }

    static List<CellRef> outputCells(Budget budget) {
        return outputs(budget).stream().map(line -> new CellRef(line, 0)).toList();
    }

    /** Computes one case, and of the irrigation systems and the kinds of plant only those chosen. */
    void chosen(double[] x, double[] out) {
        run(x, ways.chosen(), ways.chosen() + 1, stock.chosen(), stock.chosen() + 1, out);
    }

    /** Computes one case with every irrigation system and every kind of plant, as the budget does before it looks up those chosen. */
    void every(double[] x, double[] out) {
        run(x, 0, costByWay.length, 0, costByStock.length, out);
    }

    private void run(double[] x, int firstWay, int endWay, int firstStock, int endStock, double[] out) {
        layout.run(x);
        parts.price(x);
        for (int kind = firstStock; kind < endStock; kind++) {
            costByStock[kind] = stock.cost(x, kind, layout.plants);
        }
        double plants = costByStock[stock.chosen()];
        for (int way = firstWay; way < endWay; way++) {
            ways.count(x, way, layout);
            costByWay[way] = parts.cost(way, layout.drivers, x[wage] * x[wageLevel]) + plants;
        }
        ways.count(x, ways.chosen(), layout);
        parts.buy(ways.chosen(), layout.drivers);
        double total = costByWay[ways.chosen()];
        out[0] = total;
        out[1] = total / layout.benchMetres;
        out[2] = total / layout.plants;
        out[3] = total / layout.houseArea;
        out[4] = parts.bought;
        out[5] = parts.leftValue;
    }

    /** Where numbers stand in the arrays, and the texts of the budget. */
    record Cells(Budget budget, List<CellRef> cells) {

        /** The place of a line's first cell; those of its other filled rows follow. */
        int first(String id) {
            int place = cells.indexOf(new CellRef(budget.line(id), 0));
            if (place < 0) {
                throw new IllegalArgumentException("Line " + id + " is not among the numbers that vary.");
            }
            return place;
        }

        String text(String id) {
            return budget.given(budget.line(id)).get(0).text();
        }

        /** The texts of the filled rows. */
        List<String> texts(String id) {
            Line line = budget.line(id);
            return budget.given(line).subList(0, line.axes().get(0).filled()).stream()
                    .map(given -> given.text())
                    .toList();
        }
    }
}
