package org.benchmetre.budget.run;

import java.util.BitSet;

/** Which instructions of a program read each register. */
final class Readers {

    private final Program program;
    private final int[] first;
    private final int[] readers;

    Readers(Program program) {
        this.program = program;
        this.first = new int[program.registers() + 1];
        for (int[] from : program.arguments()) {
            for (int register : from) {
                first[register + 1]++;
            }
        }
        for (int register = 0; register < program.registers(); register++) {
            first[register + 1] += first[register];
        }
        this.readers = new int[first[program.registers()]];
        int[] next = first.clone();
        for (int i = 0; i < program.arguments().length; i++) {
            for (int register : program.arguments()[i]) {
                readers[next[register]++] = i;
            }
        }
    }

    /** The instructions whose result can change with some registers. */
    BitSet reached(int[] registers) {
        BitSet reached = new BitSet();
        for (int register : registers) {
            addReaders(register, reached);
        }
        for (int i = reached.nextSetBit(0); i >= 0; i = reached.nextSetBit(i + 1)) {
            addReaders(program.firstResult() + i, reached);
        }
        return reached;
    }

    private void addReaders(int register, BitSet to) {
        for (int k = first[register]; k < first[register + 1]; k++) {
            to.set(readers[k]);
        }
    }
}
