package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.and;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.comparison.Causes.Cause;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.irrigation.clogging.Clogging;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.irrigation.water.Watering;

/** The irrigation systems held against each other, put together. Its first tables are opened early, so that they lead the sheet. */
public final class WaysCompared {

    private final BudgetBuilder b;
    private final Pages pages;

    /**
     * What the comparison reads.
     *
     * @param ways irrigation systems
     * @param chosen key of the way that is counted
     * @param water what is known of each way
     * @param costs what each way costs
     * @param benchMetres metres of bench
     */
    public record Sides(Ways ways, Line chosen, Water water, Costs costs, Line benchMetres) {}

    /**
     * What is known of each way.
     *
     * @param hydraulics hydraulics of the benches
     * @param watering water of the house
     * @param clogging clogging of the lines
     */
    public record Water(Hydraulics hydraulics, Watering watering, Clogging clogging) {}

    /**
     * What each way costs.
     *
     * @param line what the line itself costs
     * @param interest interest on operating capital
     * @param firstPerMetre first cost per metre
     * @param yearly yearly cost, lost fruit counted
     * @param yearlyPerMetre the same per metre
     */
    public record Costs(LineShare line, Line interest, Line firstPerMetre, Line yearly, Line yearlyPerMetre) {}

    /**
     * Opens the first tables of the sheet.
     *
     * @param b where schedules are added
     */
    public WaysCompared(BudgetBuilder b) {
        this.b = b;
        pages = Pages.open(b);
    }

    /**
     * Declares the comparison.
     *
     * @param entries gives entries their values
     * @param s what it reads
     * @param doubtful the entries that may flip the answer
     */
    public void compare(FarmEntries entries, Sides s, DoubtfulEntries doubtful) {
        Ways ways = s.ways();
        Line rival = entries.add(b.schedule(Sheets.ENTRIES, "Irrigation systems compared")
                .textEntry("irrigation_rival", "System to compare with")
                .keyOf(ways.key)
                .usually(secondKey(ways), "second system of the list"));
        Ranking rank = new Ranking(
                b,
                ways,
                s.costs().yearlyPerMetre(),
                s.water().hydraulics().uniformityInRange,
                s.water().hydraulics().targetUniformity);
        Pair pair = new Pair(s.chosen(), against(rank, s.chosen(), rival));
        ScheduleBuilder sums = b.schedule(Sheets.IRRIGATION, "What the reasons weigh, by system");
        Unit yearly = Unit.parse("money/a");
        Line owning = sums.line(
                "way_line_owning",
                "Owning and laying the line, a year",
                yearly,
                s.costs()
                        .line()
                        .parts
                        .plus(s.costs().line().labour)
                        .plus(s.costs().line().charges));
        Line upkeep = sums.line(
                "way_line_running",
                "Water, nutrient solution, pumping, maintenance, interest, a year",
                yearly,
                s.water()
                        .watering()
                        .cost
                        .running
                        .plus(s.water().clogging().care().careCost)
                        .plus(s.water().clogging().dry().replanting)
                        .plus(s.costs().interest()));
        Line lost = s.water().clogging().loss().fruitLostValue;
        new Recommendation(
                b,
                pages.answer(),
                rank,
                s.chosen(),
                new Recommendation.Grounds(
                        owning,
                        upkeep,
                        lost,
                        s.water().hydraulics().frictionNote,
                        s.water().hydraulics().drainedShare));
        new SideBySide(pages.side(), rank, shown(s), s.benchMetres());
        Causes causes = new Causes(
                b,
                pages.causes(),
                ways,
                pair,
                new Causes.Sums(causes(s), s.costs().yearly(), s.benchMetres()));
        pages.answer()
                .textLine(
                        "rival_label",
                        "Compared with",
                        when(
                                pair.rival().is(pair.chosen()),
                                text("no other system"),
                                lookup(ways.label, ways.key, pair.rival())));
        pages.answer().line("rival_gain", "Gain of changing to it", causes.net.unit(), causes.net);
        new Flips(b, rank, pages, doubtful);
        target(s, rank);
    }

    /** A way is not compared with itself: then with the first in rank, or the next when it is first itself. */
    private Line against(Ranking rank, Line chosen, Line rival) {
        Formula other = when(rank.best.is(chosen), when(rank.next.isFilled(), rank.next, chosen), rank.best);
        return b.schedule(Sheets.IRRIGATION, "The two systems compared")
                .textLine("rival_way", "Compared with, by its key", when(rival.is(chosen), other, rival));
    }

    /** Where the uniformity asked for would leave out the way that comes first: its own uniformity, no search needed. */
    private void target(Sides s, Ranking rank) {
        ScheduleBuilder t = pages.target();
        Line uniformity = s.water().hydraulics().uniformityInRange;
        Line target = s.water().hydraulics().targetUniformity;
        Line first = t.line(
                "target_flip",
                "Above this the first system no longer reaches it",
                target.unit(),
                rank.ofFirst(uniformity));
        t.textLine(
                "target_finding",
                "Finding",
                when(
                        and(rank.reaching.isPositive(), not(target.exceeds(first))),
                        text("a target above the uniformity of the system recommended would leave it out."),
                        text("no system reaches it; the ranking is of cost alone.")));
    }

    private static SideBySide.Shown shown(Sides s) {
        return new SideBySide.Shown(
                new SideBySide.Money(
                        s.costs().firstPerMetre(),
                        s.costs().line().first,
                        s.costs().yearlyPerMetre(),
                        s.water().clogging().loss().fruitLostValue),
                s.water().hydraulics().emissionUniformity,
                s.water().hydraulics().emissionClass,
                s.water().hydraulics().inletPressure,
                s.water().clogging().dry().dryPlants);
    }

    private static List<Cause> causes(Sides s) {
        return List.of(
                new Cause(
                        "line_parts",
                        "Parts of the line: recovery and repairs",
                        s.costs().line().parts,
                        false),
                new Cause("line_labour", "Laying and taking out", s.costs().line().labour, false),
                new Cause(
                        "line_charges",
                        "Insurance and property tax of the line",
                        s.costs().line().charges,
                        false),
                new Cause("water", "Water", s.water().watering().cost.water, false),
                new Cause("feed", "Nutrient solution", s.water().watering().cost.feed, false),
                new Cause("drain", "Handling of drain", s.water().watering().cost.drain, false),
                new Cause("pumping", "Pumping", s.water().watering().pumping, false),
                new Cause(
                        "care",
                        "Checking, flushing, treating",
                        s.water().clogging().care().careCost,
                        false),
                new Cause("replanting", "Replanting", s.water().clogging().dry().replanting, false),
                new Cause("interest", "Interest on operating capital", s.costs().interest(), false),
                new Cause(
                        "lost_fruit",
                        "Fruit lost to dry plants",
                        s.water().clogging().loss().fruitLostValue,
                        true));
    }

    private static String secondKey(Ways ways) {
        int filled = ways.axis.filled();
        return filled == 0 ? "" : ways.axis.keys().get(Math.min(1, filled - 1));
    }
}
