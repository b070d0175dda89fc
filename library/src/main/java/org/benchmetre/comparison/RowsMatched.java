package org.benchmetre.comparison;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.benchmetre.budget.CellRef;

/**
 * Finds the rows that several enterprise budgets have in common: those of one section and label, upper and lower case alike. Where a
 * budget has a label twice in a section, rows of that label are the same only when their keys are.
 */
final class RowsMatched {

    private final List<List<PageRow>> pages;
    private final Set<String> ambiguous = new HashSet<>();
    private final List<String> order = new ArrayList<>();
    private final Map<String, PageRow> first = new HashMap<>();
    private final Map<String, String> keys = new HashMap<>();
    private final UniqueKeys unique = new UniqueKeys();
    private final Map<String, SortedMap<Integer, CellRef>> cells = new HashMap<>();

    private RowsMatched(List<List<PageRow>> pages) {
        this.pages = pages;
    }

    /** Rows in the order of the first budget, what only others have at its place there. */
    static List<MatchedRow> of(List<List<PageRow>> pages) {
        RowsMatched matched = new RowsMatched(pages);
        pages.forEach(matched::findAmbiguous);
        for (int page = 0; page < pages.size(); page++) {
            matched.take(page);
        }
        return matched.rows();
    }

    private void findAmbiguous(List<PageRow> page) {
        Set<String> seen = new HashSet<>();
        page.stream().map(RowsMatched::named).filter(name -> !seen.add(name)).forEach(ambiguous::add);
    }

    private void take(int page) {
        int next = 0;
        for (PageRow row : pages.get(page)) {
            String same = identity(row);
            if (first.putIfAbsent(same, row) == null) {
                order.add(next, same);
                keys.put(same, unique.unused(row.key()));
                cells.put(same, new TreeMap<>());
            }
            cells.get(same).put(page, row.value());
            next = order.indexOf(same) + 1;
        }
    }

    private String identity(PageRow row) {
        String name = named(row);
        return ambiguous.contains(name) ? name + " " + row.key() : name;
    }

    private static String named(PageRow row) {
        return row.section() + " " + row.label().strip().toLowerCase(Locale.ROOT);
    }

    private List<MatchedRow> rows() {
        List<MatchedRow> rows = new ArrayList<>();
        for (String same : order) {
            PageRow row = first.get(same);
            rows.add(new MatchedRow(keys.get(same), row.label(), row.section(), cells.get(same)));
        }
        return List.copyOf(rows);
    }
}
