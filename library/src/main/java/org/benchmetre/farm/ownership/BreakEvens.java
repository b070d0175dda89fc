package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.onlyWhen;

import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;

/**
 * Prices and yields at which receipts just cover a cost. What moves with yield moves.
 *
 * <pre>
 * p = ((C - M) / Y + k) / (1 - c)     y = (C - M - A) / (l d) g / B
 * p  average price, money/kg         C  cost, money/a                M  what of it moves with yield, money/a
 * Y  marketable fruit, kg/a          k  what a kg takes, money/kg    c  commission, share of price
 * y  fruit per plant and crop, g     l  what a further kg leaves, money/kg      d  share that dry plants leave
 * g  fruit per plant and crop as told, g     B  marketable fruit of it before dry plants, kg/a
 * A  what the fruit leaves above as many further kg, 0 where no channel is full, money/a
 * </pre>
 *
 * Plain algebra: receipts set equal to the cost. Where channels are full the yield holds as long as none gets room or fills up on the
 * way to it; the price holds always.
 *
 * @param harvest fruit and receipts
 * @param moves what moves with yield
 */
record BreakEvens(Harvest harvest, MovesWithYield moves) {

    static final Unit PER_KG = Unit.parse("money/kg");
    static final String PRICE_RULE =
            "(cost that stays / kg + what a kg takes) / (1 - commission); what moves with yield moves";
    static final String FRUIT_RULE =
            "cost that stays over what a further kg leaves; what moves with yield moves; with a channel full, true until one gets room or "
                    + "fills up";
    static final Unit GRAMS = Unit.parse("g/(plant crop)");

    /** The average price, money/kg, that covers a yearly cost. */
    Formula price(Line cost) {
        Formula stays = cost.minus(moves.total);
        return onlyWhen(
                harvest.yield.isPositive(),
                stays.over(harvest.yield).plus(moves.perKg).over(one().minus(harvest.commission)),
                "no yield");
    }

    /** The fruit per plant and crop, g, that covers a yearly cost. */
    Formula fruit(Line cost) {
        Formula needed = cost.minus(moves.total)
                .minus(harvest.aboveMargin)
                .over(moves.left)
                .over(harvest.kept)
                .over(harvest.beforeDry)
                .times(harvest.planned);
        return onlyWhen(
                and(moves.left.isPositive(), harvest.yield.isPositive(), harvest.kept.isPositive()),
                needed,
                "no yield, or a kg leaves nothing");
    }
}
