package org.benchmetre.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** Checks that parts sum to their wholes in a computed budget. */
public final class Agreement {

    /** Sums of a few dozen amounts differ by rounding alone; this share of the larger side is far above that. */
    private static final double SHARE = 1e-9;

    private Agreement() {}

    /**
     * Sums that should agree and do not: a fault of the arithmetic, not of the input.
     *
     * @param figures a farm, computed
     * @return whole sentences; empty when all agree
     */
    public static List<String> disagreements(Figures figures) {
        List<String> found = new ArrayList<>();
        compare(
                found,
                "the groups of first cost per metre",
                sum(figures, "group_first_cost_per_metre"),
                "first_cost_per_metre",
                figures.number("first_cost_per_metre"));
        compare(
                found,
                "the groups of first cost",
                sum(figures, "group_first_cost"),
                "first_cost_total",
                figures.number("first_cost_total"));
        compare(
                found,
                "the groups of yearly cost",
                sum(figures, "group_yearly_cost"),
                "yearly_cost_total",
                figures.number("yearly_cost_total"));
        compare(
                found,
                "receipts_total less yearly_cost_total",
                figures.number("receipts_total") - figures.number("yearly_cost_total"),
                "returns_above_total",
                figures.number("returns_above_total"),
                Math.max(figures.number("receipts_total"), figures.number("yearly_cost_total")));
        compare(
                found,
                "exact_cost and leftover_value",
                figures.number("exact_cost") + figures.number("leftover_value"),
                "purchase_cost",
                figures.number("purchase_cost"));
        cashByMonth(found, figures);
        return List.copyOf(found);
    }

    /** The calendar against the running cash of a full year: only plants and what is used up are in the one and not in the other. */
    private static void cashByMonth(List<String> found, Figures figures) {
        double paid = figures.number("yield_costs_total")
                + figures.number("running_cash")
                + figures.number("parts_repairs_total")
                + figures.number("charges_cash")
                + figures.number("used_up_cash")
                + figures.number("plants_cash_year");
        compare(
                found,
                "selling, running_cash, repairs, charges_cash, used_up_cash and plants_cash_year",
                paid,
                "budget_month_costs over the year",
                sum(figures, "budget_month_costs"),
                Math.max(paid, figures.number("receipts_total")));
        compare(
                found,
                "the months of receipts from planting on",
                sum(figures, "season_receipts"),
                "receipts_total",
                figures.number("receipts_total"));
    }

    private static double sum(Figures figures, String id) {
        Line line = figures.budget().line(id);
        double sum = 0;
        for (int cell = 0; cell < line.size(); cell++) {
            sum += figures.number(line, cell);
        }
        return sum;
    }

    private static void compare(List<String> found, String parts, double sum, String whole, double value) {
        compare(found, parts, sum, whole, value, Math.max(Math.abs(sum), Math.abs(value)));
    }

    /** Compares to a share of the largest amount behind the two sides, which may themselves be near zero. */
    private static void compare(
            List<String> found, String parts, double sum, String whole, double value, double largest) {
        boolean agree = Math.abs(sum - value) <= SHARE * largest;
        if (!agree) {
            found.add(String.format(Locale.ROOT, "The sum of %s is %s, but %s is %s.", parts, sum, whole, value));
        }
    }
}
