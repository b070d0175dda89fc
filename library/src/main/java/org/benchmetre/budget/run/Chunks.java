package org.benchmetre.budget.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.FormulaException;

/** Takes cases from an iterator, a block at a time. */
final class Chunks implements Iterator<Chunk> {

    private final Cases.Run run;
    private final Iterator<double[]> cases;
    private final List<CellRef> wanted;
    private final CaseCheck check;
    private long taken;

    Chunks(Cases.Run run, Iterator<double[]> cases, List<CellRef> wanted, CaseCheck check) {
        this.run = run;
        this.cases = cases;
        this.wanted = List.copyOf(wanted);
        this.check = check;
    }

    @Override
    public boolean hasNext() {
        return cases.hasNext();
    }

    @Override
    public Chunk next() {
        if (!cases.hasNext()) {
            throw new NoSuchElementException("There are no cases after the first " + taken + ".");
        }
        List<CellRef> cut = run.cases().cut();
        List<double[]> rows = new ArrayList<>();
        while (cases.hasNext() && rows.size() < BlockRun.LANES) {
            double[] row = cases.next();
            if (row.length != cut.size()) {
                throw new FormulaException("Case " + (taken + rows.size()) + " has " + row.length
                        + " values, but the cut has " + cut.size() + " cells.");
            }
            rows.add(row.clone());
        }
        double[][] inputs = rows.toArray(double[][]::new);
        Chunk chunk = new Chunk(run, wanted, taken, inputs, refused(inputs));
        taken += inputs.length;
        return chunk;
    }

    private Map<Integer, List<String>> refused(double[][] inputs) {
        Map<Integer, List<String>> all = new HashMap<>();
        List<CellRef> cut = run.cases().cut();
        for (int k = 0; k < cut.size(); k++) {
            double[] column = new double[inputs.length];
            for (int i = 0; i < column.length; i++) {
                column[i] = inputs[i][k];
            }
            check.refused(cut.get(k), column, run.texts())
                    .forEach((at, why) ->
                            all.computeIfAbsent(at, any -> new ArrayList<>()).add(why));
        }
        return all;
    }
}
