package org.benchmetre.budget.run;

import java.util.Arrays;
import org.benchmetre.budget.Function;

/** Instructions in the order in which they were first written, each of them once. */
final class InstructionSet {

    private static final int FREE = 0;

    private Function[] functions = new Function[1 << 10];
    private int[][] operands = new int[1 << 10][];
    private int[] hashes = new int[1 << 10];
    private int size;
    /** One more than the place of the instruction in each slot. */
    private int[] slots = new int[1 << 12];

    int size() {
        return size;
    }

    Function function(int place) {
        return functions[place];
    }

    int[] operands(int place) {
        return operands[place];
    }

    /** The place of an instruction, a new one at the end when it was not written before. */
    int place(Function function, int[] from) {
        int hash = mixed(31 * Arrays.hashCode(from) + function.ordinal());
        int slot = hash & slots.length - 1;
        while (slots[slot] != FREE) {
            int place = slots[slot] - 1;
            if (hashes[place] == hash && functions[place] == function && Arrays.equals(operands[place], from)) {
                return place;
            }
            slot = slot + 1 & slots.length - 1;
        }
        if (size == functions.length) {
            grow();
            return place(function, from);
        }
        functions[size] = function;
        operands[size] = from;
        hashes[size] = hash;
        slots[slot] = ++size;
        return size - 1;
    }

    private static int mixed(int hash) {
        int spread = hash * 0x9e37_79b9;
        return spread ^ spread >>> 15;
    }

    /** Twice the room, with four slots for each instruction. */
    private void grow() {
        int room = 2 * functions.length;
        functions = Arrays.copyOf(functions, room);
        operands = Arrays.copyOf(operands, room);
        hashes = Arrays.copyOf(hashes, room);
        slots = new int[4 * room];
        for (int place = 0; place < size; place++) {
            int slot = hashes[place] & slots.length - 1;
            while (slots[slot] != FREE) {
                slot = slot + 1 & slots.length - 1;
            }
            slots[slot] = place + 1;
        }
    }
}
