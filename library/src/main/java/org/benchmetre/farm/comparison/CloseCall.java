package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Whether the system that comes first and the next one are too close to call: the saving is no more than a share of what differs
 * between systems: line, water, nutrient solution, maintenance, lost fruit.
 *
 * <pre>
 * close where  C(next) - C(first) &lt;= max(s D, h)
 * C  yearly cost per metre     D  what of it differs between systems, of the first     s  share, an entry     h  half of the smallest coin
 * </pre>
 *
 * A choice of this project, no source.
 */
final class CloseCall {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");

    /** A truth; false where there is no next one. */
    final Line isClose;
    /** What the first saves against the next, money/(m a); 0 where there is none. */
    final Line saving;

    CloseCall(BudgetBuilder b, Ranking rank, Line differing, Line share) {
        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.VERDICT);
        Line differs = s.line(
                "first_differing_cost",
                "What differs between systems, of the first",
                PER_METRE,
                rank.ofFirst(differing));
        saving = s.line(
                "next_saving",
                "What the first saves",
                PER_METRE,
                when(rank.hasNext(), rank.nextCost.minus(rank.bestCost), none(PER_METRE)));
        double halfCoin = 0.5 * Math.pow(10, -MinorUnit.decimals(b.structure().currency()));
        Line limit = s.line(
                "close_call_limit",
                "Up to this it is too close to call",
                PER_METRE,
                greater(share.times(differs), number(halfCoin, PER_METRE)),
                "a share of what differs, at least half the smallest coin: a choice of this project, no source");
        isClose = s.line(
                "close_call",
                "Too close to call",
                ONE,
                and(rank.hasNext(), not(Sizes.isMore(saving, limit))),
                Sizes.SOURCE);
    }
}
