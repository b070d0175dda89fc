package org.benchmetre;

import java.util.ArrayList;
import java.util.List;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.budget.unit.Unit;

/** The results of scenarios side by side: what it takes to build and to own, fruit, receipts, what is left, break-evens. */
public final class ResultsCompared {

    private final Comparison comparison;
    private final List<Result> results = new ArrayList<>();

    private ResultsCompared(Comparison comparison) {
        this.comparison = comparison;
    }

    /**
     * Reads the results.
     *
     * @param comparison the scenarios
     * @return the results in the order a reader wants them
     */
    public static List<Result> of(Comparison comparison) {
        ResultsCompared made = new ResultsCompared(comparison);
        made.lines("first_cost", "First cost", Measure.METRE, Measure.PLANT, Measure.AREA);
        made.lines("yearly_cost", "Yearly cost", Measure.METRE, Measure.PLANT, Measure.AREA, Measure.KG);
        made.quotient("yield_total", "Marketable fruit", Measure.PLANT, "kg/(plant a)");
        made.quotient("yield_total", "Marketable fruit", Measure.AREA, "kg/(m2 a)");
        made.quotient("receipts_total", "Receipts", Measure.AREA, "money/(m2 a)");
        made.lines("margin", "Margin", Measure.METRE, Measure.PLANT, Measure.AREA, Measure.KG);
        made.line("break_even_price", "", "Break-even price", "break_even_price");
        made.line("break_even_yield", "", "Break-even fruit per plant and crop", "break_even_yield");
        return List.copyOf(made.results);
    }

    private void lines(String family, String label, Measure... measures) {
        for (Measure per : measures) {
            line(family, per.toString(), label + " " + per.words(), family + "_per_" + per);
        }
    }

    private void line(String key, String measure, String label, String id) {
        List<Double> values = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        for (Compared each : comparison.scenarios()) {
            Figures figures = each.figures();
            Line line = figures.budget().line(id);
            boolean none = figures.hasReason(line, 0);
            values.add(figures.number(line, 0));
            reasons.add(none ? figures.text(line, 0) : "");
        }
        Unit unit = comparison.scenarios().get(0).plan().budget().line(id).unit();
        results.add(new Result(key, measure, label, unit.display(comparison.currency()), values, reasons));
    }

    private void quotient(String id, String label, Measure per, String unit) {
        List<Double> values = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        for (Compared each : comparison.scenarios()) {
            values.add(each.figures().number(id) / per.size(each.figures()));
            reasons.add("");
        }
        String shown = Unit.parse(unit).display(comparison.currency());
        results.add(new Result(id, per.toString(), label + " " + per.words(), shown, values, reasons));
    }
}
