package org.benchmetre.budget.run;

import java.util.Arrays;

/** Constants in the order in which they were first written, each of them once; told apart by their bits. */
final class ConstantSet {

    private static final int FREE = 0;
    private static final long SPREAD = 0x9e37_79b9_7f4a_7c15L;

    private double[] values = new double[1 << 8];
    private int size;
    /** One more than the place of the constant in each slot. */
    private int[] slots = new int[1 << 10];

    int size() {
        return size;
    }

    double value(int place) {
        return values[place];
    }

    /** The place of a constant, a new one at the end when it was not written before. */
    int place(double value) {
        int slot = slot(value);
        if (slots[slot] != FREE) {
            return slots[slot] - 1;
        }
        if (size == values.length) {
            grow();
            slot = slot(value);
        }
        values[size] = value;
        slots[slot] = ++size;
        return size - 1;
    }

    /** The slot of a constant, or the free one where it belongs. */
    private int slot(double value) {
        long bits = Double.doubleToRawLongBits(value);
        long hash = bits * SPREAD;
        int slot = (int) (hash ^ hash >>> 32) & slots.length - 1;
        while (slots[slot] != FREE && Double.doubleToRawLongBits(values[slots[slot] - 1]) != bits) {
            slot = slot + 1 & slots.length - 1;
        }
        return slot;
    }

    /** Twice the room, with four slots for each constant. */
    private void grow() {
        values = Arrays.copyOf(values, 2 * values.length);
        slots = new int[4 * values.length];
        for (int place = 0; place < size; place++) {
            slots[slot(values[place])] = place + 1;
        }
    }
}
