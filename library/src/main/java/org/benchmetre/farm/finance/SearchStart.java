package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.least;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.presentValue;
import static org.benchmetre.budget.Formulas.when;

import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;

/**
 * Where a spreadsheet program begins its search for the rate of return: the highest of some trial rates at which the cash is still
 * worth something. Where cash falls first and then only rises, its present value falls with the rate and is curved upwards, so that
 * Newton's steps from below come home; programs that give up after twenty steps need to begin this near.
 */
final class SearchStart {

    private final Axis trials;
    private final Line value;
    private final Line paying;

    /**
     * Declares the present value of a stream at each trial rate.
     *
     * @param shared the trial rates
     * @param stream whose rate of return is sought
     */
    SearchStart(RateAxes shared, CashStream stream) {
        trials = shared.trials;
        Unit money = stream.net().unit();
        Unit rate = stream.rate().unit();
        Formula trial = shared.trial.counting(rate);
        value = shared.atTrials.line(
                stream.id("trial_value"),
                stream.label("Present value of all cash"),
                money,
                presentValue(trial, stream.net(), stream.years()),
                "flows over (1 + rate)^year");
        paying = shared.atTrials.line(
                stream.id("trial_paying"),
                stream.label("The rate, where it still pays"),
                rate,
                when(value.isPositive(), trial, number(RateAxes.LOWEST, rate)),
                "the lowest trial stands where it does not pay");
    }

    Formula highestThatPays() {
        return greatest(paying, trials);
    }

    /** Whether the cash is worth something at the lowest trial; where it is not, a program that searches from there does not come home. */
    Formula paysAtAll() {
        return new Element(value, trials, 0).isPositive();
    }

    /** Whether the cash is worth something at one trial and less than nothing at another, so that a rate lies between. */
    Formula paysSomewhere() {
        Formula loses = none(value.unit()).minus(least(value, trials)).isPositive();
        return and(greatest(value, trials).isPositive(), loses);
    }
}
