package org.benchmetre.farm.pages;

import static org.benchmetre.farm.pages.Placed.cell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Column;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;

/** How much the start takes, what for, who pays, and what secures it. */
final class FundsPage {

    private static final List<Integer> LEFT = List.of(34, 11, 9, 13);
    private static final List<Integer> RIGHT = List.of(21, 12, 12, 15, 9, 12);

    private FundsPage() {}

    static Page of(Budget budget) {
        return Page.answer("Funds", "How much, what for, and who pays?")
                .head(new Sentences(List.of(
                        sentence(budget, "funds_uses_told", Tone.LEAD),
                        sentence(budget, "funds_sources_told", Tone.PLAIN),
                        sentence(budget, "funds_security_told", Tone.PLAIN),
                        sentence(budget, "funds_limit_told", Tone.WARNING),
                        sentence(budget, "funds_cautions", Tone.WARNING))))
                .left(LEFT, uses(budget), security(budget))
                .right(RIGHT, sources(budget), levers(budget));
    }

    private static Sentence sentence(Budget budget, String id, Tone tone) {
        return new Sentence(budget.line(id), tone);
    }

    /** The largest first, so that what folds away stands below all that is beside it. */
    private static Table uses(Budget budget) {
        Line label = budget.line("start_use_label");
        Axis axis = label.axes().get(0);
        Line amount = budget.line("start_use_amount");
        List<TableRow> rows = new ArrayList<>(IntStream.range(0, axis.size())
                .mapToObj(row -> TableRow.at(row).ifAny())
                .toList());
        rows.add(TableRow.single("Uses", Arrays.asList(null, cell(budget, "uses_total"), null))
                .total());
        return Table.of(
                        "Uses of funds",
                        axis,
                        Column.of("What for", label),
                        Column.of("Money", amount),
                        Column.of("Share", budget.line("start_use_share")))
                .rows(rows)
                .largestFirst(amount);
    }

    /** Rows of loans that are entered; none folds away, since uses stand beside them. */
    private static Table sources(Budget budget) {
        Line label = budget.line("loan_label");
        Axis loans = label.axes().get(0);
        List<TableRow> rows = new ArrayList<>();
        rows.add(TableRow.single(
                "Owner", Arrays.asList(null, cell(budget, "owner_total"), cell(budget, "owner_share"), null)));
        rows.add(TableRow.single(
                "Grants", Arrays.asList(null, cell(budget, "grant_funds"), cell(budget, "grants_share"), null)));
        IntStream.range(0, loans.filled()).mapToObj(TableRow::at).forEach(rows::add);
        rows.add(TableRow.single("Sources", Arrays.asList(null, cell(budget, "sources_total"), null, null))
                .total());
        return Table.of(
                        "Sources of funds",
                        loans,
                        Column.of("Who pays", label),
                        Column.of("Money", budget.line("loan_amount_counted")),
                        Column.of("Share", budget.line("loan_share")),
                        Column.of("", budget.line("loan_balances_told")))
                .rows(rows);
    }

    private static Levers levers(Budget budget) {
        return new Levers(
                "Change here",
                List.of(
                        FigureRow.of("Owner's money", budget.line("owner_funds")),
                        FigureRow.of("Grants", budget.line("grant_funds")),
                        FigureRow.of("Cash kept at first", budget.line("working_capital")),
                        FigureRow.of("Months of building", budget.line("building_months"))));
    }

    private static Table security(Budget budget) {
        Line label = budget.line("fund_kind_label");
        Axis kinds = label.axes().get(0);
        List<TableRow> rows = new ArrayList<>(IntStream.range(0, kinds.size())
                .mapToObj(row -> TableRow.at(row).ifAny())
                .toList());
        rows.add(TableRow.single("Security", Arrays.asList(null, null, null, cell(budget, "security_total")))
                .total());
        Line paid = budget.line("kind_paid");
        return Table.of(
                        "What a lender would count as security",
                        kinds,
                        Column.of("Kind of use", label),
                        Column.of("Paid", paid),
                        Column.of("Share", budget.line("security_share_told")),
                        Column.of("Counted", budget.line("kind_security")))
                .rows(rows)
                .nothingWithout(paid);
    }
}
