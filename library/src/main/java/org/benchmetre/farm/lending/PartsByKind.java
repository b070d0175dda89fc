package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.PartBlocks;
import org.benchmetre.farm.takeoff.TakeOff;

/** Parts as they are paid in whole packs, by kind of use: house, equipment, and what plants grow in; freight and sales tax apart. */
final class PartsByKind {

    /** The kind of each part. */
    final Line kind;
    /** What each part takes, freight and tax in it, money. */
    final Line paid;
    /** The parts. */
    final Materials parts;

    private final Line delivery;

    PartsByKind(BudgetBuilder b, Materials m, TakeOff t, PartBlocks blocks) {
        parts = m;
        paid = t.bought;
        ScheduleBuilder s = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        kind = s.textLine("material_fund_kind", "Kind of use", blocks.kindOfUse());
        Formula added = m.freight.plus(m.salesTax);
        delivery = s.line(
                "material_delivery_cost",
                "Freight and sales tax in it",
                MONEY,
                paid.times(added).over(one().plus(added)));
    }

    /** What parts of a kind take without freight and tax. */
    Formula of(FundKind wanted) {
        return paidFor(wanted).minus(sumWhere(delivery, kind, text(wanted.key()), parts.axis));
    }

    /** The same with freight and tax. */
    Formula paidFor(FundKind wanted) {
        return sumWhere(paid, kind, text(wanted.key()), parts.axis);
    }

    /** Freight and sales tax of all parts. */
    Formula delivery() {
        return sum(delivery, parts.axis);
    }

    /** What those parts take that are used up within a year. */
    Formula usedUp(Line isUsedUp) {
        return sumProduct(paid, isUsedUp, parts.axis);
    }
}
