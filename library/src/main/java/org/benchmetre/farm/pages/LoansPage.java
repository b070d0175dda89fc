package org.benchmetre.farm.pages;

import static org.benchmetre.farm.pages.Placed.cell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Block;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** What is borrowed, what it takes each year, and every payment of every loan, which run down the page. */
final class LoansPage {

    private static final List<Integer> WIDTHS = List.of(24, 11, 11, 11, 11, 11, 11, 11, 11, 11);

    /** Loans whose payments stand side by side. */
    private static final int BESIDE = 3;

    private LoansPage() {}

    static Page of(Budget budget) {
        Axis loans = budget.line("loan_label").axes().get(0);
        Stream<Table> payments = IntStream.iterate(0, from -> from < loans.filled(), from -> from + BESIDE)
                .mapToObj(from -> payments(budget, loans, from, Math.min(loans.filled(), from + BESIDE)));
        return Page.payment("Loans", "What is borrowed, and when is it paid back?")
                .head(new Sentences(List.of(
                        sentence(budget, "loans_told", Tone.LEAD), sentence(budget, "loans_end_told", Tone.PLAIN))))
                .left(
                        WIDTHS,
                        Stream.concat(Stream.of(loans(budget, loans), byYear(budget), levers(budget)), payments)
                                .toArray(Block[]::new));
    }

    private static Sentence sentence(Budget budget, String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    private static Levers levers(Budget budget) {
        return new Levers(
                "Change here",
                List.of(
                        FigureRow.of("Rounding of payments", budget.line("loan_rounding")),
                        FigureRow.of("Loan to value, at most", budget.line("loan_to_value_limit"))));
    }

    private static Table loans(Budget budget, Axis loans) {
        Line amount = budget.line("loan_amount_counted");
        List<TableRow> rows = new ArrayList<>(IntStream.range(0, loans.size())
                .mapToObj(row -> TableRow.at(row).ifAny())
                .toList());
        List<CellRef> total = new ArrayList<>(Collections.nCopies(WIDTHS.size(), null));
        total.set(1, cell(budget, "loans_total"));
        total.set(WIDTHS.size() - 1, cell(budget, "loans_to_value"));
        rows.add(TableRow.single("All loans", total).total().ifAny());
        return Table.of(
                        "Loans",
                        loans,
                        Column.of("Loan", budget.line("loan_label")),
                        Column.of("Amount", amount),
                        Column.of("Rate", budget.line("loan_rate_told")),
                        Column.of("Term", budget.line("loan_term")),
                        Column.of("Payments", budget.line("loan_payments_each_year")),
                        Column.of("Payment", budget.line("loan_full_payment")),
                        Column.of("Last in year", budget.line("loan_last_year")),
                        Column.of("Fee", budget.line("loan_fee_told")),
                        Column.of("Security", budget.line("loan_security_value")),
                        Column.of("Loan to value", budget.line("loan_to_value")))
                .rows(rows)
                .nothingWithout(amount)
                .note(
                        "Payment: the first one that pays principal. What secures several loans stands behind each of them in full.");
    }

    private static Table byYear(Budget budget) {
        Line year = budget.line("year_number");
        Axis years = year.axes().get(0);
        Line paid = budget.line("repayment_due");
        return Table.of(
                        "All loans by year of the plan",
                        years,
                        Column.of("Year", year),
                        Column.of("Interest", budget.line("debt_interest")),
                        Column.of("Principal", budget.line("debt_principal")),
                        Column.of("Paid", paid),
                        Column.of("Owed", budget.line("debt_owed")))
                .rows(IntStream.range(1, years.size())
                        .mapToObj(row -> TableRow.at(row).ifAny())
                        .toList())
                .nothingWithout(paid);
    }

    /** Payment by payment; past the last one of a loan it has none, and past the last of all a row is folded away. */
    private static Table payments(Budget budget, Axis loans, int from, int to) {
        Line number = budget.line("loan_payment_number");
        Axis payments = number.axes().get(0);
        Line label = budget.line("loan_label");
        List<Column> columns = new ArrayList<>(List.of(Column.of("Payment", number)));
        List<CellRef> names = new ArrayList<>();
        names.add(null);
        Line interest = budget.line("loan_interest");
        Line principal = budget.line("loan_principal");
        Line owed = budget.line("loan_balance");
        for (int loan = from; loan < to; loan++) {
            columns.add(Column.of("Interest", interest, loans, loan));
            columns.add(Column.of("Principal", principal, loans, loan));
            columns.add(Column.of("Owed", owed, loans, loan));
            names.addAll(Arrays.asList(new CellRef(label, loan), null, null));
        }
        List<TableRow> rows = new ArrayList<>(List.of(TableRow.single("", names)));
        IntStream.range(0, payments.size())
                .mapToObj(row -> TableRow.at(row).ifAny())
                .forEach(rows::add);
        return Table.of(
                        from == 0 ? "Each payment" : "Each payment, further loans",
                        payments,
                        columns.toArray(Column[]::new))
                .rows(rows)
                .nothingWithout(interest, principal, owed);
    }
}
