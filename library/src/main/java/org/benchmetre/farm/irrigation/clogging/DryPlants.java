package org.benchmetre.farm.irrigation.clogging;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.COMMON;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;

/**
 * Plants that fall dry, and the fruit lost with them.
 *
 * <pre>
 * D = P / T            K = min(ds / df, 1)            L = K lk + (1 - K) ls            F = D n L Y
 * D  plants of each plant that fall dry in a year, 1/a      P  chance of no outlet left      T  time in which failures add up, a
 * K  killed of those that fall dry, share      ds days until a dry plant is seen      df days without water that kill every plant
 * L  fruit lost of a plant that falls dry, share of its year      lk, ls  of one killed, of one set back
 * F  fruit lost, kg/a      n  plants      Y  marketable fruit of a plant in a year, kg
 * </pre>
 *
 * Assumed: a dry plant is seen after a few days and is given water again at once; until then it may die, in a straight line from
 * none at no days to all at the fatal days; the others are set back. Plants killed are replanted. Each time counts in full, so the
 * figures hold for shares well below all plants. Where no outlet is in reach every plant is dry for all of the year: once a year,
 * killed, and its fruit lost. Common practice, no source.
 */
public final class DryPlants {

    private static final Unit PLANTS_A_YEAR = Unit.parse("plant/a");
    private static final Unit MONEY_A_YEAR = Unit.parse("money/a");
    private static final Unit MONEY_A_PLANT = Unit.parse("money/plant");
    private static final Unit KG_A_YEAR = Unit.parse("kg/a");
    private static final Unit SHARE_A_YEAR = Unit.parse("%/a");
    private static final Unit DAY = Unit.parse("d");
    private static final Unit YEAR = Unit.parse("a");

    /**
     * The plants and what they bear.
     *
     * @param count plants in the house
     * @param fruit marketable fruit of the house before any plant falls dry, in kg/a
     * @param newPlant cost of one established plant, in money/plant
     */
    public record Plants(Line count, Line fruit, Formula newPlant) {}

    /** Share of all plants that fall dry in a year, %/a, by way. */
    public final Line dryShare;
    /** Plants that fall dry in a year, plant/a, by way. */
    public final Line dryPlants;
    /** Plants killed in a year, plant/a, by way. */
    public final Line killed;
    /** Marketable fruit lost in a year, kg/a, by way. */
    public final Line fruitLost;
    /** Replanting in a year, money/a, by way. */
    public final Line replanting;
    /** Hours to plant one again, h/plant. */
    public final Line replantHours;
    /** Marketable fruit lost of a plant that falls dry, kg/plant, by way. */
    final Formula fruitOfOne;
    /** Replanting of a plant that falls dry, money/plant, by way. */
    final Formula replantOfOne;

    /** Outlets that fail. */
    final FailedOutlets failed;

    private final FarmEntries entries;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param ways irrigation systems
     * @param failed outlets that fail
     * @param plants the plants and what they bear
     * @param wage wage of whoever plants again
     */
    public DryPlants(BudgetBuilder b, FarmEntries entries, Ways ways, FailedOutlets failed, Plants plants, Line wage) {
        this.entries = entries;
        this.failed = failed;
        ScheduleBuilder e = b.schedule(Sheets.IRRIGATION, "A plant that falls dry");
        e.note("A plant without water is seen after some days and is given water again at once.");
        Line seen = asked(e, "days_until_seen", "Days until a dry plant is seen", DAY, 365);
        Line fatal = asked(e, "dry_days_fatal", "Days without water that kill every plant", DAY, 365);
        Line ofKilled = asked(e, "killed_fruit_lost", "Fruit lost of a plant killed, share of its year", ONE, 1);
        Line ofSetBack = asked(e, "set_back_fruit_lost", "Fruit lost of a plant set back, share of its year", ONE, 1);
        replantHours = asked(e, "replant_hours", "Hours to replant one", Unit.parse("h/plant"), 10);
        Line dies = e.line(
                "dry_killed_share",
                "Killed of those that fall dry",
                ONE,
                lesser(seen.over(fatal), one()),
                "days until seen over fatal days, at most all: " + COMMON);
        Line rough = e.line(
                "dry_share_rough",
                "Plants falling dry above which the loss is a rough figure",
                SHARE_A_YEAR,
                number(20, SHARE_A_YEAR),
                COMMON);
        Line lost = e.line(
                "dry_plant_loss",
                "Fruit lost of a plant that falls dry, share of its year",
                ONE,
                dies.times(ofKilled).plus(one().minus(dies).times(ofSetBack)));
        Unit kg = Unit.parse("kg/plant");
        Line yearsFruit = e.line(
                "plant_year_fruit",
                "Marketable fruit of a plant in a year",
                kg,
                when(plants.count().isPositive(), plants.fruit().over(plants.count()), none(kg.over(YEAR)))
                        .times(number(1, YEAR)));
        Line replant = e.line(
                "replant_cost",
                "Cost of replanting one",
                MONEY_A_PLANT,
                plants.newPlant().plus(replantHours.times(wage)));

        ScheduleBuilder s = b.shared(Sheets.IRRIGATION, Tables.DRY_PLANTS);
        Formula reached = failed.livesOn.isPositive();
        dryShare = s.line(
                "way_dry_share",
                "Plants falling dry in a year",
                SHARE_A_YEAR,
                ways.whereFilled(when(
                        reached, failed.noOutletLeft.over(failed.years).in(SHARE_A_YEAR), number(100, SHARE_A_YEAR))),
                "chance over time; all plants, once a year, where no outlet is in reach");
        dryPlants = s.line(
                "way_dry_plants",
                "Plants falling dry in a year",
                PLANTS_A_YEAR,
                dryShare.times(plants.count()).in(PLANTS_A_YEAR));
        Line wayDies =
                s.line("way_killed_share", "Killed of those, share", ONE, ways.whereFilled(when(reached, dies, one())));
        killed = s.line("way_plants_killed", "Plants killed, and replanted", PLANTS_A_YEAR, dryPlants.times(wayDies));
        s.line("way_plants_set_back", "Plants set back", PLANTS_A_YEAR, dryPlants.minus(killed));
        Line wayLost = s.line(
                "way_fruit_share_lost",
                "Fruit lost of a dry plant, share of its year",
                ONE,
                ways.whereFilled(when(reached, lost, one())));
        fruitLost = s.line(
                "way_fruit_lost",
                "Marketable fruit lost",
                KG_A_YEAR,
                dryPlants.times(wayLost).times(yearsFruit));
        replanting = s.line("way_replant_cost", "Replanting", MONEY_A_YEAR, killed.times(replant));
        fruitOfOne = wayLost.times(yearsFruit);
        replantOfOne = wayDies.times(replant);
        s.warning(
                "way_dry_warning",
                "Dry plants",
                and(ways.key.isFilled(), dryShare.exceeds(rough)),
                "More than a fifth of the plants fall dry in a year: bring more outlets in reach of each plant, check more "
                        + "often, or treat the water; beyond this the loss is a rough figure.");
    }

    private Line asked(ScheduleBuilder s, String id, String label, Unit unit, double most) {
        boolean days = unit.equals(DAY);
        return entries.add(
                (days
                        ? s.entry(id, label, unit).above(0, most)
                        : s.entry(id, label, unit).from(0, most)));
    }
}
