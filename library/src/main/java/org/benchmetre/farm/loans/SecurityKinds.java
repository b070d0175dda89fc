package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FundKind;
import org.benchmetre.farm.input.Sheets;

/**
 * Kinds of use of money, and the share of what was paid that a lender would count as security. Cash counts in full, all other uses not
 * at all.
 */
public final class SecurityKinds {

    /** Kinds of which a lender counts a share; cash is spent, and other uses leave nothing to hold. */
    private static final Set<FundKind> COUNTED = EnumSet.complementOf(EnumSet.of(FundKind.CASH, FundKind.OTHER));

    /** One row for each kind. */
    public final Axis axis = Axis.rows("fund_kind", "Kind of use", FundKind.KEYS, 0);
    /** The key of a kind, as files hold it. */
    public final Line key;
    /** What a reader calls it. */
    public final Line label;
    /** Share of what was paid that a lender counts, 0 to 1. */
    public final Line share;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     */
    public SecurityKinds(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder e = b.schedule(Sheets.LOANS, "Security: share of what was paid that a lender counts");
        List<Formula> shares = new ArrayList<>();
        List<Formula> labels = new ArrayList<>();
        for (FundKind kind : FundKind.values()) {
            labels.add(text(kind.label()));
            shares.add(COUNTED.contains(kind) ? counted(e, entries, kind) : none(ONE));
        }
        ScheduleBuilder s = b.schedule(Sheets.LOANS, "Kinds of use");
        label = s.textLine("fund_kind_label", "Kind of use", new Rows(axis, labels));
        b.nameRows(axis, label);
        key = s.textLine(
                "fund_kind",
                "Key",
                new Rows(axis, FundKind.KEYS.stream().map(Formulas::text).toList()));
        share = s.line(
                "security_share",
                "Share counted",
                ONE,
                new Rows(axis, shares),
                "as entered; cash, which is spent, and other uses not at all: a choice of this project, no source");
    }

    private static Line counted(ScheduleBuilder e, FarmEntries entries, FundKind kind) {
        return entries.add(e.entry("security_share_" + kind.key(), kind.label() + ", share counted", ONE)
                .from(0, 1));
    }
}
