package org.benchmetre.farm.takeoff;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.countWhere;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumProduct;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.HOUR;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.PlantOrder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.layout.House;
import org.benchmetre.farm.layout.Planting;

/**
 * First cost: what it takes to build. Parts by their groups, first plants, installation labour, and the sums that stand for parts which
 * are not listed, for every irrigation system; the chosen way is the total. Each amount reaches the total along one path: part or hours or plants, group by way, group, total.
 * Waste is bought but not installed, so hours follow the quantity without it. Common practice, no source.
 */
public final class FirstCost {

    /** What it is made of. */
    public final Parts parts;
    /** Choices and wage. */
    public final Choices chosen;
    /** The groups of cost. */
    public final CostGroups groups;
    /** Labels of the groups of cost. */
    public final Line groupLabel;

    /** Installation labour, money, by irrigation system. */
    public final Line wayLabour;

    /** First cost per metre of bench, money/m, by irrigation system. */
    public final Line wayPerMetre;

    /** First cost of the plants, money. */
    public final Line plants;

    /** Plants as they are ordered. */
    public final PlantOrder order;

    /** First cost, money. */
    public final Line total;
    /** First cost per metre of bench, money/m. */
    public final Line perMetre;
    /** First cost per square metre of floor, money/m2. */
    public final Line perArea;

    /**
     * What first cost is made of.
     *
     * @param materials parts as entered
     * @param takeOff their quantities and costs
     * @param ways irrigation systems
     * @param order plants of the crops
     * @param house benches and floor
     * @param planting plants
     */
    public record Parts(
            Materials materials, TakeOff takeOff, Ways ways, PlantOrder order, House house, Planting planting) {}

    /**
     * Choices and wage.
     *
     * @param way key of the irrigation system that is counted
     * @param wage wage of installation labour
     */
    public record Choices(Line way, Line wage) {}

    /**
     * Sums that stand for parts which are not listed.
     *
     * @param house the house, by area, the same for every irrigation system
     * @param contingency contingency on parts, by irrigation system
     */
    public record Lumps(Line house, Line contingency) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param summary the schedule of results for a reader
     * @param p what first cost is made of
     * @param chosen choices and wage
     * @param costs the groups of cost
     * @param lumps sums that stand for parts which are not listed
     */
    public FirstCost(BudgetBuilder b, ScheduleBuilder summary, Parts p, Choices chosen, CostGroups costs, Lumps lumps) {
        parts = p;
        this.chosen = chosen;
        groups = costs;
        ScheduleBuilder byGroup = b.schedule(Sheets.SUMMARY, "First cost by group, for the chosen irrigation system");
        ScheduleBuilder partHours = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        ScheduleBuilder byWay = b.schedule(Sheets.IRRIGATION, "First cost by group and irrigation system");
        ScheduleBuilder ways = b.shared(Sheets.IRRIGATION, Tables.SYSTEM_COSTS);

        groupLabel = byGroup.textLine("group_label", "Group", costs.labels());
        Line groupKey = byGroup.textLine("group_key", "Key of the group", costs.keys());
        b.nameRows(costs.axis, groupLabel);
        Materials m = p.materials();
        Line counted = partHours.textLine(
                "material_group_counted",
                "Group counted",
                when(
                        m.driver.isFilled(),
                        when(
                                and(
                                        m.group.isFilled(),
                                        countWhere(groupKey, m.group, costs.axis)
                                                .isPositive()),
                                m.group,
                                costs.otherKey()),
                        text("")));
        costs.countBy(counted);
        Line hoursPerDriver = partHours.line(
                "material_hours_per_driver",
                "Hours a driver",
                HOUR.over(Unit.parse("driver")),
                p.takeOff().rate.times(m.installHours));

        Line hours = ways.line(
                "way_install_hours",
                "Hours to install",
                HOUR,
                sumProduct(p.takeOff().wayAmount, hoursPerDriver, m.axis));
        wayLabour = ways.line("way_install_cost", "Installation labour", MONEY, hours.times(chosen.wage()));
        order = p.order();
        plants = order.exact;

        Formula byPart = costs.rows(
                p.takeOff().wayCost,
                List.of(
                        p.ways().whereFilled(plants),
                        wayLabour,
                        p.ways().whereFilled(lumps.house()),
                        lumps.contingency(),
                        none(MONEY)),
                costs.withoutRunning());
        Line groupByWay = byWay.line("group_way_first_cost", "First cost, by group", MONEY, byPart);

        Unit perMetreUnit = Unit.parse("money/m");
        Line benchMetres = p.house().benchMetres;
        Line wayTotal = ways.line("way_first_cost", "First cost", MONEY, sum(groupByWay, costs.axis));
        wayPerMetre =
                ways.line("way_first_cost_per_metre", "First cost per metre", perMetreUnit, wayTotal.over(benchMetres));
        Line group = byGroup.line("group_first_cost", "First cost", MONEY, ofWay(groupByWay));
        byGroup.line("group_first_cost_per_metre", "First cost per metre", perMetreUnit, group.over(benchMetres));
        total = summary.line("first_cost_total", "First cost, in total", MONEY, sum(group, costs.axis));
        this.perMetre = summary.line(
                "first_cost_per_metre", "First cost per metre of bench", perMetreUnit, total.over(benchMetres));
        perArea = results(summary, p);
    }

    /**
     * A figure for the irrigation system that is counted.
     *
     * @param byWay the figure of each way
     * @return that of the chosen one
     */
    public Formula ofWay(Line byWay) {
        return lookup(byWay, parts.ways().key, chosen.way());
    }

    private Line results(ScheduleBuilder s, Parts p) {
        Unit perFoot = Unit.parse("money/ft");
        Unit perPlant = Unit.parse("money/plant");
        Unit perArea = Unit.parse("money/m2");
        Unit perSquareFoot = Unit.parse("money/ft2");
        s.line("first_cost_per_foot", "First cost per foot of bench", perFoot, perMetre.in(perFoot));
        s.line(
                "first_cost_per_plant",
                "First cost per plant",
                perPlant,
                p.planting().each(total));
        Line area =
                s.line("first_cost_per_area", "First cost per m² of floor", perArea, total.over(p.house().houseArea));
        s.line(
                "first_cost_per_square_foot",
                "First cost per square foot of floor",
                perSquareFoot,
                area.in(perSquareFoot));
        return area;
    }
}
