package org.benchmetre.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Dependencies;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Position;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.run.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Work of the sample house, worked by hand: 1,300 plants on 200 m of bench. */
class WorkTest {

    /** Products of a few doubles and differences of totals, up to some ten thousands. */
    private static final double EXACT = 1e-9;

    private final Budget sample = Sample.troughHouse();
    private final Figures figures = Figures.of(sample);
    private final Map<Line, Map<Integer, Given>> changes = new HashMap<>();

    private void fill(String id, Given value) {
        Line line = sample.line(id);
        int cell = line.axes().isEmpty() ? 0 : line.axes().get(0).indexOf("spare_1");
        changes.put(line, Map.of(cell, value));
    }

    private void fillNumber(String id, double value) {
        fill(id, Given.number(value, sample.line(id).unit()));
    }

    @Test
    void plantingIsPlantsOverPlantsAnHourInItsMonth() {
        assertThat(figures.number("task_hours", "planting")).isCloseTo(1300.0 / 350, within(EXACT));
        assertThat(figures.number("task_share_in_month", "planting", "sep")).isEqualTo(1);
        assertThat(figures.number("task_share_in_month", "planting", "oct")).isZero();
        assertThat(figures.number("task_cost", "planting")).isCloseTo(1300.0 / 350 * 16 * 1.15, within(EXACT));
        double setOut = 1300 * 1.01 / (1 - 0.015);
        assertThat(figures.number("task_hours", "replanting")).isCloseTo((setOut - 1300) / 150, within(EXACT));
    }

    @Test
    void aWeeklyTaskIsDoneEachWeekInCropAndSpreadOverItsDays() {
        Budget half = sample.with(Map.of(sample.line("month_crop_share"), halfYear()));
        Figures f = Figures.of(half);
        double days = 31 + 28.25 + 31 + 30 + 31 + 30;
        assertThat(f.number("weeks_in_crop")).isCloseTo(days / 7, within(EXACT));
        assertThat(f.number("task_hours", "feed_checks")).isCloseTo(0.25 * 3 * days / 7, within(EXACT));
        assertThat(f.number("task_share_in_month", "feed_checks", "feb") * f.number("task_hours", "feed_checks"))
                .isCloseTo(0.25 * 3 * 28.25 / 7, within(EXACT));
        assertThat(f.number("task_share_in_month", "feed_checks", "aug")).isZero();
    }

    private Map<Integer, Given> halfYear() {
        Line inCrop = sample.line("month_crop_share");
        Map<Integer, Given> values = new HashMap<>();
        for (int month = 0; month < 12; month++) {
            values.put(month, Given.number(month < 6 ? 1 : 0, inCrop.unit()));
        }
        return values;
    }

    @Test
    void pickingIsFruitOverTheRateAndPassesOverThePace() {
        double kg = figures.number("month_yield", "apr") / 0.9;
        double passes = 2.5 * 30 / 7;
        double hours = kg / 18 + passes * 200 / 1000;
        assertThat(figures.number("picking_hours_in_month", "apr")).isCloseTo(hours, within(EXACT));
        assertThat(figures.number("kg_per_hour", "apr")).isCloseTo(kg / hours, within(EXACT));
        assertThat(figures.number("kg_per_hour", "jun")).isLessThan(figures.number("kg_per_hour", "apr"));
        assertThat(figures.number("packing_hours")).isCloseTo(figures.number("yield_total") / 40, within(EXACT));
        assertThat(figures.number("packing_cost_of_one_more_kg")).isCloseTo(16 * 1.15 / 40, within(EXACT));
    }

    /** 100 kg that ripen are 90 marketable ones and 10 graded out: all 100 are picked, 90 are packed; what is missed or lost is neither. */
    @Test
    void gradedOutFruitIsPickedAndNotPacked() {
        Budget lossless = Sample.with(sample, "marketable_share=1 1");
        Figures whole = Figures.of(lossless);
        double walked = whole.number("walking_hours");
        double picked = whole.number("picking_hours") - walked;
        assertThat(figures.number("picking_hours") - walked).isCloseTo(picked, within(EXACT));
        assertThat(figures.number("packing_hours")).isCloseTo(0.9 * whole.number("packing_hours"), within(EXACT));
        assertThat(figures.number("picking_cost_of_one_more_kg")).isCloseTo(16 * 1.15 / 18 / 0.9, within(EXACT));
        Figures lost = Figures.of(Sample.with(lossless, "expected_loss=0.1 1", "harvest_losses=0 1"));
        Figures none = Figures.of(Sample.with(lossless, "harvest_losses=0 1"));
        assertThat(lost.number("picking_hours") - walked)
                .isCloseTo(0.9 * (none.number("picking_hours") - walked), within(EXACT));
        assertThat(lost.number("fruit_expected_lost")).isCloseTo(0.1 * none.number("fruit_grown"), within(EXACT));
        Figures unsaleable = Figures.of(Sample.with(sample, "marketable_share=0 1"));
        assertThat(unsaleable.number("picking_hours")).isZero();
    }

    @Test
    void withoutFruitOrADayInCropEveryFigureIsSound() {
        Line inCrop = sample.line("month_crop_share");
        Map<Integer, Given> never = new HashMap<>();
        for (int month = 0; month < 12; month++) {
            never.put(month, Given.number(0, inCrop.unit()));
        }
        Budget bare = Sample.with(sample, "yield_per_plant=0 g/(plant crop)").with(Map.of(inCrop, never));
        Figures f = Figures.of(bare);
        assertThat(f.troubles()).isEmpty();
        assertThat(f.number("picking_hours")).isZero();
        assertThat(f.number("task_hours", "feed_checks")).isZero();
        assertThat(f.number("task_hours", "runner_leaf")).isCloseTo(1300.0 / 220 * 6, within(EXACT));
    }

    @Test
    void pickingByTheFamilyCostsNoCashAndWhatTheHoursWouldEarn() {
        Figures f = Figures.of(Sample.with(sample, "picking_wage_class=family"));
        double hours = figures.number("picking_hours");
        assertThat(figures.number("labour_cash_total") - f.number("labour_cash_total"))
                .isCloseTo(hours * 16 * 1.15, within(EXACT));
        assertThat(f.number("picking_cost_total")).isCloseTo(hours * 18, within(EXACT));
        assertThat(f.number("family_hours_total") - figures.number("family_hours_total"))
                .isCloseTo(hours, within(EXACT));
    }

    @Test
    void aTaskInASpareRowCountsInItsGroupInAllTotalsAndInItsMonths() {
        fill("task_label", Given.text("Sweeping"));
        fill("task_group", Given.text("crop_care"));
        fill("task_driver", Given.text("house_area"));
        fillNumber("task_drivers_per_hour", 100);
        fillNumber("task_input_price", 0.5);
        Figures after = Figures.of(Sample.typedOver(sample, changes));
        double hours = 230.4 / 100;
        double cost = hours * 16 * 1.15;
        grows(after, "labour_hours_total", hours);
        grows(after, "hired_hours_total", hours);
        grows(after, "labour_cost_total", cost);
        grows(after, "labour_cash_total", cost);
        grows(after, "inputs_cost_total", 230.4 * 0.5);
        grows(after, "family_wage_total", 0);
        for (String[] cell : new String[][] {{"operation_hours", "crop_care"}, {"task_hours", "spare_1"}}) {
            assertThat(after.number(cell[0], cell[1]) - figures.number(cell[0], cell[1]))
                    .isCloseTo(hours, within(EXACT));
        }
        assertThat(after.number("hours_in_month", "jan") - figures.number("hours_in_month", "jan"))
                .isCloseTo(hours * figures.number("month_even_share", "jan"), within(EXACT));
    }

    private void grows(Figures after, String id, double by) {
        assertThat(after.number(id) - figures.number(id)).as(id).isCloseTo(by, within(EXACT));
    }

    @Test
    void aTaskOfAnUnknownGroupCountsAsOtherTasks() {
        fill("task_group", Given.text("Sundries"));
        fill("task_driver", Given.text("one"));
        fillNumber("task_hours_per_driver", 7);
        Figures after = Figures.of(Sample.typedOver(sample, changes));
        assertThat(after.number("operation_hours", "other_tasks")).isCloseTo(7, within(EXACT));
    }

    @Test
    void sharesTypedIntoTheWorkbookThatDoNotAddToOneAreWarnedOf() {
        Line shares = sample.line("task_month_share");
        int planting = shares.axes().get(0).indexOf("planting");
        int backfilling = shares.axes().get(0).indexOf("backfilling");
        int sep = shares.cellAt(Position.NONE
                .with(shares.axes().get(0), planting)
                .with(shares.axes().get(1), 8));
        Figures after =
                Figures.of(Sample.typedOver(sample, Map.of(shares, Map.of(sep, Given.number(0.9, shares.unit())))));
        Line warning = sample.line("task_share_warning");
        assertThat(after.text(warning, planting)).contains("do not add to 1");
        assertThat(after.text(warning, backfilling)).isEmpty();
        assertThat(figures.text(warning, planting)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"picking_rate, 6, 18, 30", "packing_rate, 8, 40, 60", "bent_root_loss, NaN, 0.185, NaN"})
    void defaultsAreTheRatesOfTheTradeOrPublished(String id, double low, double typical, double high) {
        Plausible usual = sample.entry(sample.line(id)).orElseThrow().plausible();
        assertThat(usual).isEqualTo(new Plausible(low, typical, high));
    }

    @ParameterizedTest
    @CsvSource({"planting, 250, 500", "runner_leaf, 150, 300", "truss_care, 200, 400", "clear_out, 10, 25"})
    void ratesOfTheSampleAreWithinWhatIsCommon(String task, double low, double high) {
        assertThat(figures.number("task_drivers_per_hour", task)).isBetween(low, high);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "labour_cost_total",
                "labour_cash_total",
                "family_wage_total",
                "inputs_cost_total",
                "people_at_peak_whole",
                "picking_cost_per_kg"
            })
    void everyEntryBehindATotalSaysWhereItComesFrom(String total) {
        Deque<CellRef> open = new ArrayDeque<>(Set.of(new CellRef(sample.line(total), 0)));
        Set<CellRef> seen = new HashSet<>(open);
        int entries = 0;
        while (!open.isEmpty()) {
            CellRef cell = open.pop();
            if (sample.entry(cell.line()).isPresent()) {
                Given given = sample.given(cell.line()).get(cell.cell());
                assertThat(!given.filled() || !given.source().isBlank())
                        .as(cell.line().address(cell.cell()))
                        .isTrue();
                entries += given.filled() ? 1 : 0;
                continue;
            }
            Dependencies.of(cell.line(), sample.formula(cell.line()).orElseThrow(), cell.cell()).stream()
                    .filter(seen::add)
                    .forEach(open::push);
        }
        assertThat(entries).isGreaterThan(20);
    }
}
