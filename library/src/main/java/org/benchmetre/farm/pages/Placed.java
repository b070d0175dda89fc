package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.page.TableRow;

/** Short ways to name what a page places. */
final class Placed {

    private Placed() {}

    /** The cell of a single figure. */
    static CellRef cell(Budget budget, String id) {
        return new CellRef(budget.line(id), 0);
    }

    /** Rows with further ones below. */
    static List<TableRow> with(List<TableRow> rows, TableRow... further) {
        List<TableRow> all = new ArrayList<>(rows);
        all.addAll(List.of(further));
        return all;
    }
}
