package org.benchmetre.workbook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.run.Figures;

/**
 * Where on the pages entries are typed, and what is typed there. A choice is typed by its label, a number in the unit it was given in;
 * where that is not what the line holds, the line's own cell stands in the workings and follows the typed one.
 */
final class Homes {

    private static final String NOT_LOOKED_UP = "*?~";

    private final Figures figures;
    private final Budget budget;
    private final Map<Line, TablePlace> places = new LinkedHashMap<>();
    private final Map<Line, Map<Integer, Spot>> scattered = new LinkedHashMap<>();
    private final Map<Line, Boolean> worded = new HashMap<>();

    Homes(Figures figures) {
        this.figures = figures;
        this.budget = figures.budget();
    }

    void put(Line line, TablePlace place) {
        if (places.put(line, place) != null || scattered.containsKey(line)) {
            throw new IllegalArgumentException(
                    "Entry " + line + " has two homes, one of them on page " + place.sheet() + ".");
        }
    }

    void scatter(CellRef ref, Spot spot) {
        boolean again = places.containsKey(ref.line())
                || scattered
                                .computeIfAbsent(ref.line(), line -> new HashMap<>())
                                .put(ref.cell(), spot)
                        != null;
        if (again) {
            throw new IllegalArgumentException(
                    "Entry " + ref + " has two homes, one of them on page " + spot.sheet() + ".");
        }
    }

    boolean has(Line line) {
        return places.containsKey(line) || isScattered(line);
    }

    TablePlace place(Line line) {
        return places.get(line);
    }

    /** Whether the cells of an entry are typed here and there. */
    boolean isScattered(Line line) {
        return scattered.containsKey(line);
    }

    /** Where a cell of an entry is typed; null where no page has it. */
    Spot spot(Line line, int cell) {
        return isScattered(line)
                ? scattered.get(line).get(cell)
                : places.get(line).spot(line, cell);
    }

    /** Whether the line's own cell is another than the one that is typed in. */
    boolean isApart(Line line) {
        return isConverted(line) || has(line) && (isScattered(line) || isWorded(line));
    }

    /** Whether a single value was given in a unit that is not its line's, or on a scale with another zero. */
    boolean isConverted(Line line) {
        if (!line.axes().isEmpty() || budget.entry(line).isEmpty()) {
            return false;
        }
        Given given = budget.given(line).get(0);
        return given.filled()
                && !(given.typedIn().equals(line.unit())
                        && given.typedIn().zero() == line.unit().zero());
    }

    /** Whether something else than the line's text is typed: a label for a key, a name for a word. */
    boolean isWorded(Line line) {
        return has(line) && findWorded(line);
    }

    private boolean findWorded(Line line) {
        return worded.computeIfAbsent(line, this::takesLabels);
    }

    private boolean takesLabels(Line line) {
        TextForm form = budget.entry(line).orElseThrow().form();
        if (line.kind() != Kind.TEXT || form.kind() != TextForm.Kind.WORD) {
            return false;
        }
        if (!form.keysOf().isEmpty()) {
            return labelsOf(form) != null && areTellable(labelsOf(form));
        }
        return form.words().stream().anyMatch(word -> !form.label(word).equals(word));
    }

    /** The line that names the rows whose keys an entry takes; null where none does. */
    Line labelsOf(TextForm form) {
        return budget.rowName(axisOf(form)).orElse(null);
    }

    /** The line of the keys that an entry takes. */
    Line keysOf(TextForm form) {
        return budget.line(form.keysOf());
    }

    private Axis axisOf(TextForm form) {
        return keysOf(form).axes().get(0);
    }

    /** Whether every filled row has a label of its own that a spreadsheet program finds again. */
    private boolean areTellable(Line labels) {
        Set<String> seen = new HashSet<>();
        return IntStream.range(0, labels.axes().get(0).filled())
                .mapToObj(i -> figures.text(labels, i))
                .allMatch(label -> !label.isEmpty()
                        && label.length() < 250
                        && label.chars().noneMatch(letter -> NOT_LOOKED_UP.indexOf(letter) >= 0)
                        && seen.add(label.toLowerCase(Locale.ROOT)));
    }

    /** What is typed for a text of an entry. */
    String shown(Line line, String text) {
        return has(line) ? onPage(line, text) : text;
    }

    /** What is typed for a text of an entry that stands on a page. */
    String onPage(Line line, String text) {
        if (text.isEmpty() || budget.entry(line).isEmpty() || !findWorded(line)) {
            return text;
        }
        TextForm form = budget.entry(line).orElseThrow().form();
        if (form.keysOf().isEmpty()) {
            return form.label(text);
        }
        int row = IntStream.range(0, axisOf(form).size())
                .filter(i -> figures.text(keysOf(form), i).equalsIgnoreCase(text))
                .findFirst()
                .orElse(-1);
        return row < 0 || labelsOf(form) == null ? text : figures.text(labelsOf(form), row);
    }
}
