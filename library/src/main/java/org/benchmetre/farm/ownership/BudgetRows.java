package org.benchmetre.farm.ownership;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Rows;

/** Gathers the rows of the enterprise budget, each marked with the part where it counts, under keys that are all different. */
final class BudgetRows {

    private final List<BudgetRow> rows = new ArrayList<>();
    private final List<String> parts = new ArrayList<>();

    BudgetRows add(String part, BudgetRow row) {
        rows.add(row.named(unused(row.key(), part)));
        parts.add(part);
        return this;
    }

    /** A key that is taken gets the number of its row in its part. */
    private String unused(String key, String part) {
        boolean taken = rows.stream().anyMatch(row -> row.key().equals(key));
        return taken ? key + "_" + parts.stream().filter(part::equals).count() : key;
    }

    List<String> keys() {
        return rows.stream().map(BudgetRow::key).toList();
    }

    /** The part of each row. */
    List<String> parts() {
        return List.copyOf(parts);
    }

    /** What comes on top of each row at one of the two yields, null for nothing. */
    List<Formula> bends(Function<YieldBends.Bend, Formula> end) {
        return rows.stream()
                .map(row -> row.bend() == null ? null : end.apply(row.bend()))
                .collect(Collectors.toList());
    }

    /** Some figure of each row. */
    Formula along(Axis axis, Function<BudgetRow, Formula> figure) {
        return new Rows(axis, rows.stream().map(figure).toList());
    }
}
