package org.benchmetre.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.run.Figures;

/**
 * First or yearly cost per metre by group, the chosen irrigation system first and the others beside it. Spare ways are left out; groups that cost
 * nothing in any way are named below.
 */
final class GroupTable {

    private final Figures figures;
    private final Budget budget;
    private final Line costs;
    private final Line totals;
    private final Line groups;
    private final String family;
    private final WaysInUse ways;
    private final Amounts amounts;

    /** A table of one family of cost: {@code first} or {@code yearly}. */
    GroupTable(Figures figures, String family) {
        this.figures = figures;
        this.budget = figures.budget();
        this.family = family;
        this.totals = budget.line("way_" + family + "_cost_per_metre");
        this.costs = budget.line("group_way_" + family + "_cost_per_metre");
        this.groups = budget.line("group_label");
        this.ways = new WaysInUse(figures);
        this.amounts = new Amounts(figures);
    }

    @Override
    public String toString() {
        List<String> header = row("Group", ways::heading);
        TextTable table = new TextTable(header, 1);
        IntStream.range(1, header.size()).forEach(table::right);
        List<String> without = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            int row = group;
            if (ways.rows().stream().allMatch(way -> cost(row, way) == 0)) {
                without.add(figures.text(groups, row));
            } else {
                table.row(row(figures.text(groups, row), way -> amounts.of(costs, cell(row, way))));
            }
        }
        if (family.equals("yearly")) {
            Line lost = budget.line("side_lost_fruit");
            table.row(row("Fruit lost to dry plants (lowers receipts)", way -> amounts.of(lost, way)));
        }
        table.total(row("Total", way -> amounts.of(totals, way)));
        return table
                + (without.isEmpty()
                        ? ""
                        : TextTable.wrapped("Without " + family + " cost: " + String.join(", ", without)));
    }

    private List<String> row(String first, IntFunction<String> cell) {
        List<String> cells = new ArrayList<>(List.of(first));
        ways.rows().forEach(way -> cells.add(cell.apply(way)));
        return cells;
    }

    private double cost(int group, int way) {
        return figures.number(costs, cell(group, way));
    }

    private int cell(int group, int way) {
        Position at = Position.NONE.with(groups.axes().get(0), group).with(ways.axis(), way);
        return costs.cellAt(at);
    }
}
