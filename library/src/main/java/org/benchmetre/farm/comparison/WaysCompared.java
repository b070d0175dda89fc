package org.benchmetre.farm.comparison;

import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.comparison.Causes.Cause;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.clogging.Clogging;
import org.benchmetre.farm.irrigation.hydraulics.Hydraulics;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.farm.irrigation.water.Watering;
import org.benchmetre.farm.ownership.OperatingInterest;

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
     * @param yearlyPerMetre yearly cost per metre, lost fruit counted
     */
    public record Costs(LineShare line, OperatingInterest interest, Line yearlyPerMetre) {}

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
        ScheduleBuilder e = b.schedule(Sheets.ENTRIES, "Irrigation systems compared");
        Line rival = entries.add(e.textEntry("irrigation_rival", "System to compare with")
                .keyOf(ways.key)
                .usually(secondKey(ways), "second system of the list"));
        Ranking rank = new Ranking(
                b,
                ways,
                s.costs().yearlyPerMetre(),
                s.water().hydraulics().uniformityInRange,
                s.water().hydraulics().targetUniformity);
        Pair pair = new Pair(s.chosen(), against(rank, s.chosen(), rival));
        Line lost = s.water().clogging().loss().fruitLostValue;
        PulsesCompared pulses = new PulsesCompared(
                pages.side(),
                s.water().hydraulics(),
                s.water().watering(),
                s.costs().interest(),
                s.benchMetres());
        Recommendation first = new Recommendation(b, pages.answer(), rank, pulses);
        Causes causes = new Causes(b, pages.causes(), ways, pair, new Causes.Sums(causes(s), s.benchMetres()));
        new SideBySide(
                pages.side(),
                s.water().hydraulics(),
                new SideBySide.Money(s.costs().line().first, lost, causes.differing, s.benchMetres()));
        PairWords words = new PairWords(b, pages.answer(), ways, pair, causes);
        Line share = entries.add(e.entry("close_call_share", "Too close to call up to this share of what differs", ONE)
                .from(0, 1));
        FarmEntries.Range range = entries.range(b, e, s.water().hydraulics().targetUniformity);
        answer(
                s.water().hydraulics(),
                new Compared(rank, pair, causes, new Verdict.Names(first.firstLabel, first.nextLabel, words.chosen)),
                new Asked(share, range),
                doubtful);
    }

    private void answer(Hydraulics h, Compared c, Asked asked, DoubtfulEntries doubtful) {
        Line target = h.targetUniformity;
        TargetDoubt byTarget =
                new TargetDoubt(b, pages, c.rank, new TargetDoubt.Target(target, asked.range, h.uniformityInRange));
        Flips flips = new Flips(b, c.rank, pages, doubtful);
        NamedDoubts doubts = new NamedDoubts(b, flips, byTarget.flips, target.label());
        CloseCall close = new CloseCall(b, c.rank, c.causes.differing, asked.closeShare);
        new Verdict(
                b, pages.answer(), c.rank, c.names, new Verdict.Grounds(c.pair.chosen(), close, flips, doubts, target));
        new FlipSentence(b, pages.answer(), c.rank, c.pair, flips, doubts);
    }

    private record Compared(Ranking rank, Pair pair, Causes causes, Verdict.Names names) {}

    private record Asked(Line closeShare, FarmEntries.Range range) {}

    /** A way is not compared with itself: then with the first in rank, or the next when it is first itself. */
    private Line against(Ranking rank, Line chosen, Line rival) {
        Formula other = when(rank.best.is(chosen), when(rank.next.isFilled(), rank.next, chosen), rank.best);
        return b.shared(Sheets.IRRIGATION, Tables.VERDICT)
                .textLine("rival_way", "Compared with, by its key", when(rival.is(chosen), other, rival));
    }

    private static List<Cause> causes(Sides s) {
        LineShare line = s.costs().line();
        Clogging clogging = s.water().clogging();
        return List.of(
                new Cause("line_parts", "Parts of the line", line.parts.plus(line.charges), false),
                new Cause("line_labour", "Laying and taking out", line.labour, false),
                new Cause("care", "Irrigation maintenance", clogging.care().careCost, false),
                new Cause(
                        "water", "Water, nutrient solution, pumping", s.water().watering().cost.running, false),
                new Cause("lost_fruit", "Fruit lost to dry plants", clogging.loss().fruitLostValue, true),
                new Cause(
                        "other",
                        "Replanting and interest",
                        clogging.dry().replanting.plus(s.costs().interest().byWay),
                        false));
    }

    private static String secondKey(Ways ways) {
        int filled = ways.axis.filled();
        return filled == 0 ? "" : ways.axis.keys().get(Math.min(1, filled - 1));
    }
}
