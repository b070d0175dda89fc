package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** When buyers pay: so many days after fruit is sold, taken in whole months and the part of a month between two. */
final class SalesTerms {

    private static final double LONGEST = 90;
    private static final double DAYS_OF_A_MONTH = 365.25 / 12;
    private static final int MONTHS = 3;

    /** Shares paid in the month of the sale, one month later and so on. */
    private final List<Line> shares = new ArrayList<>();

    SalesTerms(BudgetBuilder b, FarmEntries entries) {
        ScheduleBuilder s = b.schedule(Sheets.LENDING, "When buyers pay");
        Line days = entries.add(s.entry("sales_terms", "Buyers pay after", Unit.parse("d"))
                .from(0, LONGEST)
                .whole());
        Line behind = s.line(
                "sales_terms_months",
                "Buyers pay after, months",
                ONE,
                days.counting(ONE).over(number(DAYS_OF_A_MONTH, ONE)),
                "a month is a twelfth of 365.25 days: calendar");
        for (int month = 0; month <= MONTHS; month++) {
            Formula early = behind.minus(number(month, ONE));
            Formula late = number(month, ONE).minus(behind);
            shares.add(
                    s.line(
                            "sales_paid_after_" + month,
                            month == 0 ? "Paid in the month of the sale" : "Paid in month " + month + " after it",
                            ONE,
                            greater(one().minus(greater(early, late)), none(ONE)),
                            "in proportion between whole months, so that fruit of a month is sold evenly over it: our choice, no source"));
        }
    }

    /** The share that is paid so many months after the sale. */
    Line share(int months) {
        return shares.get(months);
    }

    /** How many months back a payment may reach. */
    int longest() {
        return MONTHS;
    }
}
