package org.benchmetre.batch;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.comparison.Comparison;

/** Reads lines of a comparison: along the scenarios, or along the rows of a table and the scenarios. */
final class ComparedValues {

    private final Figures figures;
    private final Axis scenarios;

    ComparedValues(Comparison comparison) {
        this.figures = comparison.figures();
        this.scenarios = line("scenario_name").axes().get(0);
    }

    Line line(String id) {
        return figures.budget().line(id);
    }

    /** The places of the scenarios, from 0. */
    List<Integer> scenarios() {
        return IntStream.range(0, scenarios.size()).boxed().toList();
    }

    String name(int scenario) {
        return text("scenario_name", scenario);
    }

    /** The keys of the rows that a line runs along before the scenarios. */
    List<String> keys(String id) {
        return line(id).axes().get(0).keys();
    }

    String text(String id, int cell) {
        return figures.text(line(id), cell);
    }

    double number(String id, int cell) {
        return figures.number(line(id), cell);
    }

    double number(String id, int row, int scenario) {
        Line line = line(id);
        Position position = Position.NONE.with(line.axes().get(0), row).with(scenarios, scenario);
        return figures.number(line, line.cellAt(position));
    }

    /** A number with two decimals, or why there is none. */
    String two(Line line, int cell) {
        return figures.hasReason(line, cell) ? figures.text(line, cell) : PriceReport.two(figures.number(line, cell));
    }

    /** A difference with two decimals and its sign; empty where there is none. */
    String signed(Line line, int cell) {
        return figures.hasReason(line, cell) ? "" : signed(figures.number(line, cell));
    }

    /** A difference with every digit; empty where there is none. */
    String difference(Line line, int cell) {
        return figures.hasReason(line, cell) ? "" : Numbers.plain(figures.number(line, cell));
    }

    String unit(Line line) {
        return line.unit().display(figures.budget().currency());
    }

    String fileUnit(Line line) {
        return line.unit().inFiles(figures.budget().currency());
    }

    static String signed(double number) {
        String shown = PriceReport.two(number);
        return number > 0 && !shown.equals("0.00") ? "+" + shown : shown;
    }
}
