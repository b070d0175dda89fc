package org.benchmetre.comparison;

import java.util.List;
import java.util.stream.Collectors;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Line;

/**
 * The budget of a comparison, put together section by section in reading order.
 *
 * @param budget entries taken over from the scenarios, and what follows from them
 * @param results results side by side
 * @param factors what receipts are the product of, in the order in which they are changed
 * @param checks texts by scenario, empty where sums agree
 */
record ComparisonBudget(Budget budget, List<Beside> results, List<Beside> factors, List<Line> checks) {

    static ComparisonBudget of(List<Compared> compared, Measure per) {
        TakenFigures taken = new TakenFigures(compared);
        String names = compared.stream().map(Compared::name).collect(Collectors.joining(", "));
        BudgetBuilder b =
                new BudgetBuilder("Comparison of " + names, compared.get(0).currency());
        b.sheetsInOrder(ComparisonSheets.IN_ORDER);
        compared.stream()
                .flatMap(each -> each.figures().budget().cautions().stream())
                .distinct()
                .forEach(caution -> b.caution(caution.topic(), caution.text()));
        ComparisonTables tables = ComparisonTables.open(b, taken, per);
        ScenarioColumns scenarios = new ScenarioColumns(b, taken, per);
        MarginRows rows = new MarginRows(b, tables.rows(), scenarios, taken, per);
        SectionTotals sections = new SectionTotals(b, tables.sections(), scenarios, rows, per);
        WhatIsLeft left = new WhatIsLeft(b, tables.left(), scenarios, rows, taken, per);
        ReceiptsFactors receipts = new ReceiptsFactors(b, scenarios, rows, per);
        ReceiptsByFactor byFactor = new ReceiptsByFactor(b, tables.receipts(), scenarios, receipts.all, per);
        new Answers(scenarios, left, per, compared.get(0).currency()).declare(b, tables, rows, byFactor);
        ResultsBeside results = new ResultsBeside(b, scenarios, taken, receipts);
        SumChecks checks = new SumChecks(b, scenarios, rows, per);
        int sales = BudgetSection.RECEIPTS.ordinal();
        List<Line> texts = List.of(
                checks.agree("left_gap", "receipts and costs", left.sum, left.value),
                checks.agree(
                        "receipts_gap",
                        "the causes of more receipts",
                        byFactor.sum,
                        new Element(sections.difference, sections.axis, sales)));
        return new ComparisonBudget(b.build(), results.all, receipts.all, texts);
    }
}
