package org.benchmetre.scenario;

/** A file that cannot be read at all, with the one fault that says why. */
final class Unreadable extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Fault fault;

    Unreadable(Place place, String found, String expected) {
        this.fault = new Fault(place, found, expected);
    }

    Fault fault() {
        return fault;
    }
}
