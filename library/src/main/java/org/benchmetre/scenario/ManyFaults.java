package org.benchmetre.scenario;

import java.nio.file.Path;
import java.util.List;

/**
 * What is wrong with several scenarios, each fault with the name of its scenario before its place.
 *
 * @param all where they are gathered
 */
public record ManyFaults(Faults all) {

    /** Starts without any. */
    public ManyFaults() {
        this(new Faults());
    }

    /**
     * Adds all that is wrong with a scenario that could not be read.
     *
     * @param name of the scenario
     * @param folder where it is; a fault of the folder itself is told without the name
     * @param faults what was found
     */
    public void add(String name, Path folder, Faults faults) {
        for (Fault fault : faults.faults()) {
            boolean named = fault.place().file().equals(folder.toString());
            Place place = named ? fault.place() : within(name, fault.place());
            all.add(place, fault.found(), fault.expected());
        }
        remarks(name, faults.warnings(), faults.notes());
    }

    /**
     * Adds what is said of a scenario beside faults.
     *
     * @param name of the scenario
     * @param warnings what looks wrong
     * @param notes how it was understood
     */
    public void remarks(String name, List<Remark> warnings, List<Remark> notes) {
        warnings.forEach(warning -> all.warn(within(name, warning.place()), warning.text()));
        notes.forEach(note -> all.note(within(name, note.place()), note.text()));
    }

    private static Place within(String name, Place place) {
        return place.file().equals(name) ? place : new Place(name + ", " + place.file(), place.row(), place.column());
    }
}
