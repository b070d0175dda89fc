package org.benchmetre.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
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

/** The same cases written by hand, every number varying. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 5, time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class HandWrittenBenchmark {

    private static final int CASES = 2560;

    /** What the arrays of numbers hold; the arithmetic is the same. */
    @Param({"EVERY_NUMBER", "EVERY_NUMBER_READ"})
    public Varying varying;

    private HandWritten byHand;
    private double[][] inputs;
    private double[][] results;

    /** Prepares the cases. */
    @Setup
    public void prepare() {
        Budget budget = Sample.troughHouse();
        List<CellRef> cells = varying.cells(budget);
        byHand = new HandWritten(budget, cells);
        inputs = SeededCases.rows(budget, cells, CASES);
        results = new double[CASES][HandWritten.OUTPUTS.size()];
    }

    /** Computes the chosen irrigation system and the chosen plants only. */
    @Benchmark
    @OperationsPerInvocation(CASES)
    public double[][] chosen() {
        for (int i = 0; i < CASES; i++) {
            byHand.chosen(inputs[i], results[i]);
        }
        return results;
    }

    /** Computes every irrigation system and every kind of plant. */
    @Benchmark
    @OperationsPerInvocation(CASES)
    public double[][] every() {
        for (int i = 0; i < CASES; i++) {
            byHand.every(inputs[i], results[i]);
        }
        return results;
    }
}
