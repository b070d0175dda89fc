package org.benchmetre.comparison;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.unit.Unit;

/**
 * Figures of the scenarios as entries of the comparison. Every value that is put in comes from here and names its scenario and line.
 *
 * @param scenarios in the order of the comparison
 */
record TakenFigures(List<Compared> scenarios) {

    private static final String SOURCE = "a figure of this scenario, explained there";

    /** A line as the first scenario has it; the others have it alike. */
    Line like(String id) {
        return scenarios.get(0).figures().budget().line(id);
    }

    /** A single figure of each scenario, number or text; blank where it has a reason in place of a number. */
    List<Given> figures(String id) {
        return each(scenario -> figure(scenario, new CellRef(lineOf(scenario, id), 0)));
    }

    /** Why a scenario has no number; blank where it has one. */
    List<Given> reasons(String id) {
        return each(scenario -> {
            Line line = lineOf(scenario, id);
            String reason =
                    scenario.figures().hasReason(line, 0) ? scenario.figures().text(line, 0) : "";
            return said(Given.text(reason), scenario, line.id());
        });
    }

    /** The figures of a row, by scenario; blank where a scenario has no such row. */
    List<Given> figures(MatchedRow row) {
        return IntStream.range(0, scenarios.size())
                .mapToObj(i -> row.cells().containsKey(i)
                        ? figure(scenarios.get(i), row.cells().get(i))
                        : Given.blank(unit(row))
                                .at(new Origin.Figure(scenarios.get(i).name(), "no such row")))
                .toList();
    }

    /** What the budgets leave. */
    List<Given> left() {
        return each(scenario -> figure(scenario, PageRow.left(scenario.figures())));
    }

    List<Given> names() {
        return each(scenario -> Given.text(scenario.name()).at(new Origin.Figure(scenario.name(), "its own name")));
    }

    List<Given> titles() {
        return each(scenario -> said(Given.text(scenario.figures().budget().title()), scenario, "title"));
    }

    /** A text about a row, as the first scenario that has it says. */
    Given words(String text, MatchedRow row) {
        int first = row.cells().firstKey();
        CellRef cell = row.cells().get(first);
        return said(Given.text(text), scenarios.get(first), "row " + cell.line().index(cell.cell()) + " of its budget");
    }

    /** The lines where the money of a row stands, one in most cases: the scenarios call it alike. */
    static Given lines(MatchedRow row) {
        return Given.text(
                row.cells().values().stream().map(CellRef::toString).distinct().collect(Collectors.joining(", ")));
    }

    private static Unit unit(MatchedRow row) {
        return row.cells().get(row.cells().firstKey()).line().unit();
    }

    private List<Given> each(Function<Compared, Given> value) {
        return scenarios.stream().map(value).toList();
    }

    private static Line lineOf(Compared scenario, String id) {
        return scenario.figures().budget().line(id);
    }

    private static Given figure(Compared scenario, CellRef ref) {
        Line line = ref.line();
        if (line.kind() == Kind.TEXT) {
            return said(Given.text(scenario.figures().text(line, ref.cell())), scenario, ref.toString());
        }
        boolean none = scenario.figures().hasReason(line, ref.cell());
        Given number = none
                ? Given.blank(line.unit())
                : Given.number(scenario.figures().number(line, ref.cell()), line.unit());
        return said(number, scenario, ref.toString());
    }

    private static Given said(Given value, Compared scenario, String line) {
        return value.at(new Origin.Figure(scenario.name(), line)).from(SOURCE);
    }
}
