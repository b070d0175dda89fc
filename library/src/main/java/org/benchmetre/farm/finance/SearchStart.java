package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.presentValue;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import java.util.Arrays;
import java.util.Locale;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * Where a spreadsheet program begins its search for the rate of return: the highest of some trial rates at which the cash is still
 * worth something. Where cash falls first and then only rises, its present value falls with the rate and is curved upwards, so that
 * Newton's steps from below come home; programs that give up after twenty steps need to begin this near.
 */
final class SearchStart {

    private static final Unit REAL = Unit.parse("real/a");
    private static final double LOWEST = -0.99;
    private static final double[] TRIALS = {
        LOWEST, -0.98, -0.97, -0.96, -0.95, -0.9, -0.85, -0.8, -0.75, -0.7, -0.65, -0.6, -0.55, -0.5, -0.45, -0.4,
        -0.35, -0.3, -0.25, -0.2, -0.15, -0.1, -0.05, 0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.5, 2,
        3
    };

    private final Axis axis = Axis.rows(
            "trial", "Trial", Arrays.stream(TRIALS).mapToObj(SearchStart::keyOf).toList(), 0);

    private final Line value;
    private final Line paying;

    SearchStart(BudgetBuilder b, Line net, Axis years) {
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, "Trial rates for the rate of return");
        b.nameRows(
                axis,
                s.textLine(
                        "trial_label",
                        "Trial",
                        new Rows(
                                axis,
                                Arrays.stream(TRIALS)
                                        .mapToObj(r -> text(percent(r, "at %.0f %%")))
                                        .toList())));
        Line rate = s.line(
                "trial_rate",
                "Trial rate",
                REAL,
                new Rows(
                        axis,
                        Arrays.stream(TRIALS).mapToObj(r -> number(r, REAL)).toList()),
                "steps of a search, a choice of this project");
        value = s.line(
                "trial_value",
                "Present value of all cash",
                MONEY,
                presentValue(rate, net, years),
                "flows over (1 + rate)^year");
        paying = s.line(
                "trial_paying",
                "The rate, where it still pays",
                REAL,
                when(value.isPositive(), rate, number(LOWEST, REAL)),
                "the lowest trial stands where it does not pay");
    }

    Formula highestThatPays() {
        return greatest(paying, axis);
    }

    /** Whether the cash is worth something at the lowest trial; where it is not, a program that searches from there does not come home. */
    Formula paysAtAll() {
        return new Element(value, axis, 0).isPositive();
    }

    private static String keyOf(double rate) {
        return percent(rate, "%.0f_percent").replace("-", "minus_");
    }

    private static String percent(double rate, String form) {
        return String.format(Locale.ROOT, form, rate * 100);
    }
}
