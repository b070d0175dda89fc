package org.benchmetre.budget.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchmetre.budget.CellRef;

/** Some hundred cases, computed together. */
public final class Chunk {

    private final Cases.Run run;
    private final List<CellRef> wanted;
    private final long first;
    private final double[][] inputs;
    private final Map<Integer, List<String>> refused;
    private final double[][] values;

    Chunk(Cases.Run run, List<CellRef> wanted, long first, double[][] inputs, Map<Integer, List<String>> refused) {
        this.run = run;
        this.wanted = wanted;
        this.first = first;
        this.inputs = inputs;
        this.refused = refused;
        this.values = computed();
    }

    private double[][] computed() {
        int[] accepted = IntStream.range(0, size())
                .filter(at -> !refused.containsKey(at))
                .toArray();
        double[][] columns = new double[run.cases().cut().size()][accepted.length];
        for (int k = 0; k < columns.length; k++) {
            for (int i = 0; i < accepted.length; i++) {
                columns[k][i] = inputs[accepted[i]][k];
            }
        }
        double[][] found = run.blocks(columns, wanted);
        double[][] all = new double[wanted.size()][size()];
        for (int k = 0; k < all.length; k++) {
            Arrays.fill(all[k], Double.NaN);
            for (int i = 0; i < accepted.length; i++) {
                all[k][accepted[i]] = found[k][columns.length == 0 ? 0 : i];
            }
        }
        return all;
    }

    /**
     * The place of its first case among all cases.
     *
     * @return from 0
     */
    public long first() {
        return first;
    }

    /**
     * How many cases it has.
     *
     * @return at least 1
     */
    public int size() {
        return inputs.length;
    }

    /**
     * What was given.
     *
     * @param at the case, from 0 within the chunk
     * @return the value of each cell of the cut
     */
    public double[] inputs(int at) {
        return inputs[at].clone();
    }

    /**
     * What was computed.
     *
     * @param output which of the wanted cells, from 0
     * @param at the case, from 0 within the chunk
     * @return the value; a NaN where the case was refused or has no finite value, or as {@link Cases.Run#blocks} says
     */
    public double value(int output, int at) {
        return values[output][at];
    }

    /**
     * Whether a case was not run.
     *
     * @param at the case, from 0 within the chunk
     * @return true when a value of it was refused
     */
    public boolean isRefused(int at) {
        return refused.containsKey(at);
    }

    /**
     * Why a case was refused, or why values of it are not finite.
     *
     * @param at the case, from 0 within the chunk
     * @return a sentence for each cause; empty when all is well
     */
    public List<String> troubles(int at) {
        return isRefused(at) ? new ArrayList<>(refused.get(at)) : run.troubles(inputs[at], wanted);
    }
}
