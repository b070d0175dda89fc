package org.benchmetre;

import java.nio.file.Path;
import java.util.List;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;

/**
 * What is wrong with several scenarios, each fault with the name of its scenario before its place.
 *
 * @param all where they are gathered
 */
record ManyFaults(Faults all) {

    ManyFaults() {
        this(new Faults());
    }

    void add(String name, Path folder, Faults faults) {
        for (Fault fault : faults.faults()) {
            boolean named = fault.place().file().equals(folder.toString());
            Place place = named ? fault.place() : within(name, fault.place());
            all.add(place, fault.found(), fault.expected());
        }
        remarks(name, faults.warnings(), faults.notes());
    }

    void remarks(String name, List<Remark> warnings, List<Remark> notes) {
        warnings.forEach(warning -> all.warn(within(name, warning.place()), warning.text()));
        notes.forEach(note -> all.note(within(name, note.place()), note.text()));
    }

    private static Place within(String name, Place place) {
        return place.file().equals(name) ? place : new Place(name + ", " + place.file(), place.row(), place.column());
    }
}
