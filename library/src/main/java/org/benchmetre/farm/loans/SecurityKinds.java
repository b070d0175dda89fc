package org.benchmetre.farm.loans;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Formulas;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Kinds of use of money, and the share of what was paid that a lender would count as security. Cash counts in full, all other uses not
 * at all.
 */
public final class SecurityKinds {

    /** A kind with a share of its own, and what a reader calls it. */
    private record Kept(String key, String label) {}

    private static final List<Kept> ENTERED = List.of(
            new Kept("land", "Land and site"),
            new Kept("house", "House"),
            new Kept("equipment", "Equipment"),
            new Kept("growing", "Trough and substrate"),
            new Kept("plants", "Plants"));

    private static final List<Kept> FIXED = List.of(new Kept("cash", "Cash"), new Kept("other", "Other"));

    /** The keys, in reading order: land, house, equipment, growing, plants, cash, other. */
    public static final List<String> KEYS = List.of("land", "house", "equipment", "growing", "plants", "cash", "other");

    /** One row for each kind. */
    public final Axis axis = Axis.rows("fund_kind", "Kind of use", KEYS, 0);
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
        for (Kept kind : ENTERED) {
            labels.add(text(kind.label()));
            shares.add(entries.add(e.entry("security_share_" + kind.key(), kind.label() + ", share counted", ONE)
                    .from(0, 1)));
        }
        FIXED.forEach(kind -> labels.add(text(kind.label())));
        shares.add(none(ONE));
        shares.add(none(ONE));
        ScheduleBuilder s = b.schedule(Sheets.LOANS, "Kinds of use");
        label = s.textLine("fund_kind_label", "Kind of use", new Rows(axis, labels));
        b.nameRows(axis, label);
        key = s.textLine(
                "fund_kind",
                "Key",
                new Rows(axis, KEYS.stream().map(Formulas::text).toList()));
        share = s.line(
                "security_share",
                "Share counted",
                ONE,
                new Rows(axis, shares),
                "as entered; cash, which is spent, and other uses not at all: a choice of this project, no source");
    }
}
