package org.benchmetre.scenario;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.NearNames;
import org.benchmetre.budget.entry.Quoted;

/**
 * Names one cell of one line as people write it: {@code line}, {@code line[key]} or {@code line[key;key]}. Letters count the same
 * in either case.
 *
 * @param line the line's identifier in lower case
 * @param keys one key for each axis of the line, in lower case
 */
public record Address(String line, List<String> keys) {

    private static final Pattern FORM = Pattern.compile("\\s*(\\w+)\\s*(?:\\[([^\\[\\]=]+)\\])?\\s*");
    private static final int KEYS_SHOWN = 12;

    /**
     * Keeps its own copy of the keys.
     *
     * @param line the line's identifier
     * @param keys one key for each axis
     */
    public Address {
        keys = List.copyOf(keys);
    }

    /**
     * Reads an address.
     *
     * @param text for example {@code material_price[tape]}
     * @return the address
     * @throws SettingSyntaxException when the text does not follow the form
     */
    public static Address parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new SettingSyntaxException(
                    "An address is line, line[key] or line[key;key], such as material_price[tape];" + " it was "
                            + Quoted.text(text) + ".");
        }
        List<String> keys = form.group(2) == null
                ? List.of()
                : Arrays.stream(form.group(2).split(";", -1))
                        .map(Address::folded)
                        .toList();
        if (keys.contains("")) {
            throw new SettingSyntaxException(
                    "No key between the brackets and semicolons of an address is empty; it was " + Quoted.text(text)
                            + ".");
        }
        return new Address(folded(form.group(1)), keys);
    }

    private static String folded(String text) {
        return text.trim().toLowerCase(Locale.ROOT);
    }

    /**
     * The cell that is meant.
     *
     * @param budget the budget it stands in
     * @param place what a fault names as its place
     * @param faults where an unknown line or key is reported, with near names
     * @return the cell; empty after a fault
     */
    public Optional<CellRef> in(Budget budget, Place place, Faults faults) {
        Optional<Line> found = budget.find(line);
        if (found.isEmpty()) {
            List<String> names = budget.lines().stream().map(Line::id).toList();
            faults.add(place, Quoted.text(line), "the name of a line" + question(line, names, faults));
            return Optional.empty();
        }
        List<Axis> axes = found.get().axes();
        if (axes.size() != keys.size()) {
            faults.add(place, Quoted.text(toString()), keysOf(found.get()));
            return Optional.empty();
        }
        return cell(found.get(), place, faults);
    }

    /**
     * The entry cell that is meant.
     *
     * @param budget the budget it stands in
     * @param place what a fault names as its place
     * @param faults where an unknown line or key, or a line that is no entry, is reported
     * @return the cell; empty after a fault
     */
    public Optional<CellRef> entryIn(Budget budget, Place place, Faults faults) {
        Optional<CellRef> cell = in(budget, place, faults);
        if (cell.isPresent() && budget.entry(cell.get().line()).isEmpty()) {
            Line found = cell.get().line();
            String why = budget.isSolved(found) ? " is found by a search" : " follows from a formula";
            faults.add(place, Quoted.text(line), "an entry; " + found.label() + why);
            return Optional.empty();
        }
        return cell;
    }

    private Optional<CellRef> cell(Line found, Place place, Faults faults) {
        int cell = 0;
        boolean known = true;
        for (int i = 0; i < keys.size(); i++) {
            Axis axis = found.axes().get(i);
            int index = axis.indexOf(keys.get(i));
            if (index < 0) {
                String what = "a key of " + axis + question(keys.get(i), axis.keys(), faults);
                faults.add(place, Quoted.text(keys.get(i)), what);
                known = false;
            }
            cell = cell * axis.size() + index;
        }
        return known ? Optional.of(new CellRef(found, cell)) : Optional.empty();
    }

    /** The near names as a question, or the first names when none is near. */
    private static String question(String text, Collection<String> names, Faults faults) {
        if (faults.areMany()) {
            return "";
        }
        String near = NearNames.didYouMean(text, names);
        if (!near.isEmpty()) {
            return "; " + near;
        }
        return names.size() > KEYS_SHOWN * 2 ? "" : ": " + shown(List.copyOf(names));
    }

    private static String keysOf(Line line) {
        if (line.axes().isEmpty()) {
            return line + " without a key, for it has one value";
        }
        String axes = String.join(";", line.axes().stream().map(Axis::name).toList());
        String first = shown(line.axes().get(0).keys());
        return line + "[" + axes + "], with " + line.axes().get(0) + " among " + first;
    }

    private static String shown(List<String> keys) {
        List<String> filled = keys.stream()
                .filter(key -> !key.startsWith("spare_"))
                .limit(KEYS_SHOWN)
                .toList();
        return String.join(", ", filled)
                + (keys.size() > KEYS_SHOWN && filled.size() == KEYS_SHOWN ? " and so on" : "");
    }

    /** The address as {@link #parse} reads it back. */
    @Override
    public String toString() {
        return keys.isEmpty() ? line : line + "[" + String.join(";", keys) + "]";
    }
}
