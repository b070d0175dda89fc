package org.benchmetre.farm.pages;

import static org.benchmetre.farm.pages.Placed.cell;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
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

/** What is borrowed, what it takes each year, whether what it pays lasts as long, and every payment of every loan. */
final class LoansPage {

    private static final List<Integer> LEFT = List.of(24, 11, 10, 11, 12, 12, 12);
    private static final List<Integer> RIGHT = List.of(6, 15, 9, 11, 9, 9, 10);

    /** Columns of the table of loans. */
    private static final int OF_LOANS = 10;

    /** Loans whose payments stand side by side. */
    private static final int BESIDE = 2;

    private LoansPage() {}

    static Page of(Budget budget) {
        Axis loans = budget.line("loan_label").axes().get(0);
        List<Block> left = new ArrayList<>();
        List<Block> right = new ArrayList<>();
        for (int from = 0; from < loans.filled(); from += BESIDE) {
            new Payments(budget, loans, from, Math.min(loans.filled(), from + BESIDE)).place(left, right);
        }
        return Page.payment("Loans", "What is borrowed, and when is it paid back?")
                .head(
                        new Sentences(List.of(
                                sentence(budget, "loans_told", Tone.LEAD),
                                sentence(budget, "loans_end_told", Tone.PLAIN))),
                        loans(budget, loans),
                        byYear(budget),
                        levers(budget),
                        bought(budget))
                .left(LEFT, left.toArray(Block[]::new))
                .right(RIGHT, right.toArray(Block[]::new));
    }

    private static Sentence sentence(Budget budget, String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    private static Levers levers(Budget budget) {
        return new Levers(
                "Change here",
                List.of(
                        FigureRow.of("Rounding of payments", budget.line("loan_rounding")),
                        FigureRow.of("Loans to security, at most", budget.line("loan_to_value_limit"))));
    }

    private static Table loans(Budget budget, Axis loans) {
        Line amount = budget.line("loan_amount_counted");
        List<TableRow> rows = new ArrayList<>(IntStream.range(0, loans.size())
                .mapToObj(row -> TableRow.at(row).ifAny())
                .toList());
        List<CellRef> total = new ArrayList<>(Collections.nCopies(OF_LOANS, null));
        total.set(1, cell(budget, "loans_total"));
        total.set(OF_LOANS - 1, cell(budget, "loans_to_value"));
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
                        Column.of("Loan to security", budget.line("loan_to_value")))
                .rows(rows)
                .nothingWithout(amount)
                .note(
                        "Payment: the first one that pays principal. What secures several loans stands behind each of them in full.");
    }

    private static Table byYear(Budget budget) {
        Line year = budget.line("year_words");
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

    private static Table bought(Budget budget) {
        Axis parts = budget.line("material_label").axes().get(0);
        Line money = budget.line("material_purchase_cost");
        return Table.of(
                        "What is bought, and whether it lasts as long as its loan",
                        parts,
                        Column.of("Part", budget.line("material_label")),
                        Column.of("Money", money),
                        Column.of("Lasts", budget.line("material_life_years")),
                        Column.of("Security", budget.line("material_security")),
                        Column.of("Quoted", budget.line("material_quoted")),
                        Column.of("Valid until", budget.line("material_valid_until")),
                        Column.of("Paid by", budget.line("material_paid_by")),
                        Column.of("Its term", budget.line("material_loan_term")),
                        Column.of("Supplier", budget.line("material_supplier")),
                        Column.of("Caution", budget.line("material_outlived")))
                .rows(IntStream.range(0, parts.filled())
                        .mapToObj(row -> TableRow.at(row).ifAny())
                        .toList())
                .largestFirst(money)
                .nothingWithout(money);
    }
}
