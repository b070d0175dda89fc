package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.TableRow;

/** Parts by group, groups in the order of first use: those of the irrigation system that is chosen as written, and those of the others. */
final class PartRows {

    private final Budget budget;
    private final Line group;
    private final Map<String, List<Integer>> members = new LinkedHashMap<>();
    private final List<TableRow> ofOthers = new ArrayList<>();

    PartRows(Budget budget, Axis parts) {
        this.budget = budget;
        group = budget.line("material_group");
        for (int row = 0; row < parts.filled(); row++) {
            if (belongs(row)) {
                members.computeIfAbsent(text(group, row), any -> new ArrayList<>())
                        .add(row);
            } else {
                ofOthers.add(TableRow.at(row).ifAny());
            }
        }
    }

    private String text(Line entry, int cell) {
        return budget.given(entry).get(cell).text();
    }

    /** A part without a system belongs to each. */
    private boolean belongs(int row) {
        List<String> systems = List.of(text(budget.line("material_option"), row).split(" "));
        return systems.contains("") || systems.contains(text(budget.line("irrigation_choice"), 0));
    }

    /** Parts of the chosen system, each group under its name. */
    List<TableRow> needed() {
        List<TableRow> rows = new ArrayList<>();
        members.forEach((key, all) -> {
            String heading = budget.entry(group).orElseThrow().form().shown(key);
            rows.add(TableRow.at(all.get(0)).under(heading));
            all.stream().skip(1).map(TableRow::at).forEach(rows::add);
        });
        return rows;
    }

    /** Parts of the chosen system, and below them those of the others. */
    List<TableRow> all() {
        return Placed.with(needed(), ofOthers.toArray(TableRow[]::new));
    }

    /** How many rows the parts of the chosen system take, with the names of their groups. */
    int height() {
        return members.values().stream().mapToInt(all -> all.size() + 1).sum();
    }

    /** Parts of the other systems, folded away while none is bought. */
    List<TableRow> ofOthers() {
        return List.copyOf(ofOthers);
    }
}
