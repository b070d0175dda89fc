package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Column;
import org.benchmetre.page.Page;
import org.benchmetre.page.Product;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** The enterprise budget of a year as extension economists print it, with a column for figures of one's own. */
final class BudgetPage {

    private static final List<Integer> WIDTHS = List.of(33, 11, 7, 9, 9, 9, 8, 8, 8, 8, 10, 10, 10, 10);

    /** Columns of totals that are lines along the axis of totals, in the order of the table; the value is a line for each total. */
    private static final List<String> TOTALS =
            List.of("per_metre", "per_plant", "per_area", "per_kg", "cash", "low", "high", "own", "difference");

    /** Columns before the value: label, quantity, unit, price. */
    private static final int BEFORE_VALUE = 4;

    private final Budget budget;
    private final Axis rows;

    private BudgetPage(Budget budget) {
        this.budget = budget;
        rows = budget.line("budget_value").axes().get(0);
    }

    static Page of(Budget budget) {
        return new BudgetPage(budget).page();
    }

    private Page page() {
        return Page.answer("Budget", "What does a year take, and what is left?")
                .head(new Sentences(
                        List.of(sentence("budget_answer", Tone.LEAD), sentence("budget_yields", Tone.PLAIN))))
                .left(WIDTHS, table(), inFeetAndPounds())
                .foot(new Sentences(List.of(
                        sentence("budget_break_even", Tone.PLAIN),
                        sentence("budget_break_even_operating", Tone.PLAIN),
                        sentence("budget_citation", Tone.FAINT))));
    }

    /** Sums for each foot, square foot and pound. */
    private Table inFeetAndPounds() {
        Line label = budget.line("account_label");
        Axis accounts = label.axes().get(0);
        return Table.of(
                "Sums per foot, square foot and pound, " + budget.currency(),
                accounts,
                Column.of("", label),
                column("Per foot", "account_per_foot"),
                column("Per ft²", "account_per_square_foot"),
                column("Per lb", "account_per_pound"));
    }

    private Sentence sentence(String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    private Table table() {
        Column quantity = column("Quantity", "budget_quantity");
        Column price = column("Price", "budget_price");
        Column value = column("Value", "budget_value");
        return Table.of(
                        "Enterprise budget of a year, " + budget.currency(),
                        rows,
                        column("", "budget_label"),
                        quantity,
                        column("Unit", "budget_unit"),
                        price,
                        value,
                        column("Per metre", "budget_per_metre"),
                        column("Per plant", "budget_per_plant"),
                        column("Per m²", "budget_per_area"),
                        column("Per kg", "budget_per_kg"),
                        column("In cash", "budget_cash"),
                        column("Low yield", "budget_low"),
                        column("High yield", "budget_high"),
                        Column.typed("Your own", budget.line("budget_own")),
                        column("Difference", "budget_difference"))
                .rows(parts())
                .product(new Product(quantity, price, value));
    }

    private Column column(String heading, String id) {
        return Column.of(heading, budget.line(id));
    }

    /** Each part ends with the row before its total; a row in which nothing is charged is folded away. */
    private List<TableRow> parts() {
        int receipts = rows.indexOf("second_grade") + 1;
        int operating = rows.indexOf("operating_interest") + 1;
        int ownership = rows.indexOf("own_contingency") + 1;
        List<TableRow> all = new ArrayList<>(part("Receipts", 0, receipts));
        all.add(total("Total receipts", "receipts_total", "receipts"));
        all.addAll(part("Operating costs", receipts, operating));
        all.add(total("Total operating costs", "operating_cost_total", "operating"));
        all.add(total("Returns above operating costs", "returns_above_operating", "above_operating"));
        all.addAll(part("Ownership costs (capital recovery at a real rate)", operating, ownership));
        all.add(total("Total ownership costs", "ownership_cost_total", "ownership"));
        all.addAll(part("Overhead", ownership, rows.size()));
        all.add(total("Total overhead", "budget_overhead", "overhead"));
        all.add(named("costs", "total_cost", "costs"));
        all.add(notInCash());
        all.add(named("returns", "returns_above_total", "above_costs"));
        return all;
    }

    private static List<TableRow> part(String heading, int from, int to) {
        List<TableRow> part = new ArrayList<>();
        for (int row = from; row < to; row++) {
            TableRow plain = TableRow.at(row).ifAny();
            part.add(row == from ? plain.under(heading) : plain);
        }
        return part;
    }

    private TableRow total(String label, String value, String key) {
        return TableRow.single(label, cells(value, key)).total();
    }

    /** A total whose name depends on what the costs leave out: that of an account. */
    private TableRow named(String account, String value, String key) {
        Line label = budget.line("account_label");
        List<CellRef> cells = cells(value, key);
        cells.set(0, new CellRef(label, label.axes().get(0).indexOf(account)));
        return TableRow.single("", cells).total();
    }

    private List<CellRef> cells(String value, String key) {
        List<CellRef> cells = upToValue(value);
        for (String column : TOTALS) {
            Line line = budget.line("budget_total_" + column);
            cells.add(new CellRef(line, line.axes().get(0).indexOf(key)));
        }
        return cells;
    }

    private TableRow notInCash() {
        List<CellRef> cells = upToValue("cost_not_in_cash");
        TOTALS.forEach(column -> cells.add(null));
        return TableRow.single("Of that, not paid in cash", cells);
    }

    private List<CellRef> upToValue(String value) {
        List<CellRef> cells = new ArrayList<>();
        Stream.generate(() -> (CellRef) null).limit(BEFORE_VALUE).forEach(cells::add);
        cells.add(new CellRef(budget.line(value), 0));
        return cells;
    }
}
