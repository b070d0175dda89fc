package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.rule.NotBefore;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;

/**
 * What funds are used for that is neither part nor plant nor installing: one row for each use, such as site, permits, connections. The
 * amount is money at today's prices; the month of its payment is 0 at the start and less before it.
 */
public final class Uses {

    /** The file. */
    public static final String FILE = FarmTable.FUNDS.file();

    /** What a use belongs to; {@code other} unless said. */
    static final List<String> KINDS = FundKind.KEYS.stream()
            .filter(key -> !key.equals(FundKind.CASH.key()))
            .toList();

    private static final Unit MONTH = Unit.parse("mo");
    private static final Bounds BEFORE_THE_START = new Bounds(-120, true, 0, true);

    /** Nothing is what a blank cell counts as, so that a share of 0 would be taken for one that is left out. */
    private static final Bounds COUNTED = new Bounds(0, false, 1, false);

    /** One row for each use. */
    public final Axis axis;
    /** Keys; blank in a spare row. */
    public final Line key;
    /** Labels. */
    public final Line label;
    /** What it belongs to, one of land, house, equipment, growing, plants and other. */
    public final Line kind;
    /** What it takes, money; not negative. */
    public final Line amount;
    /** Month of its payment, mo; whole, 0 at the start, less before it. */
    public final Line month;
    /** Who supplies it. */
    public final Line supplier;
    /** Day of the quotation, a date as text; blank when there is none. */
    public final Line quoted;
    /** Last day on which the quotation holds, a date as text; blank when nobody said. */
    public final Line validUntil;
    /** Share of the amount that a lender would count as security, above 0 and up to 1; 0 where its kind says it. */
    public final Line security;
    /** Where its figures come from. */
    public final Line source;

    /**
     * Declares the columns.
     *
     * @param b where the schedule is added; knows which uses there are
     */
    public Uses(BudgetBuilder b) {
        ScheduleBuilder s = b.schedule(Sheets.LOANS, "Uses of funds beside parts, plants and installing");
        Columns c = Columns.of(b, FarmTable.FUNDS, s);
        axis = c.axis();
        label = c.names("use_label", "Use");
        key = c.keys("use_key", "Key");
        kind = c.choice("kind", "use_kind", "Kind", KINDS, FundKind.OTHER.key());
        amount = c.numbers("amount", "use_amount", "Amount", MONEY, Columns.PRICE_OF_A_PART, Double.NaN);
        month = c.numbers("month", "use_month", "Month paid", MONTH, BEFORE_THE_START, 0);
        supplier = c.words("supplier", "use_supplier", "Supplier");
        quoted = c.dates("quoted", "use_quoted", "Quoted");
        validUntil = c.dates("valid_until", "use_valid_until", "Valid until");
        security = c.numbers("security", "use_security", "Security, share", ONE, COUNTED, 0);
        source = c.words("source", "use_source", "Source");
        b.rule(new NotBefore(quoted, validUntil));
    }

    /**
     * The share of a use that a lender would count: its own, else that of its kind.
     *
     * @param kinds keys of the kinds, a text along a table that has each of {@link #KINDS}
     * @param shares the share of each kind, along the same table
     * @return a share along the uses, 0 in a spare row
     */
    public Formula countedShare(Line kinds, Line shares) {
        Formula any = when(security.isPositive(), security, lookup(shares, kinds, kind));
        return when(key.isFilled(), any, none(ONE));
    }

    /**
     * What uses of a kind take.
     *
     * @param wanted a kind
     * @return money
     */
    public Formula ofKind(FundKind wanted) {
        return sumWhere(amount, kind, text(wanted.key()), axis);
    }
}
