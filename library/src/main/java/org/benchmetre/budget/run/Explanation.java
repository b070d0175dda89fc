package org.benchmetre.budget.run;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashSet;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.Words;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.unit.Unit;

/**
 * Where a figure comes from: its formula, the figures that formula reads, and so on down to the entries with their sources and
 * places. A figure that is read twice is explained once. Numbers are shown with ten significant digits; {@link Figures} has all.
 */
public final class Explanation {

    /** The longest line, in characters. */
    public static final int WIDTH = 100;

    private static final MathContext SHOWN = new MathContext(10);
    private static final int DEEPEST_INDENT = 48;

    private final int levels;
    private final Figures figures;
    private final Budget budget;
    private final Set<CellRef> explained = new HashSet<>();
    private final StringBuilder text = new StringBuilder();

    private Explanation(Figures figures, int levels) {
        this.levels = levels;
        this.figures = figures;
        this.budget = figures.budget();
    }

    /**
     * Explains one cell.
     *
     * @param figures a computed budget
     * @param line one of its lines
     * @param cell which of the line's cells, from 0
     * @return the explanation
     */
    public static Explanation of(Figures figures, Line line, int cell) {
        return of(figures, line, cell, Integer.MAX_VALUE);
    }

    /**
     * Explains one cell so many levels deep.
     *
     * @param figures a computed budget
     * @param line one of its lines
     * @param cell which of the line's cells, from 0
     * @param levels how many formulas deep, at least 1; what lies deeper ends in three points
     * @return the explanation
     */
    public static Explanation of(Figures figures, Line line, int cell, int levels) {
        Explanation explanation = new Explanation(figures, levels);
        explanation.explain(new CellRef(line, cell), 0);
        return explanation;
    }

    /** The explanation as an indented tree, no line longer than {@link #WIDTH}; each line ends in a line feed. */
    @Override
    public String toString() {
        return text.toString();
    }

    private void explain(CellRef ref, int depth) {
        Line line = ref.line();
        String head = line.label() + " (" + ref + ") = " + value(ref);
        if (depth >= levels && budget.formula(line).isPresent()) {
            print(head + " ...", depth);
            return;
        }
        boolean again = !explained.add(ref);
        print(again ? head + " (see above)" : head, depth);
        if (again) {
            return;
        }
        if (budget.formula(line).isPresent()) {
            formula(ref, budget.formula(line).get(), depth + 1);
        } else if (budget.isSolved(line)) {
            solved(line, depth + 1);
        } else {
            entry(ref, depth + 1);
        }
    }

    private void solved(Line line, int depth) {
        print("found by a search, " + budget.filledOn(line), depth);
        note(line, depth);
    }

    private void note(Line line, int depth) {
        if (!line.note().isEmpty()) {
            print("note: " + line.note(), depth);
        }
    }

    private void formula(CellRef ref, Formula formula, int depth) {
        Line line = ref.line();
        Formula own = formula instanceof Rows rows
                ? rows.formulas().get(line.positionOf(ref.cell()).on(rows.axis()))
                : formula;
        print("= " + Words.of(own), depth);
        note(line, depth);
        Contributors read = Contributors.of(figures, line, own, ref.cell());
        read.cells().forEach(cell -> explain(cell, depth));
        if (read.zeros() > 0) {
            print(
                    "(" + read.zeros() + " more " + (read.zeros() == 1 ? "row adds nothing)" : "rows add nothing)"),
                    depth);
        }
    }

    private void entry(CellRef ref, int depth) {
        Given given = budget.given(ref.line()).get(ref.cell());
        String typed = given.filled() && !given.typedIn().equals(ref.line().unit())
                ? ", given as " + Numbers.plain(given.typed()) + unit(given.typedIn())
                : "";
        String source = given.source().isEmpty() ? "" : "; source: " + given.source();
        boolean isDefault =
                given.origin().equals(Origin.DEFAULT) && ref.line().axes().isEmpty();
        String place = given.origin().equals(Origin.DEFAULT) ? (isDefault ? ", default" : "") : ", " + given.origin();
        print((given.filled() ? "entry" : "blank entry") + place + typed + source, depth);
    }

    private String value(CellRef ref) {
        Line line = ref.line();
        String shown = figures.text(line, ref.cell());
        if (line.kind() == Kind.TEXT) {
            return shown.isEmpty() ? "blank" : "\"" + shown + "\"";
        }
        if (figures.hasReason(line, ref.cell())) {
            return shown;
        }
        if (line.kind() == Kind.TRUTH) {
            return figures.number(line, ref.cell()) == 0 ? "no" : "yes";
        }
        double number = figures.number(line, ref.cell());
        return Double.isFinite(number) ? rounded(number) + unit(line.unit()) : shown;
    }

    private static String rounded(double number) {
        return new BigDecimal(Numbers.plain(number))
                .round(SHOWN)
                .stripTrailingZeros()
                .toPlainString();
    }

    private String unit(Unit unit) {
        String shown = unit.display(budget.currency());
        return shown.equals("1") ? "" : " " + shown;
    }

    private void print(String sentence, int depth) {
        int indent = Math.min(2 * depth, DEEPEST_INDENT);
        String rest = sentence.replace('\n', ' ').replace('\t', ' ');
        String margin = " ".repeat(indent);
        while (margin.length() + rest.length() > WIDTH) {
            int end = breakAt(rest, WIDTH - margin.length());
            text.append(margin).append(rest.substring(0, end).stripTrailing()).append('\n');
            rest = rest.substring(end).stripLeading();
            margin = " ".repeat(indent + 4);
        }
        text.append(margin).append(rest).append('\n');
    }

    /** Breaks behind a space, else behind a sign of arithmetic, else anywhere. */
    private static int breakAt(String line, int room) {
        int space = line.lastIndexOf(' ', room);
        if (space > room / 2) {
            return space;
        }
        for (int end = room; end > room / 2; end--) {
            if ("+-*/,()&".indexOf(line.charAt(end - 1)) >= 0) {
                return end;
            }
        }
        return room;
    }
}
