package org.benchmetre.farm.finance;

import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What may go wrong with the cash of the plan: changes against what is entered, each 0 while all goes as planned. They move cash, not the
 * enterprise budget. Work and energy are counted in full where there is less fruit, which is the safe side.
 */
public final class Shocks {

    private static final double MOST = 10;
    private static final double LONGEST_DELAY = 11;
    private static final double HIGHEST_RATE = 0.5;

    /** Change of all fruit prices, a share: -0.1 is a tenth less. */
    public final Line price;
    /** Change of all fruit, a share. */
    public final Line yield;
    /** Change of the wages of hired labour, a share. */
    public final Line wage;
    /** Change of what heat and electricity cost, a share. */
    public final Line energy;
    /** Change of the rates of all loans, nominal/a; principal is paid as planned. */
    public final Line interest;
    /** Months by which the first harvest is late, mo. */
    public final Line late;
    /** Year of the plan in which all fruit is lost, a; 0 for none. */
    public final Line lost;
    /** The last year in which a crop can be lost. */
    public final int years;

    /**
     * Declares the entries.
     *
     * @param b where the schedule is added
     * @param entries gives entries their values
     * @param years that the plan has room for
     */
    public Shocks(BudgetBuilder b, FarmEntries entries, int years) {
        this.years = years;
        ScheduleBuilder s = b.schedule(Sheets.STRESS, "Changes to the plan, all at once");
        price = share(s, entries, "shock_price", "Price of fruit, change");
        yield = share(s, entries, "shock_yield", "Fruit, change");
        wage = share(s, entries, "shock_wage", "Wages, change");
        energy = share(s, entries, "shock_energy", "Cost of heat and electricity, change");
        interest = entries.add(s.entry("shock_interest", "Rates of loans, change", Unit.parse("nominal/a"))
                .from(-HIGHEST_RATE, HIGHEST_RATE));
        late = entries.add(s.entry("shock_late", "First harvest late by", Unit.parse("mo"))
                .from(0, LONGEST_DELAY)
                .whole());
        lost = entries.add(s.entry("shock_lost_year", "Crop lost in year, 0 for none", Unit.parse("a"))
                .from(0, years)
                .whole());
    }

    /**
     * All changes.
     *
     * @return price, fruit, wages, energy, interest, delay, lost year
     */
    public List<Line> all() {
        return List.of(price, yield, wage, energy, interest, late, lost);
    }

    private static Line share(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, ONE).from(-1, MOST));
    }
}
