package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.feed.FeedUnits.MEQ_PER_LITRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Ion balance: charges of cations against charges of anions. Salts are neutral, so a recipe out of balance cannot be met by any,
 * and a feed out of balance shows that the analysis of the raw water is wrong or left something out.
 *
 * <pre>
 * |C - A| is at most l max(C, A)
 * C, A  charge of all cations, of all anions, meq/L     l  difference allowed, a share of the larger
 * </pre>
 *
 * The limit: common practice, no source.
 */
final class IonBalance {

    /** Charge of all cations supplied, meq/L. */
    final Line cations;

    private final ScheduleBuilder s;
    private final IonTable ions;

    IonBalance(BudgetBuilder b, FarmEntries entries, IonTable ions) {
        this.ions = ions;
        s = b.schedule(Sheets.OPERATIONS, "Ion balance");
        Line limit = entries.add(s.entry("ion_balance_limit", "Difference allowed, share of the larger sum", ONE)
                .from(0, 1));
        Line asked = sum("recipe_cations", "Cations asked for", ions.targetCharge, IonTable.CATION);
        Line against = sum("recipe_anions", "Anions asked for", ions.targetCharge, IonTable.ANION);
        compare("recipe_charge_difference", "Cations less anions, asked for", asked, against);
        Line mayDiffer = allowed("recipe_charge_allowed", "Difference allowed, asked for", limit, asked, against);
        s.warning(
                "recipe_balance_warning",
                "Ion balance of the recipe",
                isBeyond(mayDiffer, asked, against),
                "cations and anions of the recipe differ by more than is allowed, so no salts can meet it. "
                        + "Raise the ions of the smaller sum or lower those of the larger.");
        cations = sum("feed_cations", "Cations supplied", ions.suppliedCharge, IonTable.CATION);
        Line anions = sum("feed_anions", "Anions supplied", ions.suppliedCharge, IonTable.ANION);
        compare("feed_charge_difference", "Cations less anions, supplied", cations, anions);
        Line allowed = allowed("feed_charge_allowed", "Difference allowed, supplied", limit, cations, anions);
        s.warning(
                "feed_balance_warning",
                "Ion balance of the raw water",
                isBeyond(allowed, cations, anions),
                "cations and anions of the raw water differ by more than is allowed. Check its analysis, "
                        + "the units it was given in, and whether an ion was left out.");
    }

    private Line sum(String id, String label, Line charge, String kind) {
        return s.line(id, label, MEQ_PER_LITRE, sumWhere(charge, ions.kind, text(kind), ions.axis));
    }

    private void compare(String id, String label, Line cations, Line anions) {
        s.line(id, label, MEQ_PER_LITRE, cations.minus(anions));
    }

    private Line allowed(String id, String label, Line limit, Line cations, Line anions) {
        Formula share = limit.times(greater(cations, anions));
        return s.line(id, label, MEQ_PER_LITRE, share, "a share of the larger sum: common practice, no source");
    }

    private static Formula isBeyond(Line allowed, Line cations, Line anions) {
        return or(cations.exceeds(anions.plus(allowed)), anions.exceeds(cations.plus(allowed)));
    }
}
