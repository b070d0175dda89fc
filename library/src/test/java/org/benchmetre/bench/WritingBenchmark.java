package org.benchmetre.bench;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.benchmetre.FarmWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;
import org.benchmetre.workbook.WorkbookWriter;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The trough house as a workbook, against the spreadsheet library writing as many cells and styles: see {@link WrittenByPoi}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class WritingBenchmark {

    private WorkbookWriter writer;
    private Figures figures;
    private WrittenByPoi yardstick;

    /** Computes the figures and counts the cells of their workbook. */
    @Setup
    public void prepare() throws IOException {
        Budget budget = Sample.troughHouse();
        writer = new WorkbookWriter(FarmWorkbook.setup(budget));
        figures = Figures.of(budget);
        yardstick = WrittenByPoi.asManyAs(ours());
        WrittenByPoi same = WrittenByPoi.asManyAs(poi());
        if (!same.equals(yardstick)) {
            throw new IllegalStateException(
                    "Wanted " + yardstick + ", but the spreadsheet library wrote " + same + ".");
        }
    }

    /** Everything that the workbook of the trough house has. */
    @Benchmark
    public byte[] ours() throws IOException {
        return writer.bytes(figures);
    }

    /** As many cells, and nothing else. */
    @Benchmark
    public byte[] poi() throws IOException {
        return yardstick.write();
    }
}
