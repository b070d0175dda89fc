package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.DRIVER;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.ownership.MovesWithYield;
import org.benchmetre.farm.ownership.PartsYearly;
import org.benchmetre.farm.takeoff.Materials;
import org.benchmetre.farm.takeoff.TakeOff;

/**
 * Mulch film against none, as a partial budget by metre of bench and year. The plan lays film where it has parts counted by metres of
 * mulch; those parts, and tasks counted by them, are the film. Nothing here changes the plan.
 *
 * <pre>
 * g = (s Y v + e Y l + h w n b - F) / b     s0 = (F - h w n b - e Y l) / (Y v)
 * g  gain of film, money/(m a)      s  fruit soiled or rotted without film, share      e  fruit gained early by reflected light, share
 * Y  marketable fruit, kg/a         v  what a kg leaves that is picked anyway, money/kg      l  what a further kg leaves, money/kg
 * h  weeding and cleaning saved, h/(m crop)     w  cost of an hour, money/h     n  crops a year     b  metres of bench
 * F  film, its laying and its tasks, money/a    s0 share soiled at which the gain is nothing
 * </pre>
 *
 * Soiled fruit is picked, film or not, and only then packed and sold. A partial budget as in any text of farm management.
 */
public final class MulchFilm {

    private static final Unit YEARLY = Unit.parse("money/a");
    private static final Unit YEARLY_METRE = Unit.parse("money/(m a)");
    private static final Unit HOURS = Unit.parse("h/(m crop)");

    /**
     * The film as a part.
     *
     * @param materials parts as entered
     * @param takeOff their quantities and costs
     * @param owned what they cost in a year
     * @param wage of whoever lays them, money/h
     * @param contingency share of the cost of parts
     */
    public record Parts(Materials materials, TakeOff takeOff, PartsYearly owned, Line wage, Line contingency) {}

    /**
     * Work on a bench.
     *
     * @param metres metres of bench
     * @param mulch metres of film as sold, what its parts and tasks are counted by
     * @param tasks tasks counted by that, for one of it, money/(driver a)
     * @param hour an hour of weeding and cleaning, money/h
     * @param picking what picking for a marketable kilogram costs, money/kg
     */
    public record Bench(Line metres, Line mulch, Formula tasks, Line hour, Line picking) {}

    private final Bench bench;
    private final MovesWithYield moves;
    private final Line films;
    private final Line film;
    private final Line hours;
    private final Line kept;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param parts the film as a part
     * @param bench work on a bench
     * @param moves fruit, and what a further kilogram of it leaves
     */
    public MulchFilm(BudgetBuilder b, FarmEntries entries, Parts parts, Bench bench, MovesWithYield moves) {
        this.bench = bench;
        this.moves = moves;
        ScheduleBuilder e = b.schedule(Sheets.ENTRIES, "Mulch film: what it does");
        e.note("For a comparison alone: the plan has film where parts are counted by mulch_metres.");
        Line soiled = asked(entries, e, "mulch_soiled_share", "Without film, fruit soiled or rotted, share", ONE);
        Line early = asked(entries, e, "mulch_early_share", "Film's light gains fruit early, share", ONE);
        Line weeding = asked(entries, e, "mulch_weeding_hours", "Film saves weeding", HOURS);
        Line algae = asked(entries, e, "mulch_algae_hours", "Film saves cleaning of algae", HOURS);
        FarmEntries.Range doubt = entries.range(b, e, soiled);

        ScheduleBuilder s = b.schedule(Sheets.WHAT_IF, "Mulch film against none");
        films = s.line(
                "mulch_parts",
                "Parts counted by metres of mulch film",
                parts.takeOff().quantity.unit(),
                sumWhere(
                        parts.takeOff().quantity,
                        parts.materials().driver,
                        text(bench.mulch().id()),
                        parts.materials().axis));
        film = s.line(
                "mulch_film_cost",
                "Film, its laying and its tasks",
                YEARLY,
                ofLaid(sum(ofParts(b, parts), parts.materials().axis)
                        .plus(bench.tasks().times(bench.mulch()).counting(YEARLY))),
                "parts and tasks counted by mulch_metres");
        hours = s.line(
                "mulch_hours_cost",
                "Weeding and cleaning saved",
                YEARLY,
                ofLaid(weeding.plus(algae)
                        .times(bench.metres())
                        .times(moves.harvest.cropsPerYear)
                        .times(bench.hour())
                        .in(YEARLY)),
                "at the cost of hired general labour: a choice of this project, no source");
        kept = s.line(
                "mulch_kg_left",
                "What a kg leaves that is picked anyway",
                moves.left.unit(),
                moves.left.plus(bench.picking()),
                "returns of a further kg, without its picking");
        Line gain = boxes(s, soiled, early);
        Formula all = moves.harvest.yield.times(kept);
        Line stays = s.line("mulch_stays", "Film less hours saved and early fruit", YEARLY, stays(early));
        Formula pays = and(films.isPositive(), all.isPositive());
        Line even = s.line(
                "mulch_soiled_even",
                "Share soiled without film at which film just pays",
                ONE,
                when(pays, stays.over(all), none(ONE)),
                "film less hours saved and early fruit, over what all fruit leaves: the boxes set equal; 0 without fruit");
        Line low =
                s.line("mulch_net_low", "Gain at the low end of soiled fruit", YEARLY_METRE, end(doubt.low(), stays));
        Line high = s.line(
                "mulch_net_high", "Gain at the high end of soiled fruit", YEARLY_METRE, end(doubt.high(), stays));
        new MulchWords(b, s, films.isPositive()).add(gain, even, low, high);
    }

    private static Line asked(FarmEntries entries, ScheduleBuilder s, String id, String label, Unit unit) {
        return entries.add(s.entry(id, label, unit).from(0, unit.equals(ONE) ? 1 : 10));
    }

    private Formula ofLaid(Formula amount) {
        return when(films.isPositive(), amount, none(amount.unit()));
    }

    /** What each part that is counted by metres of mulch costs in a year. */
    private Line ofParts(BudgetBuilder b, Parts p) {
        Formula laying = p.owned().driverHours.times(p.wage()).in(YEARLY.over(DRIVER));
        Formula cost = p.owned().priced(p.contingency()).plus(p.takeOff().amount.times(laying));
        return b.shared(Sheets.MATERIALS, Tables.PARTS_YEARLY)
                .line(
                        "material_mulch_cost",
                        "Mulch film: used up or recovered, contingency, repairs, laying, charges",
                        YEARLY,
                        when(p.materials().driver.is(bench.mulch().id()), cost, none(YEARLY)));
    }

    private Formula worth(Line share, Line each) {
        return ofLaid(moves.harvest.yield.times(share).times(each));
    }

    private Formula stays(Line early) {
        return film.minus(hours).minus(worth(early, moves.left));
    }

    /** The gain at an end of the range of the soiled share. */
    private Formula end(Line share, Line stays) {
        return worth(share, kept).minus(stays).over(bench.metres());
    }

    private Line boxes(ScheduleBuilder s, Line soiled, Line early) {
        Line price = moves.harvest.furtherPrice;
        Formula returns = worth(soiled, price).plus(worth(early, price));
        Formula left = worth(soiled, kept).plus(worth(early, moves.left));
        return new PartialBudget(
                        s,
                        "mulch",
                        "Gain of film",
                        new PartialBudget.Boxes(
                                perMetre(returns),
                                perMetre(hours),
                                none(YEARLY_METRE),
                                perMetre(film.plus(returns.minus(left)))))
                .net;
    }

    private Formula perMetre(Formula yearly) {
        return yearly.over(bench.metres());
    }
}
