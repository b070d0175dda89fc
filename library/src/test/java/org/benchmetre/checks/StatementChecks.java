package org.benchmetre.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Cases;
import org.benchmetre.farm.Sample;

/**
 * Published statements and ratios: the budget of a house is cut at lines of its first year, and what a source prints stands there in
 * place of what the house has. What follows from them is the work of the formulas alone.
 */
final class StatementChecks {

    /** The lines that rows read, in the first year. */
    static final Set<String> NAMES = Set.of(
            "income_before_tax", "repayment_capacity", "repayment_margin", "term_debt_coverage", "current_ratio");

    private static final String FIRST_YEAR = "1";

    private StatementChecks() {}

    /**
     * Reads a line.
     *
     * @param wanted the line
     * @param inputs lines of the first year and their numbers, and entries with their unit
     * @param house any
     * @return its number in the first year
     */
    static double found(String wanted, String inputs, Budget house) {
        List<String> all = Arrays.asList(inputs.split("; "));
        List<String> entries = all.stream().filter(StatementChecks::isEntry).toList();
        Budget set = Sample.with(house, entries.toArray(String[]::new));
        List<CellRef> cut = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        for (String input : all) {
            if (!isEntry(input)) {
                String[] sides = input.split("=");
                cut.add(firstYear(set.line(sides[0])));
                numbers.add(Double.valueOf(sides[1]));
            }
        }
        Line line = set.line(wanted);
        double[] given = numbers.stream().mapToDouble(Double::doubleValue).toArray();
        return Cases.of(set, cut, List.of(line)).start().one(given, List.of(firstYear(line)))[0];
    }

    private static boolean isEntry(String input) {
        return input.contains(" ");
    }

    private static CellRef firstYear(Line line) {
        return new CellRef(line, line.axes().get(0).indexOf(FIRST_YEAR));
    }
}
