package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that work keeps for any entries and any task list: arithmetic anyone can redo, so no source is needed. */
class LabourLawsTest {

    /** Sums of a few hundred doubles, in another order. */
    private static final double RELATIVE = 1e-11;

    private static final Budget SAMPLE = Sample.troughHouse();
    private static final List<String> CLASSES = List.of("general", "skilled", "family");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    /** A seeded scenario whose tasks have other hours, times, units, patterns and workers as well. */
    private static Figures figures(long seed) {
        SplittableRandom random = new SplittableRandom(-seed);
        Map<Line, Map<Integer, Given>> changes = new HashMap<>();
        Line hours = SAMPLE.line("task_hours_per_driver");
        for (int task = 0; task < hours.axes().get(0).filled(); task++) {
            put(changes, "task_hours_per_driver", task, random.nextDouble() * 0.1);
            put(changes, "task_drivers_per_hour", task, random.nextBoolean() ? 0 : 20 + random.nextDouble() * 400);
            put(changes, "task_times", task, 0.5 + random.nextDouble() * 8);
            put(changes, "task_input_price", task, random.nextDouble() * 3);
            put(changes, "task_times_unit", task, any(random, List.of("a", "crop", "wk")));
            put(changes, "task_wage_class", task, any(random, CLASSES));
            putShares(changes, task, random);
        }
        for (int task : List.of(0, 4)) {
            put(changes, "task_driver", task, "yield_kg");
        }
        put(changes, "picking_wage_class", 0, any(random, CLASSES));
        put(changes, "packing_wage_class", 0, any(random, CLASSES));
        IntStream.range(0, 12).forEach(month -> put(changes, "month_crop_share", month, random.nextDouble()));
        IntStream.range(0, 12).forEach(month -> put(changes, "pick_passes", month, random.nextInt(20)));
        return Figures.of(Sample.typedOver(Seeded.budget(SAMPLE, seed), changes));
    }

    private static void putShares(Map<Line, Map<Integer, Given>> changes, int task, SplittableRandom random) {
        String pattern = any(random, List.of("even", "yield", "months"));
        put(changes, "task_pattern", task, pattern);
        double[] parts =
                IntStream.range(0, 12).mapToDouble(i -> random.nextDouble()).toArray();
        double all = Arrays.stream(parts).sum();
        for (int month = 0; month < 12; month++) {
            put(changes, "task_month_share", task * 12 + month, parts[month] / all);
        }
    }

    private static String any(SplittableRandom random, List<String> words) {
        return words.get(random.nextInt(words.size()));
    }

    private static void put(Map<Line, Map<Integer, Given>> changes, String id, int cell, double value) {
        Line line = SAMPLE.line(id);
        changes.computeIfAbsent(line, l -> new HashMap<>()).put(cell, Given.number(value, line.unit()));
    }

    private static void put(Map<Line, Map<Integer, Given>> changes, String id, int cell, String value) {
        changes.computeIfAbsent(SAMPLE.line(id), l -> new HashMap<>()).put(cell, Given.text(value));
    }

    private static double sumOf(Figures figures, String id) {
        Line line = SAMPLE.line(id);
        return IntStream.range(0, line.size())
                .mapToDouble(i -> figures.number(line, i))
                .sum();
    }

    private static void same(double found, double expected, String what) {
        assertThat(found).as(what).isCloseTo(expected, within(RELATIVE * Math.abs(expected) + 1e-12));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void workKeepsItsLaws(long seed) {
        Figures f = figures(seed);
        assertThat(f.troubles()).isEmpty();
        monthsAddToTheYear(f);
        eachTaskTakesItsHoursEachTimeAsOftenAsItIsDone(f);
        groupsAddToTheTotalAndSoDoTasksWithPickingAndPacking(f);
        workIsHiredOrOfTheFamilyAndFamilyWorkCostsNoCash(f);
        theMonthWithMostWorkSaysHowManyPeopleItTakes(f);
        aPassThatFindsLessFruitPicksFewerKilogramsAnHour(f);
        moreFruitAddsTheCostOfPickingAndPackingItAndNoWalking(f);
    }

    private static void monthsAddToTheYear(Figures f) {
        assertThat(f.number("labour_hours_total")).isPositive();
        same(sumOf(f, "hours_in_month"), f.number("labour_hours_total"), "hours");
        same(sumOf(f, "labour_cost_in_month"), f.number("labour_cost_total"), "cost");
        same(sumOf(f, "labour_cash_in_month"), f.number("labour_cash_total"), "cash");
        same(sumOf(f, "inputs_cost_in_month"), f.number("inputs_cost_total"), "inputs");
        same(sumOf(f, "hired_hours"), f.number("hired_hours_total"), "hired");
    }

    private static void eachTaskTakesItsHoursEachTimeAsOftenAsItIsDone(Figures f) {
        Line hours = SAMPLE.line("task_hours");
        for (int task = 0; task < hours.size(); task++) {
            double driver = f.number(SAMPLE.line("task_amount"), task);
            double rate = f.number(SAMPLE.line("task_drivers_per_hour"), task);
            double each = rate > 0 ? driver / rate : driver * f.number(SAMPLE.line("task_hours_per_driver"), task);
            double expected = each * f.number(SAMPLE.line("task_times_a_year"), task);
            same(f.number(hours, task), expected, hours.address(task));
        }
    }

    private static void groupsAddToTheTotalAndSoDoTasksWithPickingAndPacking(Figures f) {
        double hours = sumOf(f, "task_hours") + f.number("picking_hours") + f.number("packing_hours");
        double cost = sumOf(f, "task_cost") + f.number("picking_cost_total") + f.number("packing_cost_total");
        same(sumOf(f, "operation_hours"), hours, "hours");
        same(f.number("labour_hours_total"), hours + elsewhere(f), "all hours");
        same(sumOf(f, "operation_cost"), cost, "cost");
        same(f.number("labour_cost_total"), cost, "all cost");
        same(f.number("inputs_cost_total"), sumOf(f, "task_input_cost"), "inputs");
        same(sumOf(f, "operation_input_cost"), sumOf(f, "task_input_cost"), "inputs by group");
    }

    private static void workIsHiredOrOfTheFamilyAndFamilyWorkCostsNoCash(Figures f) {
        same(
                f.number("hired_hours_total") + f.number("family_hours_total") + elsewhere(f),
                f.number("labour_hours_total"),
                "hired and family, and what is paid elsewhere");
        same(
                f.number("labour_cash_total") + f.number("family_wage_total"),
                f.number("labour_cost_total"),
                "cash and what the family would earn");
        Line cost = SAMPLE.line("task_cost");
        double cash = 0;
        for (int task = 0; task < cost.size(); task++) {
            boolean family = f.text(SAMPLE.line("task_done_by"), task).equals("family");
            cash += family ? 0 : f.number(cost, task);
        }
        for (String work : List.of("picking", "packing")) {
            cash += f.text(work + "_wage_class").equals("family") ? 0 : f.number(work + "_cost_total");
        }
        same(f.number("labour_cash_total"), cash, "cash of tasks, picking and packing");
    }

    /** Hours that irrigation and the parts pay. */
    private static double elsewhere(Figures f) {
        return f.number("care_hours_total") + f.number("installing_hours_total");
    }

    private static void theMonthWithMostWorkSaysHowManyPeopleItTakes(Figures f) {
        Line months = SAMPLE.line("hours_in_month");
        double most = IntStream.range(0, 12)
                .mapToDouble(month -> f.number(months, month))
                .max()
                .orElseThrow();
        same(f.number("people_at_peak") * f.number("hours_per_person_month"), most, "people");
        double whole = f.number("people_at_peak_whole");
        assertThat(whole).isEqualTo(Math.rint(whole)).isGreaterThan(f.number("people_at_peak") - 1e-6);
        assertThat(whole - f.number("people_at_peak")).isLessThan(1);
    }

    private static void aPassThatFindsLessFruitPicksFewerKilogramsAnHour(Figures f) {
        Line perHour = SAMPLE.line("kg_per_hour");
        Line fruit = SAMPLE.line("month_yield_share");
        Line passes = SAMPLE.line("pick_passes_in_month");
        for (int a = 0; a < 12; a++) {
            if (!(f.number(fruit, a) > 0)) {
                assertThat(f.hasReason(perHour, a)).isTrue();
                assertThat(f.number(SAMPLE.line("picking_hours_in_month"), a)).isZero();
                continue;
            }
            assertThat(f.number(perHour, a)).isPositive().isLessThan(f.number("picking_rate"));
            for (int b = 0; b < 12; b++) {
                double found = f.number(fruit, a) / f.number(passes, a);
                if (f.number(fruit, b) > 0 && f.number(fruit, b) / f.number(passes, b) > found * 1.001) {
                    assertThat(f.number(perHour, b)).isGreaterThan(f.number(perHour, a));
                }
            }
        }
    }

    private static void moreFruitAddsTheCostOfPickingAndPackingItAndNoWalking(Figures f) {
        double gross = f.number("yield_per_plant");
        Figures more = Figures.of(Sample.with(f.budget(), "yield_per_plant=" + gross * 1.5 + " g/(plant crop)"));
        double kg = more.number("yield_total") - f.number("yield_total");
        assertThat(kg).isPositive();
        for (String work : List.of("picking", "packing")) {
            double added = more.number(work + "_cost_total") - f.number(work + "_cost_total");
            double one = f.number(work + "_cost_of_one_more_kg");
            assertThat(added).as(work).isCloseTo(one * kg, within(1e-9 * more.number(work + "_cost_total")));
        }
        same(more.number("yield_tasks_cost"), f.number("yield_tasks_cost") * 1.5, "tasks counted by fruit");
        assertThat(f.number("yield_tasks_cost")).isPositive();
        double perKg = f.number("picking_cost_of_one_more_kg") + f.number("packing_cost_of_one_more_kg");
        double moved = perKg * kg + f.number("yield_tasks_cost") * 0.5;
        double costs = more.number("labour_cost_total") + more.number("inputs_cost_total");
        assertThat(costs - f.number("labour_cost_total") - f.number("inputs_cost_total"))
                .as("all that moves with yield")
                .isCloseTo(moved, within(1e-9 * costs));
        assertThat(more.number("picking_cost_per_kg")).isLessThan(f.number("picking_cost_per_kg"));
    }
}
