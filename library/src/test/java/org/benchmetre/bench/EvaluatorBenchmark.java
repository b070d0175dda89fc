package org.benchmetre.bench;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Cases;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** The written workbook, loaded once: one entry is changed and the spreadsheet library's evaluator asked for the total. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class EvaluatorBenchmark {

    private static final double[] LENGTHS = {18, 20.5, 23, 26.5};

    private XSSFWorkbook workbook;
    private FormulaEvaluator evaluator;
    private Cell entry;
    private Cell total;
    private int turn;

    /** Writes and loads the workbook, and makes sure that it answers as the budget does. */
    @Setup
    public void prepare() throws IOException {
        Budget budget = Sample.troughHouse();
        workbook = new XSSFWorkbook(new ByteArrayInputStream(new WorkbookWriter().bytes(Figures.of(budget))));
        evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        entry = named("bench_length");
        total = named("first_cost_total");
        Line wanted = budget.line("first_cost_total");
        Cases.Run run = Cases.of(budget, List.of(new CellRef(budget.line("bench_length"), 0)), List.of(wanted))
                .start();
        for (double length : LENGTHS) {
            double expected = run.one(new double[] {length}, List.of(new CellRef(wanted, 0)))[0];
            double found = oneEntryChanged();
            if (!(Math.abs(found - expected) <= 1e-9 * expected)) {
                throw new IllegalStateException("For a bench length of " + length
                        + " m the workbook has a first cost of " + found + ", but the budget has " + expected + ".");
            }
        }
    }

    private Cell named(String name) {
        CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
        return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
    }

    /** Closes the workbook. */
    @TearDown
    public void close() throws IOException {
        workbook.close();
    }

    /** Changes the bench length and evaluates the total. */
    @Benchmark
    public double oneEntryChanged() {
        entry.setCellValue(LENGTHS[turn++ % LENGTHS.length]);
        evaluator.notifyUpdateCell(entry);
        return evaluator.evaluate(total).getNumberValue();
    }
}
