package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.recovery;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;

/**
 * Rates and rules of ownership. Capital recovery at a real rate is the default, straight line plus average interest the alternative;
 * insurance and property tax are shares of average value.
 *
 * <pre>
 * capital recovery   A = (C - S q) r / (1 - q)  with q = (1 + r)^-n,  and (C - S) / n at a rate of 0
 * straight line      A = (C - S) / n + (C + S) / 2 r
 * charges            T = (C + S) / 2 (i + t)
 * A  recovered, money/a   C  cost, money     S  salvage, money; negative when disposal costs
 * r  real rate, real/a    n  life, a         i, t  insurance and property tax, 1/a     T  both, money/a
 * </pre>
 *
 * American Agricultural Economics Association, Commodity Costs and Returns Estimation Handbook, 2000.
 */
public final class OwnershipRates {

    private static final String RECOVERY = "capital_recovery";
    private static final String STRAIGHT = "straight_line";
    /** Real rates below this have not been seen for long. Common practice, no source. */
    static final double LEAST_RATE = -0.2;

    private static final String HANDBOOK = "Commodity Costs and Returns Estimation Handbook, 2000";

    /** Where {@link #ofCost} and {@link #ofSalvage} come from, as a note of a line. */
    static final String RECOVERED =
            "capital recovery, or (cost - salvage) / life + (cost + salvage) / 2 rate: " + HANDBOOK;

    /** Where {@link #charges} come from, as a note of a line. */
    static final String CHARGED = "shares of average value, half of cost and salvage: " + HANDBOOK;
    /** Where {@link #years} come from, as a note of a line. */
    static final String LIFE = "a life in crops is over the crops of a year, fractions kept; a blank one counts as 1 a";

    private static final Unit YEAR = Unit.parse("a");
    private static final Unit REAL = Unit.parse("real/a");
    private static final Unit PER_YEAR = Unit.parse("1/a");
    private static final Formula MONEY_OF_ONE = number(1, Unit.MONEY);
    private static final Formula NO_MONEY = none(Unit.MONEY);

    private final Line rate;
    private final Line method;
    private final Line insurance;
    private final Line tax;

    /**
     * Declares the entries.
     *
     * @param s where they are added
     * @param entries gives entries their values
     */
    public OwnershipRates(ScheduleBuilder s, FarmEntries entries) {
        method = entries.add(
                s.textEntry("recovery_method", "Ownership charged by").oneOf(List.of(RECOVERY, STRAIGHT)));
        rate = entries.add(
                s.entry("recovery_rate", "Real rate of interest", REAL).from(LEAST_RATE, 1));
        insurance = share(s, entries, "insurance_rate", "Insurance, share of average value");
        tax = share(s, entries, "property_tax_rate", "Property tax, share of average value");
    }

    private static Line share(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, PER_YEAR).from(0, 1));
    }

    /**
     * The real rate of interest.
     *
     * @return a rate a year
     */
    public Line rate() {
        return rate;
    }

    /**
     * What pays in a year for one of money over a life, by the rule chosen.
     *
     * @param life in years, above zero
     * @return a share a year
     */
    Formula ofCost(Line life) {
        Formula straight = one().over(life).plus(halfRate());
        return when(
                method.is(STRAIGHT),
                straight,
                recovery(rate, life, MONEY_OF_ONE, NO_MONEY).counting(PER_YEAR));
    }

    /**
     * What one of salvage at the end of a life takes off that in a year, by the rule chosen.
     *
     * @param life in years, above zero
     * @return a share a year
     */
    Formula ofSalvage(Line life) {
        Formula straight = one().over(life).minus(halfRate());
        Formula recovered = none(PER_YEAR)
                .minus(recovery(rate, life, NO_MONEY, MONEY_OF_ONE).counting(PER_YEAR));
        return when(method.is(STRAIGHT), straight, recovered);
    }

    private Formula halfRate() {
        return rate.counting(PER_YEAR).over(number(2, ONE));
    }

    /**
     * Insurance and property tax.
     *
     * @param cost money
     * @param salvage money of the same unit
     * @return money a year
     */
    public Formula charges(Formula cost, Formula salvage) {
        return average(cost, salvage).times(insurance.plus(tax));
    }

    /**
     * Insurance of what stands new.
     *
     * @param cost what it cost
     * @return a share of it, in its unit over a
     */
    public Formula insuranceOf(Formula cost) {
        return cost.times(insurance);
    }

    private static Formula average(Formula cost, Formula salvage) {
        return cost.plus(salvage).over(number(2, ONE));
    }

    /**
     * A life in years or in crops, as years.
     *
     * @param life the number entered; blank counts as one
     * @param unit the text {@code a} or {@code crop}
     * @param cropsPerYear crops in a year
     * @return years, fractions kept
     */
    public static Formula years(Line life, Line unit, Line cropsPerYear) {
        Formula inCrops = life.counting(Unit.parse("crop")).over(cropsPerYear);
        Formula filled = when(unit.is("crop"), inCrops, life.counting(YEAR));
        return when(life.isPositive(), filled, number(1, YEAR));
    }
}
