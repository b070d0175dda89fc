package org.benchmetre.farm.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Block;
import org.benchmetre.page.Column;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;

/**
 * Payment by payment of a few loans, in two panels: the first payments at the left, the next ones beside them, and so on below. Past the
 * last one a loan has none.
 */
final class Payments {

    /** The most payments below one another, of which one sheet of paper holds two lots side by side. */
    private static final int BELOW = 42;

    private final Budget budget;
    private final Axis loans;
    private final int from;
    private final int to;
    private final Axis payments;

    /** Payments of the loans from a row of the table to before another one. */
    Payments(Budget budget, Axis loans, int from, int to) {
        this.budget = budget;
        this.loans = loans;
        this.from = from;
        this.to = to;
        payments = budget.line("loan_payment_number").axes().get(0);
    }

    /** A row folds away where none of the loans has that payment; the later one beside it has none then either. */
    void place(List<Block> left, List<Block> right) {
        int half = Math.min(BELOW, (payments.size() + 1) / 2);
        for (int first = 0; first < payments.size(); first += 2 * half) {
            int second = Math.min(payments.size(), first + half);
            int end = Math.min(payments.size(), second + half);
            left.add(table(
                    title(first),
                    IntStream.range(first, second)
                            .mapToObj(row -> TableRow.at(row).ifAny())
                            .toList()));
            if (second < end) {
                right.add(table(
                        "Further payments",
                        IntStream.range(second, end).mapToObj(TableRow::at).toList()));
            }
        }
    }

    private String title(int first) {
        if (first > 0) {
            return "Further payments";
        }
        return from == 0 ? "Each payment" : "Each payment, further loans";
    }

    private Table table(String title, List<TableRow> payment) {
        Line interest = budget.line("loan_interest");
        Line principal = budget.line("loan_principal");
        Line owed = budget.line("loan_balance");
        List<Column> columns = new ArrayList<>(List.of(Column.of("No.", budget.line("loan_payment_number"))));
        List<CellRef> names = new ArrayList<>();
        names.add(null);
        for (int loan = from; loan < to; loan++) {
            columns.add(Column.of("Interest", interest, loans, loan));
            columns.add(Column.of("Principal", principal, loans, loan));
            columns.add(Column.of("Owed", owed, loans, loan));
            names.addAll(Arrays.asList(new CellRef(budget.line("loan_label"), loan), null, null));
        }
        List<TableRow> rows = new ArrayList<>(List.of(TableRow.single("", names)));
        rows.addAll(payment);
        return Table.of(title, payments, columns.toArray(Column[]::new))
                .rows(rows)
                .nothingWithout(interest, principal, owed);
    }
}
