package org.benchmetre.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Faults of one cause told once: the same thing found and the same expected in several rows of one column. */
final class AlikeFaults {

    /** More runs of rows than this are counted, not listed. */
    private static final int LISTED = 12;

    /** The keys at the end of an address in parentheses. */
    private static final Pattern KEY = Pattern.compile("\\[[^\\[\\]]*\\]\\)");

    private AlikeFaults() {}

    /** One sentence for each cause, in the order of their first rows. */
    static List<String> sentences(List<Fault> faults) {
        Map<Fault, List<Fault>> alike = new LinkedHashMap<>();
        faults.forEach(fault ->
                alike.computeIfAbsent(cause(fault), cause -> new ArrayList<>()).add(fault));
        return alike.values().stream().map(AlikeFaults::sentence).toList();
    }

    /** The fault without its row, and without the key of the row in the address of what was expected. */
    private static Fault cause(Fault fault) {
        Place place = fault.place();
        return new Fault(
                new Place(place.file(), 0, place.column()),
                fault.found(),
                KEY.matcher(fault.expected()).replaceAll(")"));
    }

    private static String sentence(List<Fault> alike) {
        Fault first = alike.get(0);
        if (alike.size() == 1) {
            return first.message();
        }
        int[] rows = alike.stream().mapToInt(fault -> fault.place().row()).toArray();
        return cause(first).sentence(first.place().words(", rows " + runs(rows)));
    }

    /** Ascending rows as runs: {@code 3 to 22, 24 and 30}. */
    private static String runs(int[] rows) {
        List<String> runs = new ArrayList<>();
        int start = 0;
        int told = 0;
        for (int i = 1; i <= rows.length; i++) {
            if (i < rows.length && rows[i] == rows[i - 1] + 1) {
                continue;
            }
            if (runs.size() < LISTED) {
                runs.addAll(run(rows[start], rows[i - 1]));
                told = i;
            }
            start = i;
        }
        if (told < rows.length) {
            runs.add(rows.length - told + " more");
        }
        return Phrases.joined(runs, "and");
    }

    /** Two rows are no run worth a word of its own. */
    private static List<String> run(int first, int last) {
        if (last > first + 1) {
            return List.of(first + " to " + last);
        }
        return first == last ? List.of("" + first) : List.of("" + first, "" + last);
    }
}
