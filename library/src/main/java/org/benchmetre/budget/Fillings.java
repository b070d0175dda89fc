package org.benchmetre.budget;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The values of the solved lines of a budget, and for each line whether its search ran on the entries as they are. Immutable. */
final class Fillings implements Serializable {

    private static final long serialVersionUID = 1L;

    /** On which entries a search ran. */
    private enum On {
        NONE("not searched yet"),
        THESE("as filled on these entries"),
        OTHERS("as filled on other entries");

        private final String words;

        On(String words) {
            this.words = words;
        }
    }

    private record Filling(List<Solved> values, On on) implements Serializable {}

    private final LinkedHashMap<Line, Filling> all;

    private Fillings(LinkedHashMap<Line, Filling> all) {
        this.all = all;
    }

    static Fillings none(Collection<Line> lines) {
        LinkedHashMap<Line, Filling> all = new LinkedHashMap<>();
        for (Line line : lines) {
            Solved blank = line.kind() == Kind.NUMBER ? Solved.number(0) : Solved.NOT_SEARCHED;
            all.put(line, new Filling(List.copyOf(Collections.nCopies(line.size(), blank)), On.NONE));
        }
        return new Fillings(all);
    }

    List<Line> lines() {
        return List.copyOf(all.keySet());
    }

    boolean has(Line line) {
        return all.containsKey(line);
    }

    List<Solved> of(Line line) {
        return known(line).values();
    }

    String words(Line line) {
        return known(line).on().words;
    }

    private Filling known(Line line) {
        Filling filling = all.get(line);
        if (filling == null) {
            throw new FormulaException("Line " + line + " is not filled by a search.");
        }
        return filling;
    }

    /** The same with some lines filled on the entries as they are. */
    Fillings with(Map<Line, List<Solved>> found) {
        LinkedHashMap<Line, Filling> filled = new LinkedHashMap<>(all);
        found.forEach((line, values) -> {
            check(line, values);
            filled.put(line, new Filling(List.copyOf(values), On.THESE));
        });
        return new Fillings(filled);
    }

    private void check(Line line, List<Solved> values) {
        if (values.size() != known(line).values().size()) {
            throw new FormulaException(
                    "Line " + line + " has " + line.size() + " cells, but found " + values.size() + " values.");
        }
        List<Solved> found = new ArrayList<>(values);
        found.removeIf(Solved::hasNumber);
        if (line.kind() == Kind.NUMBER && !found.isEmpty()) {
            throw new FormulaException("Line " + line + " takes numbers alone, but found '"
                    + found.get(0).reason() + "'.");
        }
    }

    /** The same values, found before the entries changed. */
    Fillings outdated() {
        LinkedHashMap<Line, Filling> outdated = new LinkedHashMap<>();
        all.forEach((line, filling) ->
                outdated.put(line, filling.on() == On.NONE ? filling : new Filling(filling.values(), On.OTHERS)));
        return new Fillings(outdated);
    }
}
