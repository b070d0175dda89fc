package org.benchmetre.bench;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.run.Cases;
import org.benchmetre.farm.Sample;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;

/**
 * Runs the benchmarks and prints microseconds for one case and how they compare. What was not run is a dash. Single cases and blocks
 * run in virtual machines of their own, so that neither spoils the other.
 */
public final class Ratios {

    private static final String BLOCKS = "BlocksBenchmark.cases";
    private static final String ONE = "OneCaseBenchmark.cases";
    private static final String BY_HAND = "HandWrittenBenchmark.chosen";
    private static final String ALL_WAYS = "HandWrittenBenchmark.every";
    private static final String EVALUATOR = "EvaluatorBenchmark.oneEntryChanged";
    private static final String WRITING = "WritingBenchmark.ours";
    private static final String WRITING_BY_POI = "WritingBenchmark.poi";

    /** In microseconds, the unit of all scores. */
    private static final double MILLISECOND = 1000;

    private static final String HEAD = "%-18s %8s %13s %8s %8s %8s %9s";
    private static final String TIMES = "%-18s %8d %13d %8.3f %8.3f %8.3f %9.3f";
    private static final String RATIO_HEAD = "%-18s %15s %16s %11s %11s";
    private static final String RATIOS = "%-18s %15.2f %16.2f %11.1f %11.0f";

    private final Map<String, Double> scores = new HashMap<>();
    private final StringBuilder text = new StringBuilder();

    private Ratios(Collection<RunResult> results) {
        for (RunResult result : results) {
            scores.put(nameOf(result.getParams()), result.getPrimaryResult().getScore());
        }
    }

    /**
     * Runs benchmarks, each in a virtual machine of its own.
     *
     * @param arguments options of JMH: a regular expression for the names wanted, forks, iterations
     * @throws CommandLineOptionException when an option is unknown
     * @throws RunnerException when a benchmark fails
     */
    public static void main(String[] arguments) throws CommandLineOptionException, RunnerException {
        Collection<RunResult> results = new Runner(new CommandLineOptions(arguments)).run();
        System.out.print(new Ratios(results).table());
    }

    private static String nameOf(BenchmarkParams params) {
        String[] parts = params.getBenchmark().split("\\.");
        String name = parts[parts.length - 2] + "." + parts[parts.length - 1];
        return params.getParamsKeys().contains("varying") ? name + "." + params.getParam("varying") : name;
    }

    private double score(String benchmark, Varying varying) {
        return score(benchmark + "." + varying);
    }

    private double score(String benchmark) {
        return scores.getOrDefault(benchmark, Double.NaN);
    }

    private String table() {
        double evaluator = score(EVALUATOR);
        line("%nMicroseconds a case: %d figures of the trough house", HandWritten.OUTPUTS.size());
        line(HEAD, "what varies", "numbers", "instructions", "blocks", "one", "by hand", "all systems");
        Arrays.stream(Varying.values()).forEach(this::times);
        line("POI's evaluator, one entry changed: %.0f", evaluator);
        line(
                "By hand: the chosen irrigation system and plants alone; all systems: every one of them, as the budget computes.");
        line("%nRatios");
        line(RATIO_HEAD, "what varies", "blocks/by hand", "blocks/all systems", "one/blocks", "POI/blocks");
        Arrays.stream(Varying.values()).forEach(varying -> ratios(varying, evaluator));
        line(
                "By hand every number is read anew in each case, so the rows below the second compare with the second's time.");
        writing();
        return text.toString();
    }

    /** Milliseconds to write the workbook, and how often that is the time for its cells alone by the spreadsheet library. */
    private void writing() {
        line("%nWriting the workbook of the trough house, milliseconds");
        line("%-18s %12s %8s", "written", "cells by POI", "ratio");
        double written = score(WRITING) / MILLISECOND;
        double byPoi = score(WRITING_BY_POI) / MILLISECOND;
        line("%-18.1f %12.1f %8.2f", written, byPoi, written / byPoi);
    }

    private void times(Varying varying) {
        Budget budget = Sample.troughHouse();
        List<CellRef> cells = varying.cells(budget);
        line(
                TIMES,
                words(varying),
                cells.size(),
                Cases.of(budget, cells, HandWritten.outputs(budget)).instructions(),
                score(BLOCKS, varying),
                score(ONE, varying),
                score(BY_HAND, varying),
                score(ALL_WAYS, varying));
    }

    /** What is written by hand folds nothing: it takes as long however few numbers vary. */
    private void ratios(Varying varying, double evaluator) {
        Varying written = varying == Varying.EVERY_NUMBER ? varying : Varying.EVERY_NUMBER_READ;
        double blocks = score(BLOCKS, varying);
        line(
                RATIOS,
                words(varying),
                blocks / score(BY_HAND, written),
                blocks / score(ALL_WAYS, written),
                score(ONE, varying) / blocks,
                evaluator / blocks);
    }

    private static String words(Varying varying) {
        return varying.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format + "%n", values).replace("NaN", "  -"));
    }
}
