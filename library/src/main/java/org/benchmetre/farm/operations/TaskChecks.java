package org.benchmetre.farm.operations;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.benchmetre.budget.Numbers;
import org.benchmetre.farm.input.Months;
import org.benchmetre.scenario.Bounds;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Row;

/** What one row of the task list must hold together, beyond what each cell must. */
record TaskChecks(Row row, Faults faults) {

    /** How far month shares may be from one: what is left when thirds are written with seven digits. */
    private static final double NEAR = 1e-6;

    void check() {
        checkHours();
        checkTimes();
        checkMonths();
    }

    private void checkHours() {
        boolean hours = !row.isBlank("hours");
        boolean perHour = !row.isBlank("per_hour");
        if (hours && perHour) {
            faults.add(row.place("per_hour"), quoted("per_hour"), "nothing here, as hours are given; one or the other");
        }
        if (!hours && !perHour && row.isBlank("input_cost")) {
            faults.add(row.place("hours"), "nothing", "hours here, or a rate in per_hour, or a price in input_cost");
        }
    }

    /** The fruit of a year is an amount of a year already: by crop or week it would count several times. */
    private void checkTimes() {
        boolean yearly = row.isBlank("times_unit") || row.text("times_unit").equalsIgnoreCase("a");
        if (row.text("driver").equalsIgnoreCase(TaskDrivers.YIELD) && !yearly) {
            faults.add(
                    row.place("times_unit"),
                    quoted("times_unit"),
                    "a, as " + TaskDrivers.YIELD + " is the fruit of a whole year");
        }
    }

    private void checkMonths() {
        List<String> filled =
                Months.KEYS.stream().filter(month -> !row.isBlank(month)).toList();
        boolean byMonths = row.text("pattern").equalsIgnoreCase(Tasks.MONTHS);
        if (filled.isEmpty()) {
            if (byMonths) {
                faults.add(row.place("jan"), "no share in any month", "shares in jan to dec that add to 1");
            }
            return;
        }
        if (!byMonths && !row.isBlank("pattern")) {
            faults.add(row.place("pattern"), quoted("pattern") + " beside shares of months", "months or nothing");
        }
        double sum = filled.stream().mapToDouble(this::share).sum();
        if (Math.abs(sum - 1) > NEAR) {
            String found = "shares in jan to dec that add to " + Numbers.plain(rounded(sum));
            faults.add(row.place(filled.get(0)), found, "shares that add to 1");
        }
    }

    /** A share that is no number has been reported already; NaN then, so that the sum is not complained of. */
    private double share(String month) {
        return row.number(month, Bounds.between(0, 1), "", new Faults());
    }

    /** The sum as people would write it, without the last digits of binary arithmetic. */
    private static double rounded(double sum) {
        return new BigDecimal(sum).round(new MathContext(9)).doubleValue();
    }

    private String quoted(String column) {
        return Fault.quoted(row.text(column));
    }
}
