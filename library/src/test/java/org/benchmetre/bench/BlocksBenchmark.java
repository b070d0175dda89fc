package org.benchmetre.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.run.Cases;
import org.benchmetre.farm.Sample;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Many cases at once, in blocks. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class BlocksBenchmark {

    private static final int CASES = 2560;

    /** What varies. */
    @Param
    public Varying varying;

    private Cases.Run run;
    private double[][] inputs;
    private List<CellRef> wanted;

    /** Prepares the program and its cases. */
    @Setup
    public void prepare() {
        Budget budget = Sample.troughHouse();
        List<CellRef> cells = varying.cells(budget);
        run = Cases.of(budget, cells, HandWritten.outputs(budget)).start();
        inputs = SeededCases.columns(budget, cells, CASES);
        wanted = HandWritten.outputCells(budget);
    }

    /** Computes all cases; the time is for one. */
    @Benchmark
    @OperationsPerInvocation(CASES)
    public double[][] cases() {
        return run.blocks(inputs, wanted);
    }
}
