package org.benchmetre.farm;

import static org.benchmetre.budget.Formulas.lookup;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.energy.HouseEnergy;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.clogging.Clogging;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.irrigation.water.Watering;
import org.benchmetre.farm.operations.Labour;
import org.benchmetre.farm.ownership.MovesWithYield;
import org.benchmetre.farm.ownership.OperatingInterest;
import org.benchmetre.farm.ownership.Overhead;
import org.benchmetre.farm.ownership.UsedUp;

/**
 * What it takes to run, group by group. Each cost has one owner; here they only meet. Picking, packing and selling follow the fruit
 * that a way leaves: of the way chosen they are those of the budget, of another one they differ by what each kilogram moves.
 */
final class RunningCosts {

    /** Labels of the groups, in order. */
    static final List<String> LABELS = List.of(
            "Water and drain",
            "Nutrient solution",
            "Pumping",
            "Irrigation maintenance",
            "Replanting",
            "Labour",
            "Inputs of tasks",
            "Packs, freight, commission, other by the kg",
            "Heating",
            "Electricity",
            "Overhead",
            "Interest on operating capital");

    /**
     * Whose costs they are.
     *
     * @param watering water of the house
     * @param clogging clogging of the lines
     * @param labour work and its inputs
     * @param moves what selling takes, and all that moves with yield
     * @param energy heat and electricity
     * @param overhead management, office, land, house
     */
    record Owners(
            Watering watering,
            Clogging clogging,
            Labour labour,
            MovesWithYield moves,
            HouseEnergy energy,
            Overhead overhead) {}

    /** Interest on operating capital. */
    final OperatingInterest interest;
    /** Water, feed, pumping, irrigation maintenance and replanting, with the way chosen. */
    final Line watering;
    /** Parts that are used up within a year, and laying and taking them out, with the way chosen. */
    final Line usedUp;
    /** Irrigation maintenance and replanting, with the way chosen. */
    final Line care;
    /** What the year takes in cash beside selling, repairs, insurance and property tax. */
    final Line cash;
    /** What has no month: irrigation maintenance, replanting, overhead, and what is used up. */
    final Formula withoutMonth;

    private final Owners o;
    private final Ways ways;
    private final Line fruitMore;

    RunningCosts(BudgetBuilder b, FarmEntries entries, Ways ways, Line choice, Owners o, UsedUp used) {
        this.o = o;
        this.ways = ways;
        Line fruitLost = o.clogging().dry().fruitLost;
        fruitMore = b.shared(Sheets.IRRIGATION, Tables.SYSTEM_COSTS)
                .line(
                        "way_fruit_more",
                        "Fruit more than with the system chosen",
                        Unit.parse("kg/a"),
                        ways.whereFilled(lookup(fruitLost, ways.key, choice).minus(fruitLost)));
        Formula byWay = o.watering()
                .cost
                .running
                .plus(o.clogging().care().careCost)
                .plus(o.clogging().dry().replanting);
        ScheduleBuilder s = b.schedule(Sheets.CASH_FLOW, "Running in a full year");
        s.note(
                "Family labour, management and land of one's own cost no cash. Labour is counted in full in years of learning too.");
        Unit yearly = Unit.parse("money/a");
        care = s.line(
                "care_cash",
                "Irrigation maintenance, replanting",
                yearly,
                lookup(o.clogging().care().careCost, ways.key, choice)
                        .plus(lookup(o.clogging().dry().replanting, ways.key, choice)));
        usedUp = s.line(
                "used_up_cash",
                "Parts used up within a year, laying and taking them out",
                yearly,
                used.partsAndLabour(),
                "in a full year; the first of them stand in the start-up");
        withoutMonth = care.plus(o.overhead().cash).plus(usedUp);
        watering = s.line(
                "watering_cash",
                "Water, nutrient solution, pumping, irrigation maintenance, replanting",
                yearly,
                lookup(o.watering().cost.running, ways.key, choice).plus(care));
        Formula alike = o.labour()
                .cost
                .plus(o.labour().inputs)
                .minus(o.moves().work)
                .plus(o.energy().cost().total)
                .plus(used.plants().usedUp);
        interest = new OperatingInterest(
                b,
                entries,
                ways,
                new OperatingInterest.Expense(byWay.plus(used.partsAndLabourByWay()), watering.plus(usedUp), alike));
        cash = s.line(
                "running_cash",
                "Running: water, labour, inputs, energy, overhead",
                yearly,
                watering.plus(o.labour().cash)
                        .plus(o.labour().inputs)
                        .plus(o.energy().cost().total)
                        .plus(o.overhead().cash));
    }

    /** What the year takes in cash beside selling, labour, energy, repairs, insurance and property tax. */
    Formula beside() {
        return watering.plus(o.labour().inputs).plus(o.overhead().cash);
    }

    private Formula sellingPerKg() {
        Harvest h = o.moves().harvest;
        return h.furtherCosts.plus(h.furtherPrice.times(h.furtherCommission));
    }

    /** A cost as it is with the fruit that each way leaves. */
    private Formula withFruit(Line withChosen, Formula perKg) {
        return ways.whereFilled(withChosen.plus(fruitMore.times(perKg)));
    }

    /** One formula for each label. Inputs of tasks counted by fruit move with the work. */
    List<Formula> groups() {
        return List.of(
                o.watering().cost.water.plus(o.watering().cost.drain),
                o.watering().cost.feed,
                o.watering().pumping,
                o.clogging().care().careCost,
                o.clogging().dry().replanting,
                withFruit(o.labour().cost, o.moves().workPerKg),
                o.labour().inputs,
                withFruit(o.moves().harvest.yieldCosts, sellingPerKg()),
                o.energy().heating().costOfYear,
                o.energy().electricity().costOfYear,
                o.overhead().total,
                interest.byWay);
    }
}
