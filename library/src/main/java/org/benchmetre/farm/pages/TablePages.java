package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Months;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.Page;

/** The tables as they are typed, a page each. */
final class TablePages {

    private static final int NUMBER = 7;
    private static final int WORD = 11;
    private static final int KEY = 13;
    private static final int NAME = 22;

    /** Behind the plant stock. */
    private static final int CROPS = 3;

    private TablePages() {}

    static List<Page> of(Budget budget) {
        List<Page> pages = new ArrayList<>(List.of(
                page(budget, "Parts", "What is built, at what cost?", FarmTable.MATERIALS.file()),
                page(budget, "Irrigation systems", "Which systems are compared?", FarmTable.IRRIGATION.file()),
                page(budget, "Plant stock", "Which plants can be bought?", FarmTable.PLANT_STOCK.file())
                        .foot(FileColumns.table(
                                budget, FarmTable.STOCK_PRICES.file(), "Price breaks by quantity ordered")),
                page(budget, "Channels", "Where is fruit sold?", FarmTable.CHANNELS.file()),
                page(budget, "Tasks", "Which work and inputs come back?", FarmTable.TASKS.file()),
                page(budget, "Months", "What goes by month?", Months.FILE)));
        pages.add(funds(budget));
        if (FarmTable.CROPS.hasRows(budget.structure())) {
            pages.add(CROPS, page(budget, "Crops", "What is grown in a year?", FarmTable.CROPS.file()));
        }
        return List.copyOf(pages);
    }

    /** Three tables of few rows below each other. */
    private static Page funds(Budget budget) {
        EntryTable loans = FileColumns.table(budget, FarmTable.LOANS.file(), "Loans");
        EntryTable uses = FileColumns.table(budget, FarmTable.FUNDS.file(), "Uses beside parts, plants and installing");
        EntryTable flows = FileColumns.table(budget, FarmTable.CASH.file(), "Cash of one's own, by month or year");
        return Page.entries("Loans and funds", "What is borrowed, and what else is paid?")
                .left(widest(budget, List.of(loans, uses, flows)), loans, uses, flows);
    }

    private static List<Integer> widest(Budget budget, List<EntryTable> tables) {
        List<Integer> widest = new ArrayList<>();
        for (EntryTable table : tables) {
            List<Integer> widths = widths(budget, table);
            for (int column = 0; column < widths.size(); column++) {
                if (column < widest.size()) {
                    widest.set(column, Math.max(widest.get(column), widths.get(column)));
                } else {
                    widest.add(widths.get(column));
                }
            }
        }
        return widest;
    }

    private static Page page(Budget budget, String name, String question, String file) {
        EntryTable table = FileColumns.table(budget, file, "");
        return Page.entries(name, question).left(widths(budget, table), table);
    }

    private static List<Integer> widths(Budget budget, EntryTable table) {
        List<Integer> widths = new ArrayList<>();
        table.columns().forEach(column -> widths.add(width(budget, column.line())));
        return widths;
    }

    private static int width(Budget budget, Line line) {
        Entry entry = budget.entry(line).orElseThrow();
        if (entry.meaning().equals(Meaning.LABEL) || FileColumns.isSource(entry.home())) {
            return NAME;
        }
        if (entry.meaning().equals(Meaning.KEY)) {
            return KEY;
        }
        boolean isLong = line.unit().display(budget.currency()).length() > WORD;
        return line.kind() == Kind.TEXT ? WORD : isLong ? KEY : NUMBER;
    }
}
