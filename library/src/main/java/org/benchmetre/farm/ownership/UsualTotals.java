package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.profile.CropProfile;

/**
 * Tells where a total by area or by kilogram leaves what is usual for the crop: {@code ranges.csv} of its profile, each with its source.
 * A total without a range, or of money that the range does not hold for, is left alone, and so is one that is 0.
 */
public final class UsualTotals {

    private final CropProfile profile;
    private final ScheduleBuilder s;

    /**
     * Starts a table of totals.
     *
     * @param b where a schedule is added
     * @param profile what is usual, as it holds for the plan's money
     */
    public UsualTotals(BudgetBuilder b, CropProfile profile) {
        this.profile = profile;
        s = b.schedule(Sheets.BUDGET, "Totals against what is usual");
    }

    /**
     * Adds a total that is worked out for no other use.
     *
     * @param id identifier
     * @param label what a reader sees
     * @param formula its formula
     * @param advice what to look at
     * @return this
     */
    public UsualTotals watch(String id, String label, Formula formula, String advice) {
        return watch(s.line(id, label, formula.unit(), formula), advice);
    }

    /**
     * Watches over a total.
     *
     * @param total a single figure
     * @param advice what to look at
     * @return this
     */
    public UsualTotals watch(Line total, String advice) {
        Usual usual = profile.range(total.id(), total.unit());
        if (usual.equals(Usual.UNKNOWN)) {
            return this;
        }
        Line least = end(total, "least", usual.range().low(), usual.source());
        Line most = end(total, "most", usual.range().high(), usual.source());
        Line value = counted(total);
        Line far = s.line(
                total.id() + "_far",
                total.label() + " far from what is usual, 1 or 0",
                ONE,
                when(or(and(value.isPositive(), least.exceeds(value)), value.exceeds(most)), one(), none(ONE)),
                "0 is left alone");
        s.warning(
                total.id() + "_warning",
                total.label(),
                far.isPositive(),
                "Far from what is usual, see " + least.id() + " and " + most.id() + ". " + advice);
        return this;
    }

    private Line counted(Line total) {
        return total.kind() == Kind.OPTIONAL
                ? s.line(
                        total.id() + "_counted",
                        total.label() + ", 0 where there is none",
                        total.unit(),
                        total.numberOr(none(total.unit())))
                : total;
    }

    private Line end(Line total, String end, double value, String source) {
        return s.line(
                total.id() + "_" + end,
                total.label() + ", usual " + end,
                total.unit(),
                number(value, total.unit()),
                source);
    }
}
