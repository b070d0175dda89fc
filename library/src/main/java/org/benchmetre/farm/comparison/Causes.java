package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;

import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Yearly cost per metre of each way by cause, and the partial budget of changing from the way chosen to its rival: what is added and
 * what falls away, in the four boxes of a {@link PartialBudget}.
 */
public final class Causes {

    private static final Unit PER_METRE = Unit.parse("money/(m a)");
    private static final String COST = "cost";
    private static final String RETURN = "return";

    /**
     * One cause.
     *
     * @param key of its row
     * @param label what a reader sees
     * @param yearly money a year, by way
     * @param isReturn whether it lowers receipts in place of costing money
     */
    public record Cause(String key, String label, Formula yearly, boolean isReturn) {}

    /**
     * What is added up.
     *
     * @param causes what differs between ways, in order
     * @param benchMetres metres of bench
     */
    public record Sums(List<Cause> causes, Line benchMetres) {}

    /** One row for each cause. */
    public final Axis axis;
    /** Yearly cost per metre, money/(m a), by cause and way. */
    public final Line cost;
    /** All causes together, money/(m a), by way: what differs between ways. */
    public final Line differing;
    /** More with the rival than with the way chosen, money/(m a), by cause; 0 where it is less. */
    final Line more;
    /** Less with the rival than with the way chosen, money/(m a), by cause; 0 where it is more. */
    final Line less;
    /** What a reader sees of each cause. */
    final Line label;

    private final List<Cause> causes;

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param pages tables opened early
     * @param ways irrigation systems
     * @param pair the way chosen and its rival
     * @param sums what is added up
     */
    public Causes(BudgetBuilder b, Pages.ByCause pages, Ways ways, Pair pair, Sums sums) {
        this.causes = List.copyOf(sums.causes);
        ScheduleBuilder table = pages.added();
        axis = Axis.rows("cause", "Cause", causes.stream().map(Cause::key).toList(), 0);
        label = table.textLine("cause_label", "Cause", rows(Cause::label));
        b.nameRows(axis, label);
        Line kind = table.textLine("cause_kind", "Kind", rows(c -> c.isReturn() ? RETURN : COST));
        List<Formula> amounts = causes.stream()
                .map(cause -> cause.yearly().over(sums.benchMetres))
                .toList();
        cost = pages.cost()
                .line(
                        "cause_way_cost_per_metre",
                        "Yearly cost per metre, by cause",
                        PER_METRE,
                        new Rows(axis, amounts));
        ScheduleBuilder together = b.shared(Sheets.IRRIGATION, Tables.SIDE_BY_SIDE);
        differing = together.line(
                "way_differing_cost_per_metre", "Yearly cost per metre of what differs", PER_METRE, sum(cost, axis));
        Line now = table.line("cause_chosen", "System chosen", PER_METRE, lookup(cost, ways.key, pair.chosen()));
        Line then = table.line("cause_rival", "Rival", PER_METRE, lookup(cost, ways.key, pair.rival()));
        more = table.line("cause_added", "More with the rival", PER_METRE, positive(then.minus(now)));
        less = table.line("cause_reduced", "Less with the rival", PER_METRE, positive(now.minus(then)));
        boxes(pages.boxes(), kind);
    }

    private Formula rows(Function<Cause, String> word) {
        return new Rows(
                axis, causes.stream().map(cause -> text(word.apply(cause))).toList());
    }

    private static Formula positive(Formula amount) {
        return greater(amount, none(PER_METRE));
    }

    private void boxes(ScheduleBuilder s, Line kind) {
        PartialBudget.Boxes boxes = new PartialBudget.Boxes(
                sumWhere(less, kind, text(RETURN), axis),
                sumWhere(less, kind, text(COST), axis),
                sumWhere(more, kind, text(RETURN), axis),
                sumWhere(more, kind, text(COST), axis));
        new PartialBudget(s, "partial", "Gain of changing to the rival", boxes);
    }
}
