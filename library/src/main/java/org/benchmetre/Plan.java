package org.benchmetre;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Remark;

/** A scenario that was read without faults, and its figures, all of them finite. Not for use by several threads. */
public final class Plan {

    private final Budget budget;
    private final Figures figures;
    private final Faults found;

    Plan(Budget budget, Figures figures, Faults found) {
        this.budget = budget;
        this.figures = figures;
        this.found = found;
    }

    /**
     * The budget, with price list and settings in it.
     *
     * @return lines, schedules and entered values
     */
    public Budget budget() {
        return budget;
    }

    /**
     * The value of every line.
     *
     * @return figures that are all finite
     */
    public Figures figures() {
        return figures;
    }

    /**
     * What looks wrong in the files, though it can be used, and what the figures themselves warn of.
     *
     * @return the files' sorted by place, then the figures' in order of definition
     */
    public List<Remark> warnings() {
        List<Remark> all = new ArrayList<>(found.warnings());
        all.addAll(new Watch(figures).remarks());
        return List.copyOf(all);
    }

    /**
     * How the files were understood.
     *
     * @return sorted by place
     */
    public List<Remark> notes() {
        return found.notes();
    }

    /**
     * What looks wrong in the values: entries outside their usual range, and prices of another year than the plan.
     *
     * @return in the order of the lines
     */
    public List<Remark> doubts() {
        return new Doubts(budget).all();
    }

    /**
     * Sums that should agree and do not: a fault of the arithmetic, not of the input.
     *
     * @return whole sentences; empty when all agree
     */
    public List<String> disagreements() {
        return Agreement.disagreements(figures);
    }
}
