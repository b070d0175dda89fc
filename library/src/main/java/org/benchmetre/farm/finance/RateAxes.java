package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * The tables that every stream of cash shares when its rates of return are sought: trial rates from -0.99 to 3
 * (shares a year), and the rates that were found.
 */
public final class RateAxes {

    /** Least rate that is looked for, a share a year. */
    static final double LOWEST = -0.99;
    /** Greatest rate that is looked for, a share a year. */
    static final double HIGHEST = 3;
    /** The limits, in words. */
    static final String LIMITS = "-99 % and 300 %";

    private static final double[] TRIALS = {
        LOWEST, -0.98, -0.97, -0.96, -0.95, -0.9, -0.85, -0.8, -0.75, -0.7, -0.65, -0.6, -0.55, -0.5, -0.45, -0.4,
        -0.35, -0.3, -0.25, -0.2, -0.15, -0.1, -0.05, 0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.5, 2,
        HIGHEST
    };

    /** One row for each trial rate, the lowest first. */
    final Axis trials = Axis.rows(
            "trial", "Trial", Arrays.stream(TRIALS).mapToObj(RateAxes::keyOf).toList(), 0);

    /** One row for each rate that may be found, the lowest first. */
    final Axis roots = Axis.rows("rate_root", "Rate found", List.of("first", "second", "third"), 0);

    /** Where present values at the trial rates stand. */
    final ScheduleBuilder atTrials;
    /** Where the rates that were found stand. */
    final ScheduleBuilder found;
    /** The trial rates, shares a year without the tag of a money. */
    final Line trial;

    /**
     * Declares the trial rates, once for a budget.
     *
     * @param b where schedules are added
     */
    public RateAxes(BudgetBuilder b) {
        atTrials = b.schedule(Sheets.CASH_FLOW, "Trial rates for the rate of return");
        b.nameRows(
                trials,
                atTrials.textLine(
                        "trial_label",
                        "Trial",
                        rows(trials, Arrays.stream(TRIALS).mapToObj(r -> text(percent(r, "at %.0f %%"))))));
        Unit aYear = Unit.parse("1/a");
        trial = atTrials.line(
                "trial_rate",
                "Trial rate",
                aYear,
                rows(trials, Arrays.stream(TRIALS).mapToObj(r -> number(r, aYear))),
                "steps of a search, a choice of this project");
        found = b.schedule(Sheets.CASH_FLOW, "All rates at which cash is worth nothing");
        b.nameRows(
                roots,
                found.textLine(
                        "rate_root_label",
                        "Rate found",
                        rows(roots, Stream.of(text("Lowest"), text("Second"), text("Third")))));
    }

    private static Rows rows(Axis axis, Stream<Formula> formulas) {
        return new Rows(axis, formulas.toList());
    }

    private static String keyOf(double rate) {
        return percent(rate, "%.0f_percent").replace("-", "minus_");
    }

    private static String percent(double rate, String form) {
        return String.format(Locale.ROOT, form, rate * 100);
    }
}
