package org.benchmetre.farm.ownership;

import static org.benchmetre.budget.Formulas.onlyWhen;
import static org.benchmetre.budget.Formulas.sum;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.takeoff.CostGroups;
import org.benchmetre.farm.takeoff.FirstCost;

/**
 * Yearly cost: what it takes to own and to run. Parts, installing and charges come from {@link PartsYearly}, plants from
 * {@link PlantsYearly}; what it takes to run follows, group by group. Each amount reaches the total along one path.
 */
public final class YearlyCost {

    private static final Unit YEARLY = Unit.parse("money/a");

    /** Yearly cost in total, money/a. */
    public final Line total;
    /** Yearly cost per kilogram of marketable fruit, money/kg; none without fruit. */
    public final Line perKg;
    /** Yearly cost by group, for the chosen way, money/a. */
    public final Line byGroup;
    /** Yearly cost by irrigation system, lost fruit counted, money/a. */
    public final Line way;
    /** The same per metre of bench, money/(m a). */
    public final Line wayPerMetre;
    /** What plants cost in a year. */
    public final PlantsYearly plants;
    /** Insurance and property tax of parts and house, money/a. */
    public final Line charges;
    /** What parts cost in a year. */
    public final PartsYearly owned;
    /** The house by area. */
    public final HouseByArea house;
    /** Contingency on parts. */
    public final Contingency contingency;

    /**
     * What is owned, and what is used up.
     *
     * @param parts what parts cost in a year
     * @param plants what plants cost in a year
     * @param house the house by area
     * @param contingency contingency on parts
     */
    public record Owned(PartsYearly parts, PlantsYearly plants, HouseByArea house, Contingency contingency) {}

    /**
     * What it takes to run.
     *
     * @param groups by irrigation system or single, in the order of their labels
     * @param lost receipts lost with dry plants by irrigation system, which count where ways are compared
     */
    public record Running(List<Formula> groups, Formula lost) {}

    /**
     * Declares the lines.
     *
     * @param b where schedules are added
     * @param s the schedule of results for a reader
     * @param first first cost, what it is made of and what was chosen
     * @param all what is owned, and what is used up
     * @param harvest crops a year and fruit
     * @param running what it takes to run
     */
    public YearlyCost(
            BudgetBuilder b, ScheduleBuilder s, FirstCost first, Owned all, Harvest harvest, Running running) {
        owned = all.parts();
        plants = all.plants();
        house = all.house();
        contingency = all.contingency();
        charges = b.shared(Sheets.CASH_FLOW, "Cash of one year")
                .line("charges_cash", "Insurance and property tax", YEARLY, owned.chargesTotal.plus(house.charges));
        FirstCost.Parts p = first.parts;
        CostGroups groups = first.groups;
        ScheduleBuilder groupTable =
                b.schedule(Sheets.SUMMARY, "Yearly cost by group, for the chosen irrigation system");
        ScheduleBuilder ways = b.shared(Sheets.IRRIGATION, Tables.SYSTEM_COSTS);
        Line groupByWay = b.schedule(Sheets.IRRIGATION, "Yearly cost by group and irrigation system")
                .line(
                        "group_way_yearly_cost",
                        "Yearly cost, by group",
                        YEARLY,
                        groups.rows(
                                owned.wayParts,
                                List.of(
                                        p.ways().whereFilled(plants.all),
                                        owned.wayLabour,
                                        p.ways().whereFilled(house.recovery),
                                        contingency.wayRecovery,
                                        p.ways().whereFilled(owned.wayCharges.plus(house.charges))),
                                running.groups().stream()
                                        .map(cost ->
                                                cost.axes().isEmpty() ? p.ways().whereFilled(cost) : cost)
                                        .toList()));
        Line metres = p.house().benchMetres;
        Unit yearlyPerMetre = Unit.parse("money/(m a)");
        Line costs = ways.line(
                "way_yearly_cost_before_losses", "Yearly cost before lost fruit", YEARLY, sum(groupByWay, groups.axis));
        Line lostReceipts =
                ways.line("way_receipts_lost", "Receipts lost with the fruit of dry plants", YEARLY, running.lost());
        way = ways.line(
                "way_yearly_cost",
                "Yearly cost, lost fruit counted",
                YEARLY,
                costs.plus(lostReceipts),
                "Fruit lost to dry plants lowers receipts; it is added where irrigation systems are compared, and is no cost in the budget.");
        wayPerMetre = ways.line(
                "way_yearly_cost_per_metre",
                "Yearly cost per metre, lost fruit counted",
                yearlyPerMetre,
                way.over(metres));
        byGroup = groupTable.line("group_yearly_cost", "Yearly cost", YEARLY, first.ofWay(groupByWay));
        groupTable.line("group_yearly_cost_per_metre", "Yearly cost per metre", yearlyPerMetre, byGroup.over(metres));
        total = s.line("yearly_cost_total", "Yearly cost, in total", YEARLY, sum(byGroup, groups.axis));
        perKg = results(s, p, harvest);
    }

    private Line results(ScheduleBuilder s, FirstCost.Parts p, Harvest harvest) {
        s.line(
                "yearly_cost_per_metre",
                "Yearly cost per metre of bench",
                Unit.parse("money/(m a)"),
                total.over(p.house().benchMetres));
        s.line(
                "yearly_cost_per_plant",
                "Yearly cost per plant",
                Unit.parse("money/(plant a)"),
                p.planting().each(total));
        s.line(
                "yearly_cost_per_area",
                "Yearly cost per m² of floor",
                Unit.parse("money/(m2 a)"),
                total.over(p.house().houseArea));
        return s.line(
                "yearly_cost_per_kg",
                "Yearly cost per kg of marketable fruit",
                Unit.parse("money/kg"),
                onlyWhen(harvest.yield.isPositive(), total.over(harvest.yield), "no yield"));
    }
}
