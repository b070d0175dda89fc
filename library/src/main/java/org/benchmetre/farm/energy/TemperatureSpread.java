package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.exponential;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.KELVIN;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Cold days that the mean of a month hides. Days differ from their month; those colder than the mean take more heat than those warmer
 * save, once some days of the month need none.
 *
 * <pre>
 * K = x / (1 - exp(-k x))     k = 2.5 / s
 * K  mean kelvins that heat makes up in a month, K     x  base temperature less mean of the month, K; may be negative
 * k  steepness, 1/K                                    s  standard deviation of daily temperatures within the month, K
 * </pre>
 *
 * Hitchin, <i>Estimating monthly degree-days</i>, Building Services Engineering Research and Technology 4(4), 1983, and CIBSE TM41,
 * 2006; both from memory. A test holds it against days that are normally distributed, as Thom took them (Monthly Weather Review, 1952;
 * Kadioglu and Sen, Journal of Applied Meteorology 38:837, 1999): within a hundredth of the spread. Written as the greater of x and
 * nothing, and what is hidden beyond, which is the same for x and -x, so that no exponential grows without bound and a spread of
 * nothing gives the greater alone. Where k x is thirty or more what is hidden, less than a million-millionth of x, is nothing.
 */
final class TemperatureSpread {

    /** Where the rule comes from, as a note of a line. */
    static final String SOURCE =
            "x/(1-exp(-k x)) with k = 2.5/spread: Hitchin, Building Services Engineering Research and Technology 4(4), "
                    + "1983; CIBSE TM41, 2006; from memory, and within a hundredth of the spread of days normally distributed";

    private static final Unit PER_KELVIN = Unit.parse("1/K");

    private final Line steepness;
    private final Line atTheMean;

    TemperatureSpread(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Days that are colder than their month");
        Line spread = entries.add(s.entry(
                        "temperature_spread",
                        "Spread of daily temperatures within a month (standard deviation)",
                        KELVIN)
                .from(0, 20));
        Formula hitchin = number(2.5, ONE);
        steepness = s.line(
                "spread_steepness",
                "Steepness of the rule, 0 for no spread",
                PER_KELVIN,
                when(spread.isPositive(), hitchin.over(spread), none(PER_KELVIN)),
                SOURCE);
        atTheMean = s.line(
                "spread_at_the_mean",
                "Made up where the mean of a month is the base temperature",
                KELVIN,
                spread.over(hitchin),
                SOURCE);
    }

    /**
     * Mean kelvins that heat makes up.
     *
     * @param below how far the mean of a month lies below the base temperature, K; negative where it lies above
     * @return K, never below zero
     */
    Formula kelvins(Line below) {
        return greater(below, none(KELVIN))
                .plus(hidden(greater(below, none(KELVIN).minus(below))));
    }

    /** What the mean hides, by how far it lies from the base temperature to either side. */
    private Formula hidden(Formula apart) {
        Formula steps = steepness.times(apart);
        Formula rare = exponential(none(ONE).minus(steps));
        Formula isSeen = number(30, ONE).minus(steps).isPositive();
        return when(
                apart.exceeds(none(KELVIN)),
                when(and(steepness.isPositive(), isSeen), apart.times(rare).over(one().minus(rare)), none(KELVIN)),
                atTheMean);
    }
}
