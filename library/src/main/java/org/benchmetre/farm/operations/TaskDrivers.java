package org.benchmetre.farm.operations;

import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.METRE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * What tasks are counted by: a closed list with the names that parts use, those that differ by irrigation system left out (the care of
 * outlets and lines belongs to irrigation), and the fruit of the year besides.
 */
public final class TaskDrivers {

    /** The fruit picked in a year; the only driver that is an amount of a year already. */
    public static final String YIELD = "yield_kg";

    private record Driver(String label, String unit, Formula amount) {}

    /** One row for each driver. */
    public final Axis axis;
    /** Names, as a task writes them. */
    public final Line key;
    /** Amount of each driver. */
    public final Line amount;

    /**
     * Declares the drivers.
     *
     * @param b where the schedule is added
     * @param g where work is done
     * @param replanted plants to set again
     * @param picked fruit picked in a year
     */
    public TaskDrivers(BudgetBuilder b, Operations.Grounds g, Line replanted, Line picked) {
        Map<String, Driver> all = new LinkedHashMap<>();
        all.put("one", new Driver("The house", "1", one()));
        all.put("bench_metres", of(g.house().benchMetres));
        all.put("bench_count", of(g.house().benchCount));
        all.put("container_count", of(g.containers().count));
        all.put("plant_count", of(g.planting().plantCount));
        all.put("replanted_plants", of(replanted));
        all.put("house_area", of(g.house().houseArea));
        all.put("substrate_volume", of(g.trough().substrateVolume));
        all.put("mulch_metres", of(g.trough().mulchMetres));
        all.put("zone_count", of(g.house().zoneCount));
        all.put(YIELD, of(picked));
        axis = Axis.rows("task_driver", "Driver", List.copyOf(all.keySet()), 0);

        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.TASK_DRIVERS);
        Line label = s.textLine("task_driver_label", "Counts", words(all, Driver::label));
        b.nameRows(axis, label);
        List<Formula> keys = all.keySet().stream().map(name -> text(name)).toList();
        key = s.textLine("task_driver_key", "Key", new Rows(axis, keys));
        s.textLine("task_driver_unit", "Unit", words(all, Driver::unit));
        List<Formula> amounts = all.values().stream()
                .map(driver -> driver.amount().counting(DRIVER))
                .toList();
        amount = s.line("task_driver_amount", "Amount", DRIVER, new Rows(axis, amounts));
    }

    private static Driver of(Line line) {
        Unit unit = line.unit();
        return new Driver(line.label(), unit.equals(METRE) ? "m" : unit.toString(), line);
    }

    private Formula words(Map<String, Driver> all, Function<Driver, String> word) {
        return new Rows(
                axis, all.values().stream().map(d -> text(word.apply(d))).toList());
    }

    /**
     * The names a task may write.
     *
     * @return in the order of the table
     */
    public List<String> names() {
        return axis.keys();
    }
}
