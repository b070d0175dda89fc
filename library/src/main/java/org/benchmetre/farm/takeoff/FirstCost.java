package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.HOUR;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.PlantStock;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.Ways;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * First cost: what it takes to build. Parts by their groups, first plants, and installation labour, for every way to water; the
 * chosen way is the total. Each amount reaches the total along one path: part or hours or plants, group by way, group, total.
 * Waste is bought but not installed, so hours follow the quantity without it. Common practice, no source.
 */
public final class FirstCost {

    private static final String OTHER = "Other parts";

    /** One row for each group of cost. */
    public final Axis axis;

    private final List<String> labels = new ArrayList<>();

    /** What first cost is made of. */
    public record Parts(
            Materials materials, TakeOff takeOff, Ways ways, PlantStock stock, House house, Planting planting) {}

    /** Choices and wage. */
    public record Choices(Line way, Line stock, Line wage) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param summary the schedule of results for a reader
     * @param p what first cost is made of
     * @param chosen choices and wage
     */
    public FirstCost(BudgetBuilder b, ScheduleBuilder summary, Parts p, Choices chosen) {
        labels.addAll(p.materials().groups());
        labels.add(OTHER);
        int partGroups = labels.size();
        labels.add("Plants");
        labels.add("Installation labour");
        axis = Axis.rows("group", "Group", labels.stream().map(FirstCost::keyOf).toList(), 0);

        ScheduleBuilder groups = b.schedule(Sheets.SUMMARY, "First cost by group, for the chosen way to water");
        ScheduleBuilder perMetre = b.schedule(Sheets.SUMMARY, "First cost per metre of bench, all ways to water");
        ScheduleBuilder parts = b.schedule(Sheets.MATERIALS, "Parts, by group and hours");
        ScheduleBuilder byWay = b.schedule(Sheets.IRRIGATION, "First cost by group and way to water");
        ScheduleBuilder ways = b.schedule(Sheets.IRRIGATION, "First cost by way to water");

        Line groupLabel = groups.textLine(
                "group_label",
                "Group",
                new Rows(axis, labels.stream().map(l -> text(l)).toList()));
        b.nameRows(axis, groupLabel);
        Materials m = p.materials();
        parts.textLine("counted_part", "Part", m.label);
        Line counted = parts.textLine(
                "material_group_counted",
                "Group counted",
                when(countWhere(groupLabel, m.group, axis).isPositive(), m.group, text(OTHER)));
        Line hoursPerDriver = parts.line(
                "material_hours_per_driver",
                "Hours a driver",
                HOUR.over(Unit.parse("driver")),
                m.rate.times(m.installHours));

        Axis wayAxis = p.ways().axis;
        ways.textLine("way_cost_label", "Way to water", p.ways().label);
        Line hours = ways.line(
                "way_install_hours",
                "Hours to install",
                HOUR,
                sumProduct(p.takeOff().wayAmount, hoursPerDriver, m.axis));
        Line labour = ways.line("way_install_cost", "Installation labour", MONEY, hours.times(chosen.wage()));
        Line plants = lookedUp(summary, p.stock(), chosen.stock());

        List<Formula> rows = new ArrayList<>();
        for (int i = 0; i < partGroups; i++) {
            rows.add(sumWhere(p.takeOff().wayCost, counted, text(labels.get(i)), m.axis));
        }
        rows.add(p.ways().whereFilled(plants));
        rows.add(labour);
        Line groupByWay = byWay.line("group_way_first_cost", "First cost, by group", MONEY, new Rows(axis, rows));

        Unit perMetreUnit = Unit.parse("money/m");
        Line benchMetres = p.house().benchMetres;
        Line wayTotal = ways.line("way_first_cost", "First cost", MONEY, sum(groupByWay, axis));
        ways.line("way_first_cost_per_metre", "First cost per metre", perMetreUnit, wayTotal.over(benchMetres));
        perMetre.line(
                "group_way_first_cost_per_metre",
                "First cost per metre of bench, by group",
                perMetreUnit,
                groupByWay.over(benchMetres));
        Line group =
                groups.line("group_first_cost", "First cost", MONEY, lookup(groupByWay, p.ways().key, chosen.way()));
        groups.line("group_first_cost_per_metre", "First cost per metre", perMetreUnit, group.over(benchMetres));
        results(summary, p, sum(group, axis));
    }

    private static Line lookedUp(ScheduleBuilder summary, PlantStock stock, Line choice) {
        return summary.line("plants_first_cost", "First plants", MONEY, lookup(stock.firstCost, stock.key, choice));
    }

    private static void results(ScheduleBuilder s, Parts p, Formula all) {
        Line total = s.line("first_cost_total", "First cost, in total", MONEY, all);
        Line metre = s.line(
                "first_cost_per_metre",
                "First cost per metre of bench",
                Unit.parse("money/m"),
                total.over(p.house().benchMetres));
        s.line(
                "first_cost_per_foot",
                "First cost per foot of bench",
                Unit.parse("money/ft"),
                metre.in(Unit.parse("money/ft")));
        s.line(
                "first_cost_per_plant",
                "First cost per plant",
                Unit.parse("money/plant"),
                total.over(p.planting().plantCount));
        Line area = s.line(
                "first_cost_per_area",
                "First cost per m² of floor",
                Unit.parse("money/m2"),
                total.over(p.house().houseArea));
        s.line(
                "first_cost_per_square_foot",
                "First cost per square foot of floor",
                Unit.parse("money/ft2"),
                area.in(Unit.parse("money/ft2")));
    }

    private static String keyOf(String label) {
        String key =
                label.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_+|_+$", "");
        return key.isEmpty() ? "group_" + Integer.toHexString(label.hashCode()) : key;
    }
}
