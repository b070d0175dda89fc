package org.benchmetre.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Collects what is wrong with the input (faults), what looks wrong (warnings) and what is good to know (notes).
 *
 * <p>All three are given back sorted by file name, then row, the whole file first; what stands in the same row keeps
 * the order in which it was found. Identical entries count once. Not for use by several threads.
 */
public final class Faults {

    private static final int MANY = 100;

    private final Set<Fault> faults = new LinkedHashSet<>();
    private final Set<Place> places = new HashSet<>();
    private final Set<Remark> warnings = new LinkedHashSet<>();
    private final Set<Remark> notes = new LinkedHashSet<>();

    /** Nothing found yet. */
    public Faults() {}

    /**
     * Adds a fault.
     *
     * @param place where it stands
     * @param found what stands there, see {@link Fault#found()}
     * @param expected what should stand there, see {@link Fault#expected()}
     */
    public void add(Place place, String found, String expected) {
        add(new Fault(place, found, expected));
    }

    /**
     * Adds a fault.
     *
     * @param fault the fault
     */
    public void add(Fault fault) {
        faults.add(fault);
        places.add(fault.place());
    }

    /**
     * Adds a fault, unless there is one of the same cell already.
     *
     * @param place a cell
     * @param found what stands there, see {@link Fault#found()}
     * @param expected what should stand there, see {@link Fault#expected()}
     */
    void addOnce(Place place, String found, String expected) {
        if (!places.contains(place)) {
            add(place, found, expected);
        }
    }

    /**
     * Adds a warning: the scenario can be used, but something is probably not as meant.
     *
     * @param place where it stands
     * @param text what is said, see {@link Remark#text()}
     */
    public void warn(Place place, String text) {
        warnings.add(new Remark(place, text));
    }

    /**
     * Adds a note: how the input was understood.
     *
     * @param place where it stands
     * @param text what is said, see {@link Remark#text()}
     */
    public void note(Place place, String text) {
        notes.add(new Remark(place, text));
    }

    /** Takes back what a larger fault of the same file makes pointless to say. */
    void withdraw(Collection<Fault> pointless) {
        pointless.forEach(faults::remove);
    }

    /**
     * Whether there is no fault. Warnings and notes do not count.
     *
     * @return true when the input can be used
     */
    public boolean isEmpty() {
        return faults.isEmpty();
    }

    /**
     * How many faults there are, identical ones counted once.
     *
     * @return 0 or more
     */
    public int size() {
        return faults.size();
    }

    /**
     * The faults.
     *
     * @return sorted, unchangeable
     */
    public List<Fault> faults() {
        return sorted(faults, Fault::place);
    }

    /**
     * The warnings.
     *
     * @return sorted, unchangeable
     */
    public List<Remark> warnings() {
        return sorted(warnings, Remark::place);
    }

    /**
     * The notes.
     *
     * @return sorted, unchangeable
     */
    public List<Remark> notes() {
        return sorted(notes, Remark::place);
    }

    private static <T> List<T> sorted(Collection<T> found, Function<T, Place> place) {
        List<T> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparing((T item) -> place.apply(item).file())
                .thenComparingInt(item -> place.apply(item).row()));
        return List.copyOf(sorted);
    }

    /**
     * The faults as sentences. What is found and expected alike in several rows of a column is one sentence with all those rows, such as
     * {@code materials.csv, rows 3 to 22, column option: found "tape", expected ...}.
     *
     * @return sorted as the faults are, unchangeable
     */
    public List<String> sentences() {
        return AlikeFaults.sentences(faults());
    }

    /**
     * Whether there are so many faults that looking for near names no longer helps anybody.
     *
     * @return true from a hundred faults on
     */
    public boolean areMany() {
        return faults.size() >= MANY;
    }

    /**
     * Everything found, one sentence a line: the faults, then the warnings, then the notes.
     *
     * @return lines that each end in a line feed; empty when nothing was found
     */
    public String report() {
        StringBuilder report = new StringBuilder();
        sentences()
                .forEach(sentence -> report.append("Fault: ").append(sentence).append('\n'));
        warnings()
                .forEach(warning ->
                        report.append("Warning: ").append(warning.message()).append('\n'));
        notes().forEach(note -> report.append("Note: ").append(note.message()).append('\n'));
        return report.toString();
    }
}
