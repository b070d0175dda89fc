package org.benchmetre.farm.lending;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/** How large a change the stress of a plan looks at, one entry for each change that may be entered: what it adds to that change. */
final class StressSizes {

    private static final double MOST = 10;
    private static final double HIGHEST_RATE = 0.5;
    private static final double LONGEST_DELAY = 11;

    /** Change of all fruit prices, a share, not above 0. */
    final Line price;
    /** Change of all fruit, a share, not above 0. */
    final Line yield;
    /** Change of the wages of hired labour, a share, not below 0. */
    final Line wage;
    /** Change of what heat and electricity cost, a share, not below 0. */
    final Line energy;
    /** Change of the rates of all loans, nominal/a, not below 0. */
    final Line interest;
    /** Months by which the first harvest is later, mo. */
    final Line late;
    /** Year of the plan in which all fruit is lost, a; 0 for none. */
    final Line lost;

    StressSizes(BudgetBuilder b, FarmEntries entries, int years) {
        ScheduleBuilder s = b.schedule(Sheets.STRESS, "Sizes of the changes looked at");
        price = entries.add(s.entry("stress_price", "Price of fruit, by", ONE).from(-1, 0));
        yield = entries.add(s.entry("stress_yield", "Fruit, by", ONE).from(-1, 0));
        wage = entries.add(s.entry("stress_wage", "Wages, by", ONE).from(0, MOST));
        energy = entries.add(s.entry("stress_energy", "Cost of heat and electricity, by", ONE)
                .from(0, MOST));
        interest = entries.add(s.entry("stress_interest", "Rates of loans, by", Unit.parse("nominal/a"))
                .from(0, HIGHEST_RATE));
        late = entries.add(s.entry("stress_late", "First harvest later by", Unit.parse("mo"))
                .from(0, LONGEST_DELAY)
                .whole());
        lost = entries.add(s.entry("stress_lost_year", "Crop lost in year", Unit.parse("a"))
                .from(0, years)
                .whole());
    }

    /** Each size, in the order of the changes. */
    List<Line> all() {
        return List.of(price, yield, wage, energy, interest, late, lost);
    }

    /** Each size in words, in the order of the changes. */
    List<Formula> words() {
        List<Line> all = all();
        return IntStream.range(0, all.size())
                .mapToObj(row -> StressTexts.size(row, all.get(row).counting(ONE)))
                .toList();
    }
}
